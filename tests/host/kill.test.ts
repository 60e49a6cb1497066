import fs from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildWriter } from './buildWriter.mjs';
import { type KillPlan, killOnce, type KillReport, seeded } from './killing.ts';
import { tempNotebook } from './support.ts';

const random = seeded(1206);
let writer = '';
beforeAll(async () => {
  writer = await buildWriter();
});
afterAll(() => fs.rmSync(path.dirname(writer), { recursive: true }));

/** `npm run soak` does the same some hundred times. */
async function killed(times: number, plan: Omit<KillPlan, 'share'>, file: () => string): Promise<KillReport[]> {
  const reports: KillReport[] = [];
  for (let i = 0; i < times; i++) reports.push(await killOnce(writer, file(), { ...plan, share: 1.2 * random() }));
  return reports;
}
const faults = (reports: readonly KillReport[]) => reports.map(({ fault }) => fault).filter((fault) => fault !== null);

describe('A bench that is killed while it writes', { timeout: 180_000 }, () => {
  it('with transactions larger than the page cache loses nothing and tears nothing', async () => {
    // 2 x 1500 shots are some 150 kB of text against a cache of 16 pages, 64 kB.
    const file = tempNotebook();
    const reports = await killed(6, { shots: 1500, pagesCached: 16, while: 'writing' }, () => file);
    expect(faults(reports)).toEqual([]);
    expect(reports.at(-1)?.found).toBeGreaterThanOrEqual(12);
  });

  it("with transactions larger than SQLite's own cache loses nothing and tears nothing", async () => {
    // 2 x 24,000 shots are some 2.3 MB of text, and as much again in the journal, against the default cache of 2 MB.
    const file = tempNotebook();
    const reports = await killed(2, { shots: 24_000, pagesCached: 0, while: 'writing' }, () => file);
    expect(faults(reports)).toEqual([]);
    expect(reports.at(-1)?.found).toBeGreaterThanOrEqual(4);
  });

  it('or while the notebook is being made leaves none, or a whole one', async () => {
    const reports = await killed(5, { shots: 10, pagesCached: 0, while: 'opening' }, tempNotebook);
    expect(faults(reports)).toEqual([]);
    expect(reports).toHaveLength(5);
  });
});
