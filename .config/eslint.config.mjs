import { fileURLToPath } from 'node:url';
import tseslint from 'typescript-eslint';
import { importBorders } from './import-borders.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));

const namedByALetter = [
  'FunctionDeclaration[id.name=/^.$/]',
  'VariableDeclarator[id.name=/^.$/][init.type=/Function/]',
  'Property[key.name=/^.$/][value.type=/Function/]',
].map((selector) => ({ selector, message: 'Name the function by what it does.' }));

/** A call takes as many arguments as its stack holds; a design may bring more. What is spread into one must be a handful. */
const spreadIntoCall = [
  {
    selector:
      'CallExpression:matches([callee.object.name="Math"], [callee.property.name=/^(push|unshift|splice|concat|fromCharCode|pushOperators)$/]) > SpreadElement',
    message: 'Data may be longer than a call takes: use minimum, maximum or append of geometry/numbers.ts.',
  },
];

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
      '@typescript-eslint/switch-exhaustiveness-check': 'error',
    },
  },
  {
    files: ['server/**/*.ts', 'grammar/**/*.ts'],
    rules: { 'no-restricted-syntax': ['error', ...spreadIntoCall] },
  },
  {
    // What is measured and sawn by must be read at one look: no function longer than a screen, none named by a letter.
    files: ['server/geometry/**/*.ts', 'server/lattice/**/*.ts'],
    rules: {
      'max-lines-per-function': ['error', { max: 50, skipComments: true, skipBlankLines: true }],
      'no-restricted-syntax': ['error', ...spreadIntoCall, ...namedByALetter],
    },
  },
  { files: ['**/*.mjs', '**/*.cjs'], extends: [tseslint.configs.base] },
  ...importBorders,
);
