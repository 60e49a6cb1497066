import fs from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import * as core from '../../../../core/index.ts';
import * as example from '../../../../core/model/example.ts';
import { docFaults } from '../../../check/docForm.ts';

const folder = path.resolve(import.meta.dirname, '../../../../core/bow/limbs');

describe('The model of the stroke', () => {
  it('says equation, units, range and source of every function, and its examples are true with what the folder itself makes', async () => {
    const names = fs.readdirSync(folder).filter((name) => name.endsWith('.ts'));
    expect(names.length).toBeGreaterThan(5);
    const own: Record<string, unknown> = {};
    for (const name of names) Object.assign(own, await import(path.join(folder, name)));
    const faults = names.flatMap((name) =>
      docFaults(
        fs.readFileSync(path.join(folder, name), 'utf8'),
        { ...core, ...example, ...own },
        Object.keys(core.sources),
      ).faults.map((fault) => `${name} ${fault}`),
    );
    expect(faults).toEqual([]);
  });
});
