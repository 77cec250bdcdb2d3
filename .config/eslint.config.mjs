import { fileURLToPath } from 'node:url';
import tseslint from 'typescript-eslint';
import { importBorders } from './import-borders.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));

export default tseslint.config(
  { ignores: ['dist/', 'node_modules/', '**/node_modules/', '.vscode-test/', 'halflap-out/', 'tests/host/'] },
  {
    files: ['**/*.ts'],
    extends: [tseslint.configs.strictTypeChecked],
    languageOptions: {
      parserOptions: { projectService: { allowDefaultProject: ['.config/*.ts'] }, tsconfigRootDir: root },
    },
    rules: {
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true, allowBoolean: true }],
      '@typescript-eslint/no-confusing-void-expression': ['error', { ignoreArrowShorthand: true }],
      'max-lines': ['error', { max: 400 }],
    },
  },
  { files: ['**/*.mjs', '**/*.cjs'], extends: [tseslint.configs.base] },
  ...importBorders,
);
