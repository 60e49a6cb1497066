import fs from 'node:fs';
import path from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { publicFunctions, readme, readReadme, withList, type PublicFunction } from './listFunctions.ts';

describe('the list of functions in core/README.md', () => {
  let functions: readonly PublicFunction[] = [];
  beforeAll(() => {
    functions = publicFunctions();
  });

  it('finds the functions of every room', () => {
    const folders = fs.readdirSync(path.dirname(readme), { withFileTypes: true }).filter((entry) => entry.isDirectory());
    const rooms = folders.map(({ name }) => name).filter((name) => name !== 'model'); // the records: schemas, no functions to list
    expect(new Set(functions.map(({ room }) => room))).toEqual(new Set(rooms));
    expect(functions.length).toBeGreaterThan(100);
    expect(functions.map(({ name }) => name)).toEqual(expect.arrayContaining(['shiftOfGroups', 'suitability', 'trajectory']));
  });

  it('has a sentence and a unit for each', () => {
    for (const { name, sentence, returns } of functions) {
      expect(sentence, name).toMatch(/^[A-Z].*\.$/);
      expect(returns, name).toMatch(/\[[^\]]+\]$/);
    }
  });

  it('is up to date: npm run functions makes it anew', async () => {
    expect(await withList(readReadme(), functions)).toBe(readReadme());
  });

  it('would be out of date with one function more or less, or another sentence', async () => {
    const [first, ...rest] = functions;
    if (first === undefined) throw new Error('no functions');
    const others = [rest, [{ ...first, name: 'another' }, ...functions], [{ ...first, sentence: 'Something else.' }, ...rest]];
    for (const other of others) expect(await withList(readReadme(), other)).not.toBe(readReadme());
  });
});
