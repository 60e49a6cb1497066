import fs from 'node:fs';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { arrowsOf, projectFolders, projectRoot } from './arrows.ts';

describe('The arrows of the house', () => {
  it('point inwards everywhere', async () => {
    const { modules, breaches } = await arrowsOf(projectRoot, projectFolders);
    expect(breaches).toEqual([]);
    // A checker that sees nothing finds nothing: it has to have read every folder, and as many files as there are.
    for (const folder of projectFolders) {
      const there = sourcesBelow(path.join(projectRoot, folder));
      expect(there, folder).toBeGreaterThan(0);
      expect(modules.filter((module) => module.startsWith(`${folder}/`)).length, folder).toBeGreaterThanOrEqual(there);
    }
  });
});

function sourcesBelow(folder: string): number {
  return fs
    .readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name) && !/(^|\/)node_modules\//.test(name) && !name.endsWith('.d.ts')).length;
}

/** A house of one sound file a folder; each canary adds one forbidden import to it. */
const sound: Readonly<Record<string, string>> = {
  'core/a.ts': "import { z } from 'zod';\nimport { b } from './b.ts';\nexport const a = [z, b];\nexport type A = typeof a;\n",
  'core/b.ts': 'export const b = 1;\n',
  'fixtures/demo/index.ts': "import { a } from '../../core/a.ts';\nexport const demo = a;\n",
  'fixtures/other.ts': 'export const other = 1;\n',
  'electron/shell.ts':
    "import fs from 'node:fs';\nimport { demo } from '../fixtures/demo/index.ts';\nexport const shell = [fs, demo];\nexport type Shell = typeof shell;\n",
  'renderer/page.tsx': "import { a } from '../core/a.ts';\nexport const page = a;\nexport type Page = typeof page;\n",
  'tests/x.test.ts':
    "import { shell } from '../electron/shell.ts';\nimport { page } from '../renderer/page.tsx';\nimport { other } from '../fixtures/other.ts';\nexport const x = [shell, page, other];\n",
};

const canaries: readonly [what: string, file: string, line: string, rule: string][] = [
  ['core takes from the page', 'core/b.ts', "import { page } from '../renderer/page.tsx';", 'core-rests-on-itself'],
  [
    'core takes only a type from the page',
    'core/b.ts',
    "import type { Page } from '../renderer/page.tsx';",
    'core-rests-on-itself',
  ],
  [
    'core takes an inline type from the shell',
    'core/b.ts',
    "import { type Shell } from '../electron/shell.ts';",
    'core-rests-on-itself',
  ],
  ['core takes a package that is not named', 'core/b.ts', "import { useState } from 'react';", 'core-rests-on-itself'],
  ['core takes from Node', 'core/b.ts', "import fs from 'node:fs';", 'core-rests-on-itself'],
  ['core re-exports from the shell', 'core/b.ts', "export { shell } from '../electron/shell.ts';", 'core-rests-on-itself'],
  [
    'core loads the shell later',
    'core/b.ts',
    "export const later = () => import('../electron/shell.ts');",
    'core-rests-on-itself',
  ],
  ['core takes from a fixture', 'core/b.ts', "import { other } from '../fixtures/other.ts';", 'core-rests-on-itself'],
  [
    'the page takes from the shell',
    'renderer/page.tsx',
    "import { shell } from '../electron/shell.ts';",
    'the-page-asks-the-host',
  ],
  [
    'the page takes only a type from the shell',
    'renderer/page.tsx',
    "import type { Shell } from '../electron/shell.ts';",
    'the-page-asks-the-host',
  ],
  [
    'the page takes from a fixture',
    'renderer/page.tsx',
    "import { demo } from '../fixtures/demo/index.ts';",
    'the-page-asks-the-host',
  ],
  ['the page takes from Node', 'renderer/page.tsx', "import os from 'node:os';", 'the-page-has-no-node'],
  [
    'the shell takes from the page',
    'electron/shell.ts',
    "import { page } from '../renderer/page.tsx';",
    'the-shell-does-not-draw',
  ],
  [
    'the shell takes only a type from the page',
    'electron/shell.ts',
    "import type { Page } from '../renderer/page.tsx';",
    'the-shell-does-not-draw',
  ],
  [
    'the shell takes a fixture that is for tests',
    'electron/shell.ts',
    "import { other } from '../fixtures/other.ts';",
    'the-shell-knows-the-demo-only',
  ],
  [
    'a fixture takes from the shell',
    'fixtures/other.ts',
    "import { shell } from '../electron/shell.ts';",
    'fixtures-know-only-core',
  ],
  ['a fixture takes a package', 'fixtures/other.ts', "import { z } from 'zod';", 'fixtures-know-only-core'],
  ['the shell takes from a test', 'electron/shell.ts', "import { x } from '../tests/x.test.ts';", 'nothing-rests-on-tests'],
  ['two files of core need each other', 'core/b.ts', "import { a } from './a.ts';", 'no-circles'],
  ['two files of core need each other for a type', 'core/b.ts', "import type { A } from './a.ts';", 'no-circles'],
  ['an import leads nowhere', 'renderer/page.tsx', "import { gone } from './gone.ts';", 'every-import-is-there'],
];

describe('The check of the arrows', () => {
  const houses: string[] = [];
  afterAll(() => houses.forEach((house) => fs.rmSync(house, { recursive: true })));

  function build(files: Readonly<Record<string, string>>): string {
    fs.mkdirSync(path.join(projectRoot, '.cache'), { recursive: true });
    const house = fs.mkdtempSync(path.join(projectRoot, '.cache/house-'));
    houses.push(house);
    for (const [name, text] of Object.entries(files)) {
      fs.mkdirSync(path.dirname(path.join(house, name)), { recursive: true });
      fs.writeFileSync(path.join(house, name), text);
    }
    fs.symlinkSync(path.join(projectRoot, 'node_modules'), path.join(house, 'node_modules'), 'junction');
    return house;
  }

  it('passes a sound house, and sees every file of it', async () => {
    const { modules, breaches } = await arrowsOf(build(sound), projectFolders);
    expect(breaches).toEqual([]);
    expect([...modules].sort()).toEqual(Object.keys(sound).sort());
  });

  it.each(canaries)('is not blind when %s', async (_what, file, line, rule) => {
    const { breaches } = await arrowsOf(build({ ...sound, [file]: `${line}\n${sound[file]}` }), projectFolders);
    expect(breaches.filter((breach) => breach.startsWith(`${rule}: `) && breach.includes(file))).not.toEqual([]);
  });
});
