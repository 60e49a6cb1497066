import ts from 'typescript';
import { linkFaults } from './links.ts';
import type { Tracked } from './tracked.ts';

const folders = ['electron', 'renderer', 'core', 'tests', 'fixtures'];
const topLevel = ['README.md', 'DEVELOPERS.md', 'package.json', 'package-lock.json', 'tsconfig.json', ...folders];
const MOST_LINES = 300;

// Put together from parts, so that this file does not hold what it looks for.
const packageHosts = ['npmjs', 'yarnpkg', 'npmmirror', 'jfrog', 'nexus'].map(
  (name) => new RegExp(`\\b${name}\\.(org|com|io)\\b|//${name}\\.`),
);
const machinePaths = ['work', 'root', 'Users', 'mnt', 'workspace'].map(
  (name) => new RegExp(`(^|[\\s"'\`(=:])(/${name}/|[A-Z]:\\\\+${name}\\\\)`, 'm'),
);

/** What is wrong with the tree as a whole: a line a fault. `longFiles` are those that may be long, each with its reason. */
export function houseFaults(tree: readonly Tracked[], longFiles: Readonly<Record<string, string>>): string[] {
  const faults: string[] = [];
  const top = new Set(tree.map(({ path }) => path.split('/')[0] ?? ''));
  for (const name of top)
    if (!topLevel.includes(name) && !name.startsWith('.')) faults.push(`${name} has no place at the top level`);
  for (const folder of folders) {
    if (!tree.some(({ path, text }) => path === `${folder}/README.md` && text.trim() !== ''))
      faults.push(`${folder} has no README.md`);
  }
  for (const { path, text } of tree) {
    if (packageHosts.some((host) => host.test(text))) faults.push(`${path} names a package host`);
    if (machinePaths.some((place) => place.test(text))) faults.push(`${path} names a place on somebody's machine`);
    const lines = text.split('\n').length - 1;
    if (/\.tsx?$/.test(path) && lines > MOST_LINES && longFiles[path] === undefined) faults.push(`${path} has ${lines} lines`);
    if (path.startsWith('core/') && path.endsWith('.ts'))
      faults.push(...clocksIn(text).map((line) => `${path}:${line} asks for the time`));
  }
  faults.push(...linkFaults(tree));
  for (const path of Object.keys(longFiles)) {
    const lines = (tree.find((file) => file.path === path)?.text ?? '').split('\n').length - 1;
    if (lines <= MOST_LINES) faults.push(`${path} is no longer long; take it off the list`);
  }
  return faults;
}

/** `new Date()` without an argument, and `Date()`, are the clock that a lint rule for `Date.now` does not see. */
function clocksIn(text: string): number[] {
  const file = ts.createSourceFile('core.ts', text, ts.ScriptTarget.ES2023, true);
  const lines: number[] = [];
  const visit = (node: ts.Node): void => {
    const isDate = (ts.isNewExpression(node) || ts.isCallExpression(node)) && node.expression.getText(file) === 'Date';
    if (isDate && (ts.isCallExpression(node) || (node.arguments ?? []).length === 0)) {
      lines.push(file.getLineAndCharacterOfPosition(node.getStart()).line + 1);
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  return lines;
}
