import js from '@eslint/js';
import svelte from 'eslint-plugin-svelte';
import { defineConfig, globalIgnores } from 'eslint/config';
import tseslint from 'typescript-eslint';
import { reasonedDisable } from './build/lint/reasoned-disable.mjs';

const typedFiles = ['src/**/*.ts', 'electron/**/*.ts', 'renderer/**/*.ts', 'renderer/**/*.svelte', 'test/**/*.ts'];

const everywhere = [
  {
    selector: 'CallExpression[callee.object.name="Decimal"][callee.property.name=/^(set|config)$/]',
    message: 'Decimal settings are local: use Decimal.clone, so that no other reading changes its precision.',
  },
];
const noHiddenInputs = [
  {
    selector: 'NewExpression[callee.name="Date"][arguments.length=0]',
    message: 'The engine has no clock: take the date as an argument.',
  },
  {
    selector: 'CallExpression[callee.property.name=/^toLocale/][arguments.length=0]',
    message: 'The engine has no locale of its own: take it as an argument.',
  },
];

export default defineConfig(
  globalIgnores(['dist/', 'coverage/']),
  {
    linterOptions: { reportUnusedDisableDirectives: 'error' },
    plugins: { project: { rules: { 'reasoned-disable': reasonedDisable } } },
    rules: {
      'project/reasoned-disable': 'error',
      'no-warning-comments': [
        'error',
        { terms: ['todo', 'fixme', 'xxx', 'hack', 'not implemented'], location: 'anywhere' },
      ],
      'max-lines': ['error', { max: 400 }],
      'no-restricted-syntax': ['error', ...everywhere],
    },
  },
  {
    files: ['build/**/*.mjs', 'eslint.config.js'],
    extends: [js.configs.recommended],
    // The type check of these scripts finds unknown names.
    rules: { 'no-undef': 'off', eqeqeq: 'error' },
  },
  {
    files: typedFiles,
    extends: [tseslint.configs.strictTypeChecked],
    languageOptions: {
      parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname, extraFileExtensions: ['.svelte'] },
    },
    rules: {
      eqeqeq: 'error',
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/switch-exhaustiveness-check': ['error', { considerDefaultExhaustiveForUnions: true }],
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      '@typescript-eslint/no-confusing-void-expression': ['error', { ignoreArrowShorthand: true }],
      // There are no enums to check: the compiler refuses them.
      '@typescript-eslint/no-unsafe-enum-assignment': 'off',
      '@typescript-eslint/no-unsafe-enum-comparison': 'off',
      // Reads of typed arrays inside a proven range need it; the compiler calls every indexed read doubtful.
      '@typescript-eslint/no-non-null-assertion': 'off',
    },
  },
  {
    files: ['test/**/*.ts'],
    rules: {
      // A test stands in for a large class with a few of its members, and looks at methods without calling them.
      '@typescript-eslint/no-unsafe-class-instance-assignment': 'off',
      '@typescript-eslint/unbound-method': 'off',
    },
  },
  {
    files: ['src/**/*.ts'],
    ignores: ['src/cli/**'],
    rules: {
      'no-restricted-syntax': ['error', ...everywhere, ...noHiddenInputs],
      'no-restricted-properties': [
        'error',
        {
          object: 'Math',
          property: 'random',
          message: 'Trials must be repeatable: take a seeded stream as an argument.',
        },
        { object: 'Date', property: 'now', message: 'The engine has no clock: take the date as an argument.' },
      ],
    },
  },
  {
    files: ['renderer/**/*.svelte', 'renderer/**/*.svelte.ts'],
    extends: [svelte.configs.recommended],
    languageOptions: { parserOptions: { parser: tseslint.parser } },
    rules: {
      'no-undef': 'off',
      // The policy of the page refuses inline styles; style: directives pass, because they set properties.
      'no-restricted-syntax': [
        'error',
        ...everywhere,
        {
          selector: 'SvelteAttribute[key.name="style"]:not(:has(SvelteMustacheTag))',
          message: 'The page policy blocks style="…": use a class or a style: directive.',
        },
      ],
    },
  },
);
