import js from '@eslint/js';
import { defineConfig } from 'eslint/config';
import prettier from 'eslint-config-prettier';
import svelte from 'eslint-plugin-svelte';
import ts from 'typescript-eslint';
import { closedTo, features, purity, rooms, siblingsClosedTo } from './fences.js';
import svelteConfig from './svelte.config.js';

const forbiddenGlobals = [
  ...['Date', 'performance', 'Intl', 'setTimeout', 'setInterval', 'requestAnimationFrame'],
  ...['window', 'document', 'navigator', 'location', 'localStorage', 'indexedDB', 'fetch'],
  ...['globalThis', 'self', 'crypto', 'console', 'process', 'Buffer', 'require']
].map((name) => ({ name, message: `${purity}: ${name} is out.` }));

const pureRules = {
  'no-restricted-globals': ['error', ...forbiddenGlobals],
  'no-restricted-properties': [
    'error',
    { object: 'Math', property: 'random', message: `${purity}: hand a random source in.` }
  ],
  'no-restricted-syntax': [
    'error',
    {
      selector: 'ImportExpression',
      message: `${purity}: import() answers later and hides imports.`
    }
  ]
};

const machine = '^(node:|(fs|os|path|crypto|process|child_process|perf_hooks|worker_threads)(/|$))';

/** @param {string} names alternatives of a regular expression */
const importOf = (names) => `^(\\$lib/|(\\.\\./)+(lib/)?|.*src/lib/)(${names})(/|$)`;

/** @param {string} name @param {import('./fences.js').Room} room */
function fenceAround(name, room) {
  const may = room.may.length > 0 ? `only ${room.may.join(', ')}` : 'nothing';
  const message = `[fence: ${room.fence}] ${name} imports ${may} of ours, because ${room.because}.`;
  const patterns = [
    { regex: importOf(closedTo(name).join('|')), message },
    { regex: '(^|/)routes(/|$)', message: `[fence: routes-on-top] Pages compose rooms: ${message}` }
  ];
  if (room.pure) {
    patterns.push(
      { regex: machine, message: `${purity}: Node’s modules are out.` },
      { regex: '^(\\$app|\\$env|svelte)(/|$)|\\.svelte$', message: `${purity}: no Svelte here.` }
    );
  }
  return {
    name: `fence/${room.fence}`,
    files: [`src/lib/${name}/**`],
    rules: { 'no-restricted-imports': ['error', { patterns }], ...(room.pure ? pureRules : {}) }
  };
}

const throughIndex = {
  regex: '^(\\$lib|(\\.\\./)+lib|.*src/lib)/app/[^/]+/.',
  message:
    '[fence: feature-by-its-index] A feature is used through its index, so that what is inside can move.'
};

/** The room’s own fence for files of one feature, and what it may use of its siblings. */
function fenceAroundFeature(/** @type {string} */ name) {
  const { may, because } = features[name];
  const message = `[fence: feature-${name}] ${name} uses ${may.join(', ') || 'no sibling'}, because ${because}.`;
  const closed = siblingsClosedTo(name).join('|');
  const others = Object.keys(features).filter((other) => other !== name);
  const [, { patterns }] = fenceAround('app', rooms.app).rules['no-restricted-imports'];
  patterns.push(
    { regex: `^(\\$lib|(\\.\\./)+lib|.*src/lib)/app/(${closed})(/|$)`, message },
    { regex: `^(\\.\\./)+(${others.join('|')})(/|$)`, message: throughIndex.message },
    throughIndex
  );
  return {
    name: `fence/feature-${name}`,
    files: [`src/lib/app/${name}/**`],
    rules: { 'no-restricted-imports': ['error', { patterns }] }
  };
}

/** A page puts rooms together; whatever else it needs is a file of a feature. */
const pages = {
  name: 'fence/pages-hold-no-logic',
  files: ['src/routes/**'],
  rules: {
    'no-restricted-imports': [
      'error',
      {
        patterns: [
          throughIndex,
          {
            regex: '^\\.{1,2}/(?!\\$types(\\.js)?$|app\\.css$)',
            message:
              '[fence: pages-hold-no-logic] A page imports rooms, not files beside it: put them into a feature of src/lib/app.'
          }
        ]
      }
    ]
  }
};

export default defineConfig(
  { ignores: ['build/', '.svelte-kit/', '.feltfoot/', 'test-results/', 'playwright-report/'] },
  js.configs.recommended,
  ...ts.configs.recommended,
  ...svelte.configs.recommended,
  prettier,
  ...svelte.configs.prettier,
  {
    // Names of a browser or of Node are TypeScript’s to know: without lists of them, a quarter less is done.
    languageOptions: { parserOptions: { lib: [], jsDocParsingMode: 'none' } },
    rules: {
      // TypeScript finds undefined names itself, and knows more of them.
      'no-undef': 'off',
      eqeqeq: ['error', 'always'],
      // A space that no one can tell from another is written out: \u00a0.
      'no-irregular-whitespace': ['error', { skipStrings: false }],
      '@typescript-eslint/consistent-type-imports': ['error', { fixStyle: 'inline-type-imports' }],
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_' }]
    }
  },
  {
    files: ['src/**', 'scripts/**', 'server/**', 'tests/**', 'bench/**'],
    rules: { 'max-lines': ['error', { max: 300, skipBlankLines: true, skipComments: true }] }
  },
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: { parserOptions: { parser: ts.parser, svelteConfig } }
  },
  ...Object.entries(rooms).map(([name, room]) => fenceAround(name, room)),
  ...Object.keys(features).map(fenceAroundFeature),
  pages
);
