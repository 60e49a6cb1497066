import { unmeasured } from '../../../core/model/unmeasured.ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { defaultPreferences, type ShotGroup } from '../../../core/model/index.ts';
import { outwardOf, outwardSide, readBareShaft } from '../../../core/trials/index.ts';
import { mirroredBundle, mirroredGroup, ring, setUp, shotWith } from './build.ts';

const { units } = defaultPreferences;
const swapSides = (text: string) =>
  text.replace(
    /left|right|Left|Right/g,
    (side) => ({ left: 'right', right: 'left', Left: 'Right', Right: 'Left' })[side] ?? side,
  );

const places = fc.array(fc.record({ x: fc.integer({ min: -80, max: 80 }), y: fc.integer({ min: -80, max: 80 }) }), {
  maxLength: 9,
});
const groupOf = (fletching: ShotGroup['fletching'], at: readonly { x: number; y: number }[], dx: number): ShotGroup => ({
  ...ring(fletching, 0, [0, 0], 0),
  shots: at.map(({ x, y }, id) => ({ ...unmeasured.shot, id, x: (x + dx) / 1000, y: y / 1000 })),
});

describe('the left hand is the mirror image', () => {
  it('leaves reading and next change unchanged when all shots and both hands are mirrored', () => {
    let read = 0;
    const pass = fc.constantFrom('rest and button', 'shelf', 'hand');
    fc.assert(
      fc.property(
        places,
        places,
        fc.integer({ min: -200, max: 200 }),
        pass,
        fc.constantFrom(7, 8.5, 9.5),
        fc.option(fc.integer({ min: 0, max: 80 }).map((eighths) => eighths / 8)),
        (first, second, dx, arrowPass, braceIn, buttonTurns) => {
          const bundle = setUp({ bow: { arrowPass }, settings: { braceHeight: braceIn * 0.0254, buttonTurns } });
          const fletched = shotWith(bundle, groupOf('fletched', first, 0));
          const bare = shotWith(bundle, groupOf('bare', second, dx));
          const one = readBareShaft(bundle, fletched, bare, units);
          const other = readBareShaft(mirroredBundle(bundle), mirroredGroup(fletched), mirroredGroup(bare), units);
          read += Number(one.lateral !== null);
          expect([other.lateral, other.vertical, other.erratic, other.problem]).toEqual([
            one.lateral,
            one.vertical,
            one.erratic,
            one.problem,
          ]);
          expect([other.next.kind, other.next.title, other.next.patch]).toEqual([one.next.kind, one.next.title, one.next.patch]);
          expect(other.others.map(({ title }) => title)).toEqual(one.others.map(({ title }) => title));
          expect(other.headline).toBe(swapSides(one.headline));
          expect(other.subline).toBe(swapSides(one.subline));
          expect(other.next.text).toBe(swapSides(one.next.text));
        },
      ),
      { numRuns: 200 },
    );
    expect(read).toBeGreaterThan(20);
  });

  it('turns stiff into weak when only the hand changes', () => {
    const fletched = ring('fletched', 8, [0, 0], 20);
    const bare = ring('bare', 8, [80, 0], 20);
    expect(readBareShaft(setUp(), fletched, bare, units).lateral).toBe('weak');
    expect(readBareShaft(mirroredBundle(setUp()), fletched, bare, units).lateral).toBe('stiff');
  });

  it('counts outward away from the riser: left for the right hand, right for the left (common practice)', () => {
    expect([outwardOf(0.01, 'right'), outwardOf(0.01, 'left')]).toEqual([-0.01, 0.01]);
    expect([outwardSide('right'), outwardSide('left')]).toEqual(['left', 'right']);
    expect(Object.is(outwardOf(0, 'right'), 0)).toBe(true);
  });
});
