import { defineConfig } from 'vitest/config';

const common = { testTimeout: 60_000, hookTimeout: 120_000, env: { TZ: 'UTC' } };

export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: {
    reporters: ['default', 'tests/closing-line.ts'],
    maxWorkers: 2,
    projects: [
      // Functions over plain data keep nothing between files: loading the engine once a worker saves minutes.
      { test: { ...common, name: 'engine', include: ['tests/{engine,outside,web}/**/*.test.{ts,tsx}'], isolate: false, sequence: { groupOrder: 0 } } },
      { test: { ...common, name: 'browser', include: ['tests/browser/**/*.test.ts'], globalSetup: ['tests/browser/setup.ts'], sequence: { groupOrder: 0 } } },
    ],
  },
});
