import { describe, expect, it } from 'vitest';
import { face, scoreGroup, scoreShot } from '../../core/group/index.ts';
import { FaceId } from '../../core/model/index.ts';
import published from '../../fixtures/published/faces.json';

const rows = FaceId.options.map((id) => ({ id, diameters: published.diametersInCm[id] }));
/** Just inside and just outside a line: a tenth of a millimetre. */
const HAIR = 1e-4;

describe('target faces against the ring diameters of the World Archery rule book', () => {
  it('knows every face of the table, and each row has ten zones and an inner ten', () => {
    expect(Object.keys(published.diametersInCm).sort()).toEqual([...FaceId.options].sort());
    for (const { diameters } of rows) expect(diameters).toHaveLength(11);
  });

  it.each(rows)('draws the zones of $id at the printed diameters', ({ id, diameters }) => {
    const { rings, innerTen } = face(id);
    const zones = diameters.slice(0, 10).map((diameter, i) => ({ points: i + 1, diameter }));
    const printed = zones.filter((zone) => zone.diameter !== null);
    expect(rings.map((ring) => ring.points)).toEqual(printed.map((zone) => zone.points));
    printed.forEach((zone, i) => expect(rings[i]?.radius).toBeCloseTo((zone.diameter ?? NaN) / 200, 12));
    expect(innerTen).toBeCloseTo((diameters[10] ?? NaN) / 200, 12);
  });

  it.each(rows)(
    'scores $id by its lines: just inside the higher, just outside the lower, nothing off the rings',
    ({ id, diameters }) => {
      diameters.slice(0, 10).forEach((diameter, i) => {
        if (diameter === null) return;
        const radius = diameter / 200;
        expect(scoreShot({ x: 0, y: radius - HAIR }, 0, face(id)).points).toBe(i + 1);
        const lower = i > 0 && diameters[i - 1] !== null ? i : 0;
        expect(scoreShot({ x: -radius - HAIR, y: 0 }, 0, face(id)).points).toBe(lower);
      });
    },
  );

  it.each(Object.entries(published.colours))('colours the zones %s as the rule book says', (colour, zones) => {
    expect(zones).toHaveLength(2);
    for (const points of zones) expect(face('122').colourOf(points)).toBe(colour);
  });

  it('has no colour for a miss', () => expect(face('122').colourOf(0)).toBeNull());
});

describe('the line cutter: a shaft that touches the line takes the higher zone (World Archery rule book)', () => {
  // The thickest shaft allowed, 9.3 mm (the same rule book).
  const shaft = 0.0093 / 2;

  it.each(rows)('gives the 10 of $id to a shaft whose edge just reaches the line', ({ id, diameters }) => {
    const ten = (diameters[9] ?? NaN) / 200;
    expect(scoreShot({ x: ten + shaft, y: 0 }, shaft, face(id)).points).toBe(10);
    expect(scoreShot({ x: ten + shaft + HAIR, y: 0 }, shaft, face(id)).points).toBe(9);
  });

  it('counts a touched inner ten as an inner ten', () => {
    expect(scoreShot({ x: 0.0305 + shaft, y: 0 }, shaft, face('122'))).toEqual({ points: 10, inner: true });
    expect(scoreShot({ x: 0.0305 + shaft + HAIR, y: 0 }, shaft, face('122'))).toEqual({ points: 10, inner: false });
  });

  it('saves a shaft that only touches the outermost ring from a miss', () => {
    expect(scoreShot({ x: 0, y: -0.24 - shaft }, shaft, face('80-six')).points).toBe(5);
    expect(scoreShot({ x: 0, y: -0.24 - shaft - HAIR }, shaft, face('80-six')).points).toBe(0);
  });

  it('adds an end up: two tens, one of them inner, a nine and a miss make 29', () => {
    const end = [0, 0.05, 0.1, 0.7].map((x) => ({ x, y: 0 }));
    expect(scoreGroup(end, shaft, face('122'))).toEqual({ total: 29, tens: 2, inner: 1, misses: 1 });
  });

  it('refuses a place or a shaft that cannot be', () => {
    expect(() => scoreShot({ x: NaN, y: 0 }, shaft, face('122'))).toThrow(RangeError);
    expect(() => scoreShot({ x: 0, y: 0 }, -shaft, face('122'))).toThrow(RangeError);
  });
});
