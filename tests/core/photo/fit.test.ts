import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { face } from '../../../core/group/index.ts';
import type { Result } from '../../../core/model/index.ts';
import {
  ellipseThrough,
  fitPoints,
  fitRings,
  placeOn,
  toFace,
  toPicture,
  upright,
  type FaceFit,
  type Homography,
  type RingMark,
} from '../../../core/photo/index.ts';
import { cameraOf, type View } from '../../../fixtures/photo/index.ts';
import { normalPair, randomFrom } from '../../../fixtures/random.ts';

const degrees = Math.PI / 180;
const straight: View = { distance: 2.2, aside: 0, above: 0, roll: 0, centre: { x: 0.5, y: 0.4 }, focal: 1.1, height: 0.75 };
const anyView = fc.record({
  distance: fc.double({ min: 1.6, max: 4, noNaN: true }),
  aside: fc.double({ min: -35 * degrees, max: 35 * degrees, noNaN: true }),
  above: fc.double({ min: -15 * degrees, max: 15 * degrees, noNaN: true }),
  roll: fc.double({ min: -8 * degrees, max: 8 * degrees, noNaN: true }),
  centre: fc.record({ x: fc.double({ min: 0.4, max: 0.6, noNaN: true }), y: fc.double({ min: 0.3, max: 0.45, noNaN: true }) }),
  focal: fc.constantFrom(0.8, 1.1, 1.6),
  height: fc.constant(0.75),
});
const radii = face('122')
  .rings.map(({ radius }) => radius)
  .filter((_, i) => i % 2 === 0);
const holes = [0, 1, 2, 3, 4, 5, 6].map((i) => ({ x: 0.09 * i * Math.cos(2 * i), y: 0.09 * i * Math.sin(2 * i) }));

const valueOf = (result: Result<FaceFit>): FaceFit => {
  if (!result.ok) throw new Error(result.problem.sentence);
  return result.value;
};
const ringMarks = (homography: Homography, count: number, noise: (i: number) => [number, number] = () => [0, 0]): RingMark[] =>
  radii.flatMap((radius, r) =>
    Array.from({ length: count }, (_, i) => {
      const angle = (2 * Math.PI * (i + 0.3 * r)) / count;
      const { x, y } = toPicture(homography, { x: radius * Math.cos(angle), y: radius * Math.sin(angle) });
      const [dx, dy] = noise(r * count + i);
      return { radius, picture: { x: x + dx, y: y + dy } };
    }),
  );
const farthest = (homography: Homography, fit: FaceFit): number =>
  Math.max(
    ...holes.map((hole) => {
      const { x, y } = toFace(fit.homography, toPicture(homography, hole));
      return Math.hypot(x - hole.x, y - hole.y);
    }),
  );

describe('A face fitted to marked points', () => {
  it('is exact without noise from any view, with four points and with nine (property)', () => {
    fc.assert(
      fc.property(anyView, fc.constantFrom(4, 9), (view, count) => {
        const { homography } = cameraOf(view);
        const marks = Array.from({ length: count }, (_, i) => ({ x: 0.5 * Math.cos(i * 2.4), y: 0.5 * Math.sin(i * 2.4) })).map(
          (place) => ({ face: place, picture: toPicture(homography, place) }),
        );
        const fit = valueOf(fitPoints(marks));
        expect(farthest(homography, fit)).toBeLessThan(1e-9);
        expect(fit.residual).toBeLessThan(1e-9);
        expect(fit.covariance === null).toBe(count === 4);
      }),
      { numRuns: 20 },
    );
  });

  it('is refused on three points, on a line, in one place and on what is no number, with a sentence', () => {
    const mark = (x: number, y: number) => ({ face: { x, y }, picture: { x: x + 0.5, y: 0.5 - y } });
    const codes = [
      fitPoints([mark(0, 0), mark(1, 0), mark(0, 1)]),
      fitPoints([mark(0, 0), mark(0.1, 0), mark(0.2, 0), mark(0.3, 0.2)]),
      fitPoints([mark(0.1, 0), mark(0.1, 0), mark(0.1, 0), mark(0.1, 0)]),
      fitPoints([mark(0, 0), mark(1, 0), mark(0, 1), mark(Number.NaN, 1)]),
    ].map((result) => (result.ok ? 'fitted' : result.problem.code));
    expect(codes).toEqual(['too-few-marks', 'marks-on-a-line', 'marks-on-a-line', 'bad-mark']);
  });
});

describe('A face fitted to points on its rings', () => {
  it('is exact without noise from any view but for its turn, which a mark above the centre gives (property)', () => {
    fc.assert(
      fc.property(anyView, (view) => {
        const { homography } = cameraOf(view);
        const fit = valueOf(fitRings(ringMarks(homography, 12), false));
        const turned = upright(fit, { above: toPicture(homography, { x: 0, y: 0.6 }) });
        expect(farthest(homography, turned)).toBeLessThan(1e-8);
        const level = upright(fit, {
          left: toPicture(homography, { x: -0.6, y: 0.6 }),
          right: toPicture(homography, { x: 0.6, y: 0.6 }),
        });
        expect(farthest(homography, level)).toBeLessThan(1e-8);
      }),
      { numRuns: 20 },
    );
  });

  it('needs no mark to be upright when the camera was held level, from wherever it stood (property)', () => {
    fc.assert(
      fc.property(anyView, (view) => {
        const { homography } = cameraOf({ ...view, roll: 0 });
        expect(farthest(homography, valueOf(fitRings(ringMarks(homography, 12), false)))).toBeLessThan(1e-8);
      }),
      { numRuns: 20 },
    );
  });

  it('is fixed by one ring and the centre, and not by one ring alone, whose ellipse has another centre', () => {
    const { homography } = cameraOf({ ...straight, aside: 0.5 });
    const ring = ringMarks(homography, 9).slice(0, 9);
    const centre = { radius: 0, picture: toPicture(homography, { x: 0, y: 0 }) };
    expect(farthest(homography, valueOf(fitRings([...ring, centre], false)))).toBeLessThan(1e-8);
    expect(fitRings(ring, false)).toMatchObject({ ok: false, problem: { code: 'rings-not-fixed' } });
    const middle = ellipseThrough(ring.map(({ picture }) => picture))?.centre;
    expect(Math.hypot((middle?.x ?? 0) - centre.picture.x, (middle?.y ?? 0) - centre.picture.y)).toBeGreaterThan(0.005);
  });

  it('leaves out marks that lie on something else, when it is told that some may', () => {
    const { homography } = cameraOf({ ...straight, aside: 0.4, above: 0.2 });
    const random = randomFrom(5);
    const marks = ringMarks(homography, 24, () => normalPair(random).map((u) => u * 0.0003) as [number, number]);
    const stray = marks.map((mark, i) =>
      i % 9 === 4 ? { ...mark, picture: { x: mark.picture.x + 0.02, y: mark.picture.y - 0.02 } } : mark,
    );
    const up = { above: toPicture(homography, { x: 0, y: 0.6 }) };
    expect(farthest(homography, upright(valueOf(fitRings(stray, true)), up))).toBeLessThan(0.001);
    expect(farthest(homography, upright(valueOf(fitRings(stray, false)), up))).toBeGreaterThan(0.001);
  });

  it('is refused on too few marks and on marks in one place, with a sentence', () => {
    const { homography } = cameraOf(straight);
    expect(fitRings(ringMarks(homography, 3), false)).toMatchObject({ ok: false, problem: { code: 'too-few-marks' } });
    const one = { x: 0.4, y: 0.4 };
    expect(
      fitRings(
        Array.from({ length: 9 }, () => ({ radius: 0.1, picture: one })),
        false,
      ),
    ).toMatchObject({ ok: false });
  });
});

describe('The doubt of a place', () => {
  it('covers what a place is truly off: the mean square of error over doubt is about 1 (by simulation)', () => {
    const { homography } = cameraOf({ ...straight, aside: 0.5, above: -0.2 });
    const random = randomFrom(11);
    let [squares, count] = [0, 0];
    for (let run = 0; run < 40; run++) {
      const marks = ringMarks(homography, 8, () => normalPair(random).map((u) => u * 0.0005) as [number, number]);
      const fit = upright(valueOf(fitRings(marks, false)), { above: toPicture(homography, { x: 0, y: 0.6 }) });
      for (const hole of holes) {
        const place = placeOn(fit, toPicture(homography, hole));
        squares += (Math.hypot(place.x - hole.x, place.y - hole.y) / (place.error ?? 0)) ** 2;
        count++;
      }
    }
    expect(squares / count).toBeGreaterThan(0.7);
    expect(squares / count).toBeLessThan(1.4);
  });

  it('grows by the click, as many metres as a click is long there', () => {
    const fit = valueOf(fitRings(ringMarks(cameraOf(straight).homography, 12), false));
    // Straight on, a width of the picture is distance over focal length wide (the pinhole's own similar triangles): 2 m.
    expect(placeOn(fit, { x: 0.6, y: 0.4 }, 0.001).error).toBeCloseTo(0.002 * Math.SQRT2, 5);
  });
});
