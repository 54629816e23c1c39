// The layer rule lives here: renderer → core ← electron. Core is pure: no DOM, no Node, no Electron.
import tseslint from 'typescript-eslint';

const nodeBuiltins = {
  regex: '^(node:.*|fs|path|os|worker_threads|electron)$',
  message: 'core is pure and the renderer has no Node: ask through the host contract.',
};

export default tseslint.config(
  { ignores: ['dist/', 'out/', 'node_modules/', 'coverage/', 'vitest.config.ts'] },
  ...tseslint.configs.strictTypeChecked,
  {
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
    rules: {
      '@typescript-eslint/no-explicit-any': 'error',
      '@typescript-eslint/switch-exhaustiveness-check': [
        'error',
        { considerDefaultExhaustiveForUnions: true },
      ],
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/restrict-template-expressions': [
        'error',
        { allowNumber: true, allowBoolean: true },
      ],
      // Typed arrays are indexed inside bounds the loop has already proved; `!` says so.
      '@typescript-eslint/no-non-null-assertion': 'off',
      '@typescript-eslint/no-confusing-void-expression': ['error', { ignoreArrowShorthand: true }],
      'no-eval': 'error',
      'no-new-func': 'error',
      eqeqeq: 'error',
    },
  },
  {
    files: ['core/**/*.ts'],
    rules: {
      'no-restricted-imports': [
        'error',
        {
          patterns: [
            nodeBuiltins,
            {
              group: [
                '**/renderer/**',
                '**/electron/**',
                '**/tests/**',
                'leaflet',
                'preact',
                'preact/*',
                'comlink',
              ],
              message: 'core imports nothing outside core.',
            },
          ],
        },
      ],
    },
  },
  {
    files: ['renderer/**/*.{ts,tsx}'],
    ignores: ['renderer/vite.config.ts'],
    rules: {
      'no-restricted-imports': [
        'error',
        {
          patterns: [
            nodeBuiltins,
            {
              regex: 'electron/(?!contract/)',
              message: 'the renderer sees only core and electron/contract.',
            },
            { group: ['**/tests/**'], message: 'programs do not import tests.' },
          ],
        },
      ],
    },
  },
  {
    files: ['electron/**/*.ts'],
    rules: {
      'no-restricted-imports': [
        'error',
        {
          patterns: [
            { group: ['**/renderer/**', '**/tests/**'], message: 'electron imports core and Node only.' },
          ],
        },
      ],
    },
  },
  {
    files: ['electron/contract/**/*.ts'],
    rules: {
      'no-restricted-imports': [
        'error',
        { patterns: [nodeBuiltins, { group: ['**/core/**'], message: 'the contract is free of core.' }] },
      ],
    },
  },
  { files: ['**/*.js', '**/*.cjs', '**/*.mjs'], extends: [tseslint.configs.disableTypeChecked] },
);
