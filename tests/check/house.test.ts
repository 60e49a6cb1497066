import { describe, expect, it } from 'vitest';
import { projectRoot } from './arrows.ts';
import { houseFaults } from './house.ts';
import { type Tracked, trackedTree } from './tracked.ts';

/** Files that may be longer than 300 lines, each with its reason. */
const longFiles: Readonly<Record<string, string>> = {};

describe('The house', () => {
  it('has its top level, its readmes, short files, and nothing of one machine in it', () => {
    const tree = trackedTree(projectRoot);
    expect(tree.length).toBeGreaterThan(100);
    expect(houseFaults(tree, longFiles)).toEqual([]);
  });
});

const sound: readonly Tracked[] = ['core', 'electron', 'renderer', 'tests', 'fixtures'].map((name) => ({
  path: `${name}/README.md`,
  text: `# ${name}\n`,
}));
const withFile = (name: string, text: string) => [...sound, { path: name, text }];

describe('The check of the house', () => {
  it('passes a sound one', () => {
    expect(houseFaults([...sound, { path: '.gitignore', text: 'dist\n' }], {})).toEqual([]);
  });

  it.each([
    ['a sixth folder', withFile('docs/a.md', 'x'), /^docs has no place/],
    ['a stray file at the top', withFile('notes.txt', 'x'), /^notes\.txt has no place/],
    ['a folder without a readme', sound.slice(1), /^core has no README/],
    ['an empty readme', [{ path: 'core/README.md', text: ' \n' }, ...sound.slice(1)], /^core has no README/],
    ['a package host', withFile('package-lock.json', `"https://registry.${'npmjs'}.org/zod"`), /names a package host/],
    [
      'a place on a machine',
      withFile('core/a.ts', `const at = '${['', 'Users', 'wren', 'x'].join('/')}';`),
      /somebody's machine/,
    ],
    ['a long file', withFile('core/a.ts', 'export {};\n'.repeat(301)), /core\/a\.ts has 301 lines/],
    [
      'a link that leads nowhere',
      withFile('README.md', 'See [the guide](core/GUIDE.md).'),
      /^README\.md points to core\/GUIDE\.md, which is not there/,
    ],
    [
      'a picture that was never made, in a table',
      withFile('README.md', '| ![Bow](core/bow.png) | ![Aim](core/aim.png "Aim") |'),
      /core\/bow\.png, which is not there\nREADME\.md points to core\/aim\.png/,
    ],
    ['a link out of a folder', withFile('core/a.md', '[up](../README.md#care)'), /^core\/a\.md points to README\.md/],
    ['a clock in core', withFile('core/a.ts', 'export const f = () =>\n  new Date();\n'), /core\/a\.ts:2 asks for the time/],
    ['the other clock in core', withFile('core/a.ts', 'export const f = () => Date();\n'), /core\/a\.ts:1 asks for the time/],
  ])('catches %s', (_what, tree, fault) => {
    expect(houseFaults(tree, {}).join('\n')).toMatch(fault);
  });

  it('catches a file on the list of long ones that has become short', () => {
    expect(houseFaults(withFile('core/a.ts', 'export {};\n'), { 'core/a.ts': 'once long' })).toEqual([
      'core/a.ts is no longer long; take it off the list',
    ]);
  });

  it('lets a file point to what is there, to a place elsewhere, to a place in itself, and to nothing in code', () => {
    const text = '[core](core/README.md#units), [all](./core), [net](https://example.org/x.md), [below](#care), `[x](none.md)`';
    expect(houseFaults(withFile('README.md', text), {})).toEqual([]);
    expect(houseFaults(withFile('README.md', '```\n[x](none.md)\n```\n'), {})).toEqual([]);
  });

  it('lets core read a moment that it is given', () => {
    expect(
      houseFaults(
        withFile('core/a.ts', "export const f = (at: string) => new Date(at).getTime() - Date.parse('2026-01-01');\n"),
        {},
      ),
    ).toEqual([]);
  });
});
