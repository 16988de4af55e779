/** Who may import whom. A package's `dependencies` list says the same; this tool proves it on the real imports. */
const MAY_IMPORT = {
  science: [],
  wording: ['science'],
  journal: [],
  guidance: ['science', 'wording'],
  planning: ['science', 'wording', 'guidance', 'journal'],
  catalogue: ['science', 'wording', 'guidance', 'planning'],
  paper: ['science', 'wording', 'planning', 'journal'],
}
const PURE = ['science', 'wording', 'guidance', 'planning', 'catalogue']

const packageRules = Object.entries(MAY_IMPORT).map(([name, allowed]) => ({
  name: `${name}-imports-downward-only`,
  severity: 'error',
  from: { path: `^packages/${name}/src` },
  to: { path: '^(packages|apps)/', pathNot: `^packages/(${[name, ...allowed].join('|')})/` },
}))

module.exports = {
  forbidden: [
    ...packageRules,
    {
      name: 'pure-packages-use-no-node',
      severity: 'error',
      from: { path: `^packages/(${PURE.join('|')})/src`, pathNot: '\\.test\\.ts$' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'science-has-no-dependencies',
      severity: 'error',
      from: { path: '^packages/science/src', pathNot: '\\.test\\.ts$' },
      to: { pathNot: '^packages/science/' },
    },
    {
      // A sheet is set from what was reckoned: a thread that only sets it need not load what reckons.
      name: 'paper-takes-only-types-of-what-reckons',
      severity: 'error',
      from: { path: '^packages/paper/src', pathNot: '\\.test\\.ts$' },
      to: { path: '^packages/(planning|journal)/', dependencyTypesNot: ['type-only'] },
    },
    {
      name: 'apps-import-no-other-app',
      severity: 'error',
      from: { path: '^apps/([^/]+)/', pathNot: '\\.test\\.ts$|/e2e/' },
      to: { path: '^apps/', pathNot: '^apps/$1/' },
    },
    {
      name: 'packages-import-no-app',
      severity: 'error',
      from: { path: '^packages/' },
      to: { path: '^apps/' },
    },
    {
      name: 'source-imports-no-test-help',
      severity: 'error',
      from: { path: '/src/', pathNot: '\\.test\\.tsx?$|/testing/' },
      to: { path: '/(testing|e2e)/' },
    },
    {
      name: 'no-circular',
      severity: 'error',
      from: {},
      to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } },
    },
  ],
  options: {
    tsPreCompilationDeps: true,
    doNotFollow: { path: 'node_modules' },
    exclude: { path: 'dist/' },
    // Workspace packages are links: resolve them to the source they point at, so that a rule can see the real path.
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'node', 'default'],
      extensions: ['.ts', '.tsx', '.js', '.mjs', '.json'],
      symlinks: true,
    },
  },
}
