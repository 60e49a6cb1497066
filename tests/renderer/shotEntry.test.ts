import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { defaultPreferences, unmeasured, type Shot, type UnitChoice } from '../../core/model/index.ts';
import { exampleFletched } from '../../core/model/example.ts';
import { readShots } from '../../core/tables/index.ts';
import { writeCsv } from '../../renderer/export/csv.ts';
import { aloneSentence } from '../../renderer/features/groups/alone.ts';
import { oneGroup } from '../../renderer/features/groups/derive.ts';
import {
  endInHand,
  endOfNext,
  endText,
  newEnd,
  nextArrow,
  nextText,
  shotName,
} from '../../renderer/features/groups/entry/ends.ts';
import { blankShot, shotRows, shotsOf } from '../../renderer/features/groups/entry/shotRows.ts';
import { shotsTable } from '../../renderer/features/groups/entry/shotsCsv.ts';
import { isWholePlace, numberedPlace, typedPlace } from '../../renderer/features/groups/entry/typedPlace.ts';
import { faceDots } from '../../renderer/plots/face/faceDots.ts';

const { units } = defaultPreferences;
const inUnit = (setting: UnitChoice['setting']): UnitChoice => ({ ...units, setting });
const shot = (id: number, patch: Partial<Shot> = {}): Shot => ({ ...unmeasured.shot, id, x: 0, y: 0, ...patch });
const asked = { layout: null, unit: '', origin: { x: 0, y: 0 }, yGrows: 'up' } as const;

/** Places to the tenth of a millimetre, as a click keeps them. */
const anyPlace = fc.integer({ min: -30_000, max: 30_000 }).map((tenths) => tenths / 1e4);
const anyReason = fc
  .oneof(
    fc.string({ maxLength: 30 }),
    fc.constantFrom('=SUM(A1)', '+1', '-2', '@x', "'=1", 'wind, and "gusts"', 'slipped off the rest'),
  )
  .map((text) => text.replace(/[\t\r\n]/g, ' ').trim())
  .filter((text) => text !== '' && !text.startsWith("'") && !/["]/.test(text));
const anyShots = fc
  .array(
    fc.record({
      x: anyPlace,
      y: anyPlace,
      arrow: fc.option(fc.integer({ min: 1, max: 999 })),
      end: fc.option(fc.integer({ min: 1, max: 9999 })),
      leftOut: fc.option(anyReason),
    }),
    { minLength: 1, maxLength: 40 },
  )
  .map((shots): Shot[] => shots.map((one, id) => ({ ...one, x: one.x + 0, y: one.y + 0, id })));

describe('the ends of a group', () => {
  const first = [1, 2, 3].map((arrow) => shot(arrow, { arrow, end: 1 }));
  const none = { begun: null, size: null };

  it('begin with the first, and go on in the latest until another is begun', () => {
    expect(endInHand([], none)).toBe(1);
    expect([endInHand(first, none), endOfNext(first, none)]).toEqual([1, 1]);
    expect(newEnd(first, none)).toBe(2);
    expect(endInHand(first, { ...none, begun: 2 })).toBe(2);
    // An end without a shot is not followed by another.
    expect(newEnd(first, { ...none, begun: 2 })).toBeNull();
    expect(newEnd([], none)).toBeNull();
  });

  it('begin by themselves once one is full, when it is known how many arrows make one', () => {
    expect(endOfNext(first, { ...none, size: 4 })).toBe(1);
    expect(endOfNext(first, { ...none, size: 3 })).toBe(2);
    expect(endText(first, { ...none, size: 3 })).toBe('end 1, 3 of 3');
    expect(endText(first.slice(0, 1), none)).toBe('end 1, 1 shot');
  });

  it('are not invented for shots whose ends nobody noted', () => {
    const old = [shot(1, { arrow: 1 }), shot(2, { arrow: 2 })];
    expect([endInHand(old, none), endOfNext(old, { ...none, size: 2 }), newEnd(old, none)]).toEqual([null, null, 1]);
    expect(endText(old, none)).toBe('ends not noted');
  });

  it('number no arrow by itself: an order of shooting is no number', () => {
    const bare = [shot(1, { end: 1 }), shot(2, { end: 1 })];
    expect([nextArrow([], 1), nextArrow(bare, 1), nextArrow(bare, 2)]).toEqual([null, null, null]);
    expect([nextText([], 1), nextText(bare, 1), nextText(bare, 2)]).toEqual(['shot 1 next', 'shot 3 next', 'shot 1 next']);
  });

  it('count on from the number that a person gave, each end from the lowest of the group, past those the end has', () => {
    const four = [shot(1, { end: 1 }), shot(2, { end: 1, arrow: 4 })];
    expect([nextArrow(four, 1), nextArrow(four, 2)]).toEqual([5, 4]);
    expect(nextText(four, 1)).toBe('arrow 5 next');
    const two = [...first, shot(4, { arrow: 2, end: 2 })];
    expect([nextArrow(two, 1), nextArrow(two, 2), nextArrow(two, 3)]).toEqual([4, 3, 1]);
    const crossed = [shot(1, { end: 1, arrow: 6 }), shot(2, { end: 1, arrow: 5 })];
    expect(nextArrow(crossed, 1)).toBe(7);
    expect(nextArrow([shot(1, { end: 1, arrow: 999 })], 1)).toBeNull();
  });

  it('stop counting once the last shot has its number taken off', () => {
    const stopped = [...first, shot(4, { end: 1 })];
    expect([nextArrow(stopped, 1), nextArrow(stopped, 2)]).toEqual([null, null]);
  });

  it('name a shot by its arrow, or by its order in its end', () => {
    expect(shotName(shot(1, { arrow: 3, end: 2 }), [])).toBe('arrow 3 of end 2');
    const some = [shot(1, { end: 1 }), shot(2, { end: 2 }), shot(5, { end: 2 }), shot(6)];
    expect(some.map((one) => shotName(one, some))).toEqual(['shot 1 of end 1', 'shot 1 of end 2', 'shot 2 of end 2', 'shot 1']);
  });
});

describe('a place that is typed', () => {
  const mm = (text: string, choice = units) => {
    const place = typedPlace(text, choice);
    return place.ok ? [place.value.x, place.value.y].map((value) => Math.round(value * 1e5) / 100) : place.problem.sentence;
  };

  it.each([
    ['12 -8', [12, -8]],
    ['12 −8', [12, -8]],
    ['12-8', [12, -8]],
    ['-12 -8', [-12, -8]],
    ['12 8', [12, 8]],
    ['12+8', [12, 8]],
    ['1,5; -2,5', [1.5, -2.5]],
    ['12 mm -0.8 cm', [12, -8]],
    ['1/2 in -1 1/4 in', [12.7, -31.75]],
    ['12r8d', [12, -8]],
    ['12l 8u', [-12, 8]],
    ['8d12r', [12, -8]],
    ['3.5R 0U', [3.5, 0]],
  ] as const)('%s is read', (text, place) => {
    expect(mm(text)).toEqual(place);
  });

  it('is in the person’s own unit, and refused in a sentence when it is none', () => {
    expect(mm('1 -2', inUnit('cm'))).toEqual([10, -20]);
    for (const text of ['12', '12 8 4', 'left a bit', '12r 8l', '12 gr 4', '4000 0']) expect(mm(text)).toMatch(/^[A-Z].*\.$/);
  });

  it('may have the arrow’s number before it', () => {
    expect(numberedPlace('3: 12 -8')).toEqual({ arrow: 3, place: ' 12 -8' });
    expect(numberedPlace('12:12r8d')).toEqual({ arrow: 12, place: '12r8d' });
    for (const text of ['12 -8', '0: 12 -8', '1234: 1 2', ': 1 2', 'a: 1 2'])
      expect(numberedPlace(text)).toEqual({ arrow: null, place: text });
  });

  it('is whole without Enter when both figures have their sides, and not before', () => {
    expect(['12r8d', '8u 3l'].map(isWholePlace)).toEqual([true, true]);
    expect(['12r', '12r8', '12 -8', '12r8l', 'rd', '12 mm'].map(isWholePlace)).toEqual([
      false,
      false,
      false,
      false,
      false,
      false,
    ]);
  });
});

describe('shots as a table', () => {
  it('come back from a file as they were written out, whatever the unit, and those left out with their reasons', () => {
    fc.assert(
      fc.property(anyShots, fc.constantFrom('mm', 'cm', 'in'), (shots, setting) => {
        const choice = inUnit(setting);
        const back = readShots(writeCsv(shotsTable(shots, choice)), asked, inUnit('mm'));
        expect(back.read.leftOut).toBe(0);
        const told = ({ x, y, arrow, end, leftOut }: Omit<Shot, 'id'>) => ({ x, y, arrow, end, leftOut });
        expect(back.shots.map(told)).toEqual(shots.map(told));
      }),
    );
  });

  it('hold no cell that a table program would take for a formula, and numbers with a minus stay numbers', () => {
    const csv = writeCsv(shotsTable([shot(1, { x: -0.012, y: 0.1, leftOut: '=HYPERLINK("x")' })], units));
    expect(csv.split('\r\n')[1]).toBe(',,-12,100,yes,"\'=HYPERLINK(""x"")"');
  });

  it('stand in rows that come to the same shots when nothing is typed', () => {
    fc.assert(
      fc.property(anyShots, (shots) => {
        const { shots: kept, wrong } = shotsOf([...shotRows(shots, units), blankShot], units);
        expect(wrong).toBeNull();
        expect(kept).toEqual(shots);
      }),
    );
  });

  it('need both figures, and say which row has but one', () => {
    const [row = blankShot] = shotRows([shot(1, { x: 0.01, y: 0.02 })], units);
    expect(shotsOf([{ ...row, y: blankShot.y }], units).wrong).toBe('Row 1: a shot needs both figures, across and up.');
  });
});

describe('the dots of a large group', () => {
  const view = { middle: { x: 0, y: 0 }, half: 0.2, size: 400 };
  const many = Array.from({ length: 2000 }, (_, id) =>
    shot(id, { x: Math.sin(id) / 10, y: Math.cos(id) / 10, end: 1 + (id >> 10) }),
  );

  it('stay as they were but for the path of the shot that was moved', () => {
    const before = faceDots(view, many);
    const after = faceDots(
      view,
      many.map((one) => (one.id === 700 ? { ...one, x: 0 } : one)),
    );
    const other = after.filter(({ key, path }) => before.find((one) => one.key === key)?.path !== path);
    expect(before.length).toBeGreaterThan(4);
    expect(other).toHaveLength(1);
  });

  it('are written anew for no more shots than share a path with the one that was moved, among 10,000', () => {
    let written = 0;
    const counting = (one: Shot): Shot =>
      Object.defineProperty({ ...one }, 'x', {
        get: () => {
          written += 1;
          return one.x;
        },
      });
    const all = Array.from({ length: 10_000 }, (_, id) => counting(shot(id, { x: Math.sin(id) / 10, y: Math.cos(id) / 10 })));
    faceDots(view, all);
    expect(written).toBe(10_000);
    written = 0;
    faceDots(
      view,
      all.map((one) => (one.id === 7000 ? shot(7000) : one)),
    );
    expect(written).toBeGreaterThan(0);
    expect(written).toBeLessThan(500);
  });

  it('tell the end in hand from those before', () => {
    const drawn = faceDots(view, many, 2);
    const dots = (earlier: boolean) =>
      drawn.filter((one) => one.earlier === earlier).reduce((sum, { path }) => sum + (path.match(/M/g)?.length ?? 0), 0);
    expect([dots(true), dots(false)]).toEqual([1024, 976]);
  });
});

describe('what one group says by itself', () => {
  it('counts its shots as they are, and says an interval of one figure once', () => {
    const many = (count: number) => {
      const shots = Array.from({ length: count }, (_, i) => shot(i, { x: (i % 7) / 1000, y: (i % 5) / 1000 }));
      return aloneSentence(oneGroup({ ...exampleFletched, shots }, 0.003), units);
    };
    expect(many(105).headline).toMatch(/^105 fletched shots, /);
    expect(many(1234).headline).toMatch(/^1,234 fletched shots, /);
    expect(many(20_000).subline).toMatch(/^Very many such shots would show 2 mm\./);
    expect(many(12).subline).toMatch(/ show \d+ mm \(\d+ to \d+ mm, 95 %\)\./);
  });
});
