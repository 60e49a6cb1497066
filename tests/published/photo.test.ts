import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ellipseThrough, fitPoints, toPicture } from '../../core/photo/index.ts';
import { cameraOf } from '../../fixtures/photo/index.ts';

/** The unit square to any quadrilateral in closed form (P. S. Heckbert, Fundamentals of Texture Mapping and Image Warping, 1989, section 2.2.3; from memory). */
function squareToQuad([p0, p1, p2, p3]: readonly (readonly [number, number])[]): number[] {
  const [x0, y0, x1, y1, x2, y2, x3, y3] = [p0, p1, p2, p3].flatMap((p) => [p?.[0] ?? 0, p?.[1] ?? 0]) as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  const [dx1, dx2, sx] = [x1 - x2, x3 - x2, x0 - x1 + x2 - x3];
  const [dy1, dy2, sy] = [y1 - y2, y3 - y2, y0 - y1 + y2 - y3];
  const determinant = dx1 * dy2 - dx2 * dy1;
  const g = (sx * dy2 - dx2 * sy) / determinant;
  const h = (dx1 * sy - sx * dy1) / determinant;
  return [x1 - x0 + g * x1, x3 - x0 + h * x3, x0, y1 - y0 + g * y1, y3 - y0 + h * y3, y0, g, h, 1];
}

const near = (x: number, y: number) =>
  fc.tuple(fc.double({ min: x - 0.2, max: x + 0.2, noNaN: true }), fc.double({ min: y - 0.2, max: y + 0.2, noNaN: true }));

describe('The homography of four marks', () => {
  it('is the closed form of a square seen as any four-sided figure (Heckbert 1989; property)', () => {
    const square = [
      { x: 0, y: 0 },
      { x: 1, y: 0 },
      { x: 1, y: 1 },
      { x: 0, y: 1 },
    ];
    fc.assert(
      fc.property(near(0, 0), near(1, 0), near(1, 1), near(0, 1), (...quad) => {
        const marks = square.map((face, i) => ({ face, picture: { x: quad[i]?.[0] ?? 0, y: quad[i]?.[1] ?? 0 } }));
        const fit = fitPoints(marks);
        if (!fit.ok) throw new Error(fit.problem.sentence);
        const wanted = squareToQuad(quad);
        fit.value.homography.forEach((value, i) => {
          expect(Math.abs(value - (wanted[i] ?? 0))).toBeLessThan(1e-8);
        });
      }),
      { numRuns: 60 },
    );
  });
});

describe('The ellipse of a ring seen askew', () => {
  it('has centre and axes of the closed form, and its centre is not the image of the ring’s (pinhole; similar triangles)', () => {
    const [distance, tilt, focal, radius] = [2, 0.5, 1, 0.4];
    const { homography } = cameraOf({
      distance,
      aside: tilt,
      above: 0,
      roll: 0,
      centre: { x: 0.5, y: 0.375 },
      focal,
      height: 0.75,
    });
    const ring = Array.from({ length: 12 }, (_, i) =>
      toPicture(homography, { x: radius * Math.cos(i / 2), y: radius * Math.sin(i / 2) }),
    );
    const ellipse = ellipseThrough(ring);
    // A point x along the slope is seen at f x cos θ/(d - x sin θ): halve the sum and the difference of both ends.
    const below = distance ** 2 - (radius * Math.sin(tilt)) ** 2;
    const along = (focal * radius * distance * Math.cos(tilt)) / below;
    const shifted = (focal * radius ** 2 * Math.sin(tilt) * Math.cos(tilt)) / below;
    expect(ellipse?.centre.x).toBeCloseTo(0.5 + shifted, 9);
    expect(ellipse?.centre.y).toBeCloseTo(0.375, 9);
    expect(ellipse?.short).toBeCloseTo(along, 9);
    expect(ellipse?.long).toBeCloseTo((focal * radius) / Math.sqrt(below), 9);
    expect(Math.abs(Math.sin(ellipse?.turn ?? 0))).toBeCloseTo(1, 9);
    expect(shifted).toBeGreaterThan(0.01);
  });
});
