import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: {
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    globalSetup: ['tests/browser/setup.ts'],
    reporters: ['default', 'tests/closing-line.ts'],
    // Two, also on two cores: browser tests mostly wait.
    maxWorkers: 2,
    testTimeout: 60_000,
    hookTimeout: 120_000,
    env: { TZ: 'UTC' },
  },
});
