import { defineConfig } from 'vitest/config';

// One project for all: each file of the sources is made ready once, whoever asks for it. Nothing is kept between files,
// so each worker may load the engine and the browser's driver once: it saves minutes.
export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: {
    include: ['tests/{engine,outside,web,house,browser}/**/*.test.{ts,tsx}'],
    globalSetup: ['tests/answers.ts', 'tests/browser/setup.ts'],
    reporters: ['default', 'tests/closing-line.ts'],
    env: { TZ: 'UTC' },
    isolate: false,
    // Three, also on two cores: browser tests often wait.
    maxWorkers: 3,
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
});
