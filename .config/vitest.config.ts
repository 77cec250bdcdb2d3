import { defineConfig } from 'vitest/config';

/** Unit tests only: what needs a running VS Code lives in tests/extension and is started by its own runner. */
export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/extension/**', 'tests/host/**', '**/node_modules/**'],
    setupFiles: ['.config/property-seed.ts'],
    testTimeout: 60_000,
    hookTimeout: 120_000,
  },
});
