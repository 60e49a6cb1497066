import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { unmeasured, withShots, type Shot } from '../../core/model/index.ts';
import { aGroup, change, opened, problemOf, redone, undone, uuid, valueOf, wordsOf } from './support.ts';

const shot = (id: number, x = 0): Shot => ({ ...unmeasured.shot, id, x, y: 0 });

describe('An edit of shots', () => {
  it('puts shots in, in place of those of the same id, and takes others out, and is undone and done again as any Change', async () => {
    const notebook = await opened();
    valueOf(notebook.apply(change(null, aGroup(1, 3))));
    const edit = { groupId: uuid(1), revision: 0, out: [0], put: [shot(1, 0.1), shot(9, 0.2)] };
    const written = valueOf(notebook.changeShots('Two in, one out', edit));
    expect(written.revision).toBe(1);
    expect(wordsOf(written.state).undo).toBe('Two in, one out');
    const after = [shot(1, 0.1), aGroup(1, 3).shots[2], shot(9, 0.2)];
    expect(notebook.load().records).toMatchObject([{ revision: 1, shots: after }]);
    valueOf(undone(notebook));
    expect(notebook.load().records).toMatchObject([{ shots: aGroup(1, 3).shots }]);
    valueOf(redone(notebook));
    expect(notebook.load().records).toMatchObject([{ shots: after }]);
  });

  it('on a group that another window changed, or that is gone, is refused and writes nothing', async () => {
    const notebook = await opened();
    valueOf(notebook.apply(change(null, aGroup(1, 3))));
    const edit = { groupId: uuid(1), revision: 0, out: [0], put: [] };
    valueOf(notebook.changeShots('First', edit));
    expect(problemOf(notebook.changeShots('Second', edit)).code).toBe('stale');
    expect(problemOf(notebook.changeShots('Third', { ...edit, groupId: uuid(7) })).sentence).toMatch(/no longer in the notebook/);
    expect(notebook.load().records).toMatchObject([{ revision: 1 }]);
  });

  it('leaves every shot it does not name as it was, in its order', () => {
    const some = fc.uniqueArray(fc.integer({ min: 0, max: 30 }), { maxLength: 20 });
    fc.assert(
      fc.property(some, some, some, (there, out, put) => {
        const after = withShots(
          there.map((id) => shot(id)),
          { out, put: put.map((id) => shot(id, 1)) },
        );
        const stay = there.filter((id) => !out.includes(id));
        expect(after.map(({ id }) => id)).toEqual([...stay, ...put.filter((id) => !stay.includes(id))]);
        expect(
          after
            .filter(({ x }) => x === 1)
            .map(({ id }) => id)
            .sort((a, b) => a - b),
        ).toEqual([...put].sort((a, b) => a - b));
      }),
    );
  });
});
