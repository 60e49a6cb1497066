import { describe, expect, it } from 'vitest';
import { projectRoot } from './arrows.ts';
import { trackedTree } from './tracked.ts';
import { unusedExports } from './unusedExports.ts';

describe('What a file lets out', () => {
  it('is taken by another file', () => {
    const tree = trackedTree(projectRoot);
    expect(tree.length).toBeGreaterThan(100);
    expect(unusedExports(tree, ['core', 'renderer', 'electron'])).toEqual([]);
  });
});

const takes = (path: string, text: string) => ({ path, text });
const a = takes('core/a.ts', 'export const one = 1;\nexport function two() {}\nexport type Three = 3;\n');

describe('The check of what is let out', () => {
  it.each([
    ['nobody', takes('core/b.ts', 'export {};'), ['one', 'two']],
    ['a comment only', takes('core/b.ts', "// import { one } from './a.ts';\n"), ['one', 'two']],
    ['another file of the same name', takes('core/b.ts', "import { one } from './x/a.ts';"), ['one', 'two']],
    ['an import by name', takes('core/b.ts', "import { one } from './a.ts';"), ['two']],
    ['an import under another name', takes('tests/b.test.ts', "import { two as deux } from '../core/a.ts';"), ['one']],
    ['an import of a type', takes('core/b.ts', "import { type Three, two } from './a.ts';"), ['one']],
    ['a door', takes('core/index.ts', "export { one, two } from './a.ts';"), []],
    ['a door that lets all through', takes('core/index.ts', "export * from './a.ts';"), []],
    ['an import of all', takes('core/b.ts', "import * as a from './a.ts';"), []],
    ['an import at run time', takes('core/b.mjs', "const { one } = await import('./a.ts');"), []],
    ['an import as an address', takes('core/b.ts', "import at from './a.ts?worker&url';"), ['one', 'two']],
  ])('sees what is taken by %s', (_what, other, left) => {
    expect(unusedExports([a, other], ['core'])).toEqual(left.map((name) => `core/a.ts ${name}`));
  });

  it('lets an export be that an example of its own file runs, and asks of the named folders only', () => {
    const example = takes('core/a.ts', '/**\n * @example one() // 1\n */\nexport const one = () => 1;\n');
    expect(unusedExports([example], ['core'])).toEqual([]);
    expect(unusedExports([a], ['electron'])).toEqual([]);
  });

  it('sees a default, and what is only passed on', () => {
    const files = [a, takes('core/b.ts', "export { one, two } from './a.ts';\nexport default 1;\n")];
    expect(unusedExports(files, ['core'])).toEqual(['core/b.ts one', 'core/b.ts two', 'core/b.ts default']);
  });
});
