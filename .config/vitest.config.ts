import { defineConfig } from 'vitest/config';

/** A .lap file brought in as its text, as the bundle does it. */
const lapAsText = {
  name: 'lap-as-text',
  transform: (code: string, id: string) => (id.endsWith('.lap') ? `export default ${JSON.stringify(code)}` : undefined),
};

/** Unit tests only: what needs a running VS Code lives in tests/extension and is started by its own runner. */
export default defineConfig({
  plugins: [lapAsText],
  root: new URL('..', import.meta.url).pathname,
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/extension/**', 'tests/host/**', '**/node_modules/**'],
    setupFiles: ['.config/property-seed.ts'],
    testTimeout: 60_000,
    hookTimeout: 120_000,
  },
});
