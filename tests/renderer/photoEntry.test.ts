import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { face } from '../../core/group/index.ts';
import type { Shot } from '../../core/model/index.ts';
import { toPicture, type FaceFit, type Homography } from '../../core/photo/index.ts';
import { defaultPreferences } from '../../core/model/index.ts';
import { lengthText } from '../../renderer/features/groups/photo/fineText.ts';
import { movedTo, wholeOf, zoomed } from '../../renderer/features/groups/photo/flatView.ts';
import { placed, shotsOf, type Hole } from '../../renderer/features/groups/photo/holes.ts';
import { loupeCorner, SIDE } from '../../renderer/features/groups/photo/loupeCorner.ts';
import { changed, nextId, without } from '../../renderer/features/groups/photo/points.ts';
import { fitOf, isFarOff, radiusOf, shortOf, toolOf, toolsFor } from '../../renderer/features/groups/photo/ringMarks.ts';
import { toPixel } from '../../renderer/plots/face/geometry.ts';

const homography: Homography = [1.1, 0.05, 0.52, 0.04, -0.9, 0.36, 0.12, -0.08, 1];
const fit: FaceFit = { homography, residual: 0, marks: 9, unit: 0.2, covariance: null, turn: 0 };
const none = { begun: null, size: null };

describe('Holes marked in a photo', () => {
  const at = [
    { x: 0.01, y: 0.02 },
    { x: -0.05, y: 0.1 },
    { x: 0.123_44, y: -0.08 },
  ];
  const holes: readonly Hole[] = at.map((place, i) => ({
    id: i + 1,
    picture: toPicture(homography, place),
    arrow: i === 1 ? 9 : null,
  }));

  it('become shots where they lie on the face, to a tenth of a millimetre, numbered from the first that a person numbered', () => {
    const shots = shotsOf([], placed(holes, fit), none);
    expect(shots).toEqual([
      { id: 1, x: 0.01, y: 0.02, arrow: null, end: 1, leftOut: null },
      { id: 2, x: -0.05, y: 0.1, arrow: 9, end: 1, leftOut: null },
      { id: 3, x: 0.1234, y: -0.08, arrow: 10, end: 1, leftOut: null },
    ]);
  });

  it('stop counting at one whose number was taken off', () => {
    const off = changed(holes, 3, { arrow: 'none' as const });
    expect(shotsOf([], placed(off, fit), none).map(({ arrow }) => arrow)).toEqual([null, 9, null]);
  });

  it('go on after the shots that are there: ids, numbers, and the next end when one is full', () => {
    const there: Shot[] = [{ id: 7, x: 0, y: 0, arrow: 2, end: 3, leftOut: null }];
    const shots = shotsOf(there, placed(holes, fit), { begun: null, size: 2 });
    expect(shots.map(({ id, arrow, end }) => [id, end, arrow])).toEqual([
      [8, 3, 3],
      [9, 4, 9],
      [10, 4, 10],
    ]);
    expect(there).toHaveLength(1);
  });

  it('are moved, numbered and taken out by their ids, the last one without', () => {
    expect(nextId([])).toBe(1);
    expect(nextId(holes)).toBe(4);
    expect(changed(holes, 2, { arrow: 4 }).map(({ arrow }) => arrow)).toEqual([null, 4, null]);
    expect(without(holes, 1).map(({ id }) => id)).toEqual([2, 3]);
    expect(without(holes, null).map(({ id }) => id)).toEqual([1, 2]);
    expect(without([], null)).toEqual([]);
  });
});

describe('The window onto the straightened face', () => {
  const whole = wholeOf(0.2, 500);
  const place = fc.double({ min: -0.2, max: 0.2, noNaN: true });

  it('goes closer about a point, which stays where it is on screen, as long as the window stays on the face', () => {
    const at = { x: 0.02, y: -0.03 };
    const close = zoomed(whole, whole, 2, at);
    expect(close.half).toBeCloseTo(whole.half / 2, 12);
    expect(toPixel(close, at).x).toBeCloseTo(toPixel(whole, at).x, 9);
    expect(toPixel(close, at).y).toBeCloseTo(toPixel(whole, at).y, 9);
  });

  it('never leaves the whole, and is never closer than an eighth of it', () => {
    fc.assert(
      fc.property(place, place, fc.array(fc.constantFrom(0.5, 2), { maxLength: 8 }), (x, y, steps) => {
        const view = steps.reduce((now, factor) => zoomed(now, whole, factor, { x, y }), whole);
        expect(view.half).toBeGreaterThanOrEqual(whole.half / 8 - 1e-12);
        expect(Math.abs(view.middle.x) + view.half).toBeLessThanOrEqual(whole.half + 1e-12);
        expect(Math.abs(view.middle.y) + view.half).toBeLessThanOrEqual(whole.half + 1e-12);
        const moved = movedTo(view, whole, { x, y });
        expect(Math.abs(moved.middle.x - x)).toBeLessThanOrEqual(view.half + 1e-12);
        expect(Math.abs(moved.middle.y - y)).toBeLessThanOrEqual(view.half + 1e-12);
        expect(Math.abs(moved.middle.x) + moved.half).toBeLessThanOrEqual(whole.half + 1e-12);
      }),
    );
  });

  it('is back at the whole after as many steps wider as closer', () => {
    const at = { x: 0.15, y: 0.1 };
    const back = zoomed(zoomed(whole, whole, 2, at), whole, 0.5, at);
    expect(back.half).toBeCloseTo(whole.half, 12);
    expect(back.middle.x).toBeCloseTo(0, 12);
  });
});

describe('The loupe', () => {
  it('stands within the picture and never under the pointer, and off the marks where a corner is free of them', () => {
    const across = fc.integer({ min: 0, max: 500 });
    fc.assert(
      fc.property(across, across, (x, y) => {
        const corner = loupeCorner(500, 500, { x, y }, []);
        expect(corner.x >= 0 && corner.y >= 0 && corner.x + SIDE <= 500 && corner.y + SIDE <= 500).toBe(true);
        expect(x >= corner.x && x <= corner.x + SIDE && y >= corner.y && y <= corner.y + SIDE).toBe(false);
      }),
    );
    const near = loupeCorner(500, 500, { x: 200, y: 200 }, []);
    const marked = loupeCorner(500, 500, { x: 200, y: 200 }, [{ x: near.x + 20, y: near.y + 20 }]);
    expect(marked).not.toEqual(near);
  });
});

describe('Rings marked by hand', () => {
  const target = face('40');
  const round = (radius: number, count: number, from: number) =>
    Array.from({ length: count }, (_, i) => {
      const angle = (2 * Math.PI * i) / count;
      const picture = toPicture(homography, { x: radius * Math.cos(angle), y: radius * Math.sin(angle) });
      return { id: from + i, radius, picture };
    });

  it('are offered by the zone they bound, those where the colour changes first, and after them the centre, the way up and the gold', () => {
    const tools = toolsFor(target);
    // wa-rules: colours change outside 9, 7, 5 and 3.
    expect(tools.slice(0, 5).map(({ text }) => text)).toEqual([
      'outer edge of 9, gold to red',
      'outer edge of 7, red to blue',
      'outer edge of 5, blue to black',
      'outer edge of 3, black to white',
      'outer edge of 10',
    ]);
    expect(tools).toHaveLength(13);
    expect(tools.slice(-3).map(({ value }) => value)).toEqual(['ring 0', 'up', 'gold']);
    expect(tools.map(({ value }) => radiusOf(value)).filter((radius) => radius !== null)).toHaveLength(11);
    expect(new Set(tools.map(({ value }) => shortOf(value, target))).size).toBe(13);
    expect(radiusOf(toolOf(0.16))).toBe(0.16);
  });

  it('say how the face lies as soon as they are enough, and what is wanted until then', () => {
    expect(fitOf([])).toBeNull();
    const few = fitOf(round(0.16, 5, 1));
    expect(few?.ok === false && few.problem.sentence).toMatch(/At least 7 marks/);
    const enough = fitOf([...round(0.16, 6, 1), ...round(0.08, 4, 7)]);
    if (enough?.ok !== true) throw new Error('the rings were to be fitted');
    expect(enough.value.residual).toBeLessThan(1e-9);
    expect(isFarOff(enough.value, target)).toBe(false);
  });

  it('of another face lie far off', () => {
    const wrong = fitOf([...round(0.16, 6, 1), ...round(0.1, 6, 7).map((mark) => ({ ...mark, radius: 0.06 }))]);
    if (wrong?.ok !== true) throw new Error('the rings were to be fitted');
    expect(isFarOff(wrong.value, target)).toBe(true);
  });
});

describe('A small length', () => {
  it('keeps a digit more than a place has, and never reads as nought', () => {
    const { units } = defaultPreferences;
    const mm = { ...units, setting: 'mm' as const };
    expect(lengthText(0.000_43, mm)).toBe('0.4 mm');
    expect(lengthText(0.000_02, mm)).toBe('less than 0.1 mm');
    expect(lengthText(0, { ...units, setting: 'in' as const })).toBe('less than 0.01 in');
  });
});
