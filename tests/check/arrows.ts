import path from 'node:path';
import { cruise, type ICruiseResult, type IForbiddenRuleType } from 'dependency-cruiser';

/** Packages that core may rest on; each stands in DEVELOPERS.md with its reason. */
const corePackages = ['zod', '@stdlib/[^/]+', 'ml-matrix'].map((name) => `^node_modules/${name}/`);

/** The arrows of the house. A rule's comment tells whoever breaks it what to do instead. */
const forbidden: IForbiddenRuleType[] = [
  {
    name: 'core-rests-on-itself',
    severity: 'error',
    comment: 'Core is numbers in, numbers out. Pass what you need as an argument.',
    from: { path: '^core/' },
    to: { pathNot: ['^core/', ...corePackages] },
  },
  {
    name: 'fixtures-know-only-core',
    severity: 'error',
    comment: 'A fixture is made from records and numbers. Move what else it needs into the test.',
    from: { path: '^fixtures/' },
    to: { pathNot: ['^fixtures/', '^core/'] },
  },
  {
    name: 'the-page-asks-the-host',
    severity: 'error',
    comment: 'The page reaches the shell, the files and the demo through core/host.ts.',
    from: { path: '^renderer/', pathNot: '^renderer/vite\\.config\\.ts$' },
    to: { path: ['^electron/', '^fixtures/', '^tests/', '^node_modules/(electron|node-sqlite3-wasm)/'] },
  },
  {
    name: 'the-page-has-no-node',
    severity: 'error',
    comment: 'The page runs in a browser. Ask the host.',
    from: { path: '^renderer/', pathNot: '^renderer/vite\\.config\\.ts$' },
    to: { dependencyTypes: ['core'] },
  },
  {
    name: 'the-shell-does-not-draw',
    severity: 'error',
    comment: 'Move it to core, or to the contract.',
    from: { path: '^electron/' },
    to: { path: ['^renderer/', '^tests/'] },
  },
  {
    name: 'the-shell-knows-the-demo-only',
    severity: 'error',
    comment: 'The other fixtures are for tests.',
    from: { path: '^electron/' },
    to: { path: '^fixtures/', pathNot: '^fixtures/demo/' },
  },
  {
    name: 'nothing-rests-on-tests',
    severity: 'error',
    comment: 'What two folders need belongs in core.',
    from: { pathNot: '^tests/' },
    to: { path: '^tests/' },
  },
  {
    name: 'no-circles',
    severity: 'error',
    comment: 'Break it by moving the shared idea down.',
    from: {},
    to: { circular: true },
  },
  {
    name: 'every-import-is-there',
    severity: 'error',
    comment: 'This import leads nowhere.',
    from: {},
    to: { couldNotResolve: true },
  },
];

export interface Arrows {
  /** The modules that were seen below the five folders. */
  readonly modules: readonly string[];
  /** "rule: from -> to", one for each arrow that points the wrong way. */
  readonly breaches: readonly string[];
}

/** Reads every import below a project's folders, the type-only ones too, and holds them to the arrows. */
export async function arrowsOf(root: string, folders: readonly string[]): Promise<Arrows> {
  const options = {
    baseDir: root,
    ruleSet: { forbidden },
    validate: true,
    tsPreCompilationDeps: true,
    doNotFollow: { path: 'node_modules' },
    // A stylesheet or a font is imported for Vite's sake; it has no imports of its own to look at. A worker's file is looked at as it is.
    exclude: { path: ['\\.css$', '\\.woff2$', '\\?raw$', '\\?worker&url$'] },
    preserveSymlinks: true,
    enhancedResolveOptions: {
      extensions: ['.ts', '.tsx', '.mjs', '.js', '.d.ts', '.json'],
      exportsFields: ['exports'],
      conditionNames: ['import', 'types', 'node', 'default'],
      mainFields: ['module', 'main', 'types'],
    },
  };
  const { output } = await cruise([...folders], options);
  const { modules, summary } = output as ICruiseResult;
  return {
    modules: modules.map(({ source }) => source).filter((source) => folders.includes(source.split(/[/\\]/)[0] ?? '')),
    breaches: summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} -> ${to}`).sort(),
  };
}

export const projectRoot = path.resolve(import.meta.dirname, '../..');
export const projectFolders = ['core', 'electron', 'renderer', 'fixtures', 'tests'];
