import { defineConfig } from 'vitest/config';

// Nothing is kept between files, so each worker may load the engine and the browser's driver once: it saves minutes.
const common = { testTimeout: 120_000, hookTimeout: 120_000, env: { TZ: 'UTC' }, isolate: false };

export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: {
    globalSetup: ['tests/answers.ts'],
    reporters: ['default', 'tests/closing-line.ts'],
    // Three, also on two cores: browser tests often wait.
    maxWorkers: 3,
    projects: [
      {
        test: {
          ...common,
          name: 'engine',
          include: ['tests/{engine,outside,web,house}/**/*.test.{ts,tsx}'],
        },
      },
      {
        test: {
          ...common,
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          globalSetup: ['tests/browser/setup.ts'],
        },
      },
    ],
  },
});
