// The backstop behind ESLint's fences: it resolves every import, also import() and re-exports, and
// sees cycles. The table of rooms is the same as ESLint's.
module.exports = (async () => {
  const { closedTo, features, rooms, siblingsClosedTo } = await import('./fences.js');
  const fences = Object.entries(rooms).map(([name, { fence, because }]) => ({
    name: fence,
    comment: because,
    severity: 'error',
    from: { path: `^src/lib/${name}/` },
    to: { path: `^src/(lib/(${closedTo(name).join('|')})|routes)/` }
  }));
  const siblings = Object.entries(features).map(([name, { because }]) => ({
    name: `feature-${name}`,
    comment: because,
    severity: 'error',
    from: { path: `^src/lib/app/${name}/` },
    to: { path: `^src/lib/app/(${siblingsClosedTo(name).join('|')})/` }
  }));
  return {
    forbidden: [
      ...fences,
      ...siblings,
      {
        name: 'feature-by-its-index',
        comment: 'what is inside a feature can move when nobody else names its files',
        severity: 'error',
        from: { path: '^src/(lib/app/[^/]+|routes)/' },
        to: {
          path: '^src/lib/app/',
          pathNot: ['^src/lib/app/[^/]+/index\\.ts$', '^src/$1/']
        }
      },
      {
        name: 'no-cycle',
        comment: 'two files that need each other are one file, or hide a third',
        severity: 'error',
        from: {},
        to: { circular: true }
      },
      {
        name: 'pure-room',
        comment: 'pure rooms run alike in the browser, on the server and in tests',
        severity: 'error',
        from: { path: '^src/lib/(model|scoring|wire|course|practice|fit)/' },
        to: { dependencyTypes: ['core'] }
      },
      {
        name: 'rigid-bodies-through-two-files',
        comment: 'what the library is asked for can be read in one place, and in metres',
        severity: 'error',
        from: {
          path: '^src/',
          pathNot: '^src/lib/(model/solids|sandbox/scenery/loose-solids)\\.ts$'
        },
        to: { path: 'matter-js' }
      },
      {
        name: 'nothing-imports-tests',
        comment: 'what ships must not need what checks it',
        severity: 'error',
        from: { path: '^src/' },
        to: { path: '^(tests|bench)/' }
      }
    ],
    options: {
      doNotFollow: { path: 'node_modules' },
      exclude: { path: '^(build|\\.svelte-kit|\\.feltfoot)/' },
      tsConfig: { fileName: 'tsconfig.json' },
      tsPreCompilationDeps: true,
      enhancedResolveOptions: { conditionNames: ['svelte', 'import', 'types', 'default'] }
    }
  };
})();
