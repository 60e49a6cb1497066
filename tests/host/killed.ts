import { unmeasured } from '../../core/model/unmeasured.ts';
import type { BenchRecord, ShotGroup } from '../../core/model/index.ts';
import { exampleFletched } from '../../core/model/example.ts';

const ids = { 1: '40000000-0000-4000-8000-000000000001', 2: '40000000-0000-4000-8000-000000000002' } as const;

/** One of two records that always carry the same number, in the note and in every shot, so that a torn write shows. */
export function counted(which: 1 | 2, count: number, shots: number): ShotGroup {
  const place = ((count % 1000) + 1) / 1000;
  return {
    ...exampleFletched,
    id: ids[which],
    note: String(count),
    shots: Array.from({ length: shots }, (_, id) => ({ ...unmeasured.shot, id, x: place, y: -place, arrow: (id % 12) + 1 })),
  };
}

export function settled(records: readonly BenchRecord[]): [ShotGroup, ShotGroup] | [null, null] {
  const [one, two] = [1, 2].map((which) => records.find(({ id }) => id === ids[which as 1 | 2]));
  return one?.kind === 'group' && two?.kind === 'group' ? [one, two] : [null, null];
}
