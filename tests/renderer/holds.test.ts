import { describe, expect, it } from 'vitest';
import { flightBasis, pointOfAim, standingEye } from '../../core/aim/index.ts';
import { face } from '../../core/group/index.ts';
import type { Bundle } from '../../core/model/bundle.ts';
import { exampleBundle } from '../../core/model/example.ts';
import { defaultPreferences, type UnitChoice } from '../../core/model/preferences.ts';
import {
  aimedBy,
  distanceText,
  holdAt,
  holdsOf,
  strikesHigher,
  usualLines,
  withLine,
  type Aimed,
} from '../../renderer/features/aim/holds/derive.ts';
import { holdsTable } from '../../renderer/features/aim/holds/table.ts';
import { pointPaper, pointsMaker } from '../../renderer/features/aim/holds/paper.ts';
import { holdWhy } from '../../renderer/features/aim/holds/why.ts';
import { aLittle, crawlSentence, eyeHeightTells, holdCell, whereItLies } from '../../renderer/features/aim/holds/words.ts';

const { units } = defaultPreferences;
const yards: UnitChoice = { ...units, distance: 'yd' };

const bare = (eyeHeight: number | null = 0.11, arrowSpeed = 52): Bundle => ({
  ...exampleBundle,
  setup: {
    ...exampleBundle.setup,
    settings: { ...exampleBundle.setup.settings, arrowSpeed },
    form: { ...exampleBundle.setup.form, aiming: 'point of aim', eyeHeight },
  },
});

function aimedFor(bundle: Bundle, eyeUp = standingEye): Aimed {
  const basis = flightBasis(bundle);
  if (!basis.ok) throw new Error(basis.problem.sentence);
  const aimed = aimedBy(bundle, basis.value, eyeUp);
  if (!aimed.ok) throw new Error(aimed.problem.sentence);
  return aimed.value;
}

const rowAt = (aimed: Aimed, distance: number) => {
  const row = holdAt(aimed, distance);
  if (!row.ok) throw new Error(row.problem.sentence);
  return row.value;
};

describe('what the points of aim rest on', () => {
  it('is refused without the eye height or the arrow’s length: nothing is assumed', () => {
    const basis = flightBasis(bare(null));
    if (!basis.ok) throw new Error(basis.problem.sentence);
    expect(aimedBy(bare(null), basis.value, standingEye)).toMatchObject({ ok: false, problem: { field: 'eyeHeight' } });
    const shortOf = { ...bare(), arrowSet: { ...exampleBundle.arrowSet, length: null } };
    expect(aimedBy(shortOf, basis.value, standingEye)).toMatchObject({ ok: false, problem: { field: 'arrowLength' } });
  });

  it('counts the point ahead of the shaft and the height of the eye over the gold, 1.3 m up (World Archery rule book)', () => {
    const aimed = aimedFor(bare(), 1.5);
    expect(aimed.tipForward).toBeCloseTo((exampleBundle.arrowSet.length ?? NaN) + 0.02, 12);
    expect(aimed.launches.value.targetDrop).toBeCloseTo(0.2, 12);
  });
});

describe('the lines of the table', () => {
  const aimed = aimedFor(bare());
  const { pointOn } = holdsOf(aimed);
  const on = pointOn.ok ? pointOn.value.value : NaN;

  it('hold the usual distances and the point-on distance in its place, marked once', () => {
    const lines = usualLines(aimed, pointOn, units);
    const distances = lines.map(({ distance }) => distance);
    expect(distances).toEqual(distances.toSorted((a, b) => a - b));
    expect(distances).toEqual(expect.arrayContaining([10, 18, 20, 30, 40, 50, 60, 70]));
    const marked = lines.filter((line) => line.pointOn);
    expect(marked).toHaveLength(1);
    expect(marked[0]?.distance).toBeCloseTo(on, 9);
    expect(Math.abs(marked[0]?.row?.hold.value ?? NaN)).toBeLessThan(1e-4);
    expect(distanceText({ distance: on, pointOn: true }, units)).toBe(`${on.toFixed(0)} m`);
  });

  it('mark a usual distance that reads the same instead', () => {
    const at50 = { ok: true, value: { value: 50.3, low: 48, high: 53 } } as const;
    const lines = usualLines(aimed, at50, units);
    expect(lines.filter((line) => line.pointOn).map(({ distance }) => distance)).toEqual([50]);
    expect(lines).toHaveLength(8);
  });

  it('take in the chosen distance where it is not there yet, also one in yards that differs in its last digit', () => {
    const lines = usualLines(aimed, pointOn, yards);
    const line = (distance: number) => ({ distance, pointOn: false, row: null });
    expect(withLine(lines, line(30 * 0.9144 + 1e-9))).toHaveLength(lines.length);
    expect(withLine(lines, line(25)).map(({ distance }) => distance)).toEqual(
      [...lines.map(({ distance }) => distance), 25].sort((a, b) => a - b),
    );
  });

  it('leave out a distance that the bow would have to be raised too far for, and say why', () => {
    const slow = aimedFor(bare(0.06, 24));
    expect(slow.farthest).toBeLessThan(70);
    expect(holdAt(slow, 70)).toMatchObject({
      ok: false,
      problem: { code: 'too-far', sentence: expect.stringMatching(/20 degrees/) },
    });
    expect(usualLines(slow, holdsOf(slow).pointOn, units).at(-1)?.row).toBeNull();
  });

  it('are written out with their bands in the shown units', () => {
    const { columns, rows } = holdsTable(usualLines(aimed, pointOn, units), units);
    expect(columns.slice(0, 4)).toEqual([
      'distance (m)',
      'tip against the centre (cm)',
      'tip against the centre, low (cm)',
      'tip against the centre, high (cm)',
    ]);
    for (const row of rows) expect(row).toHaveLength(columns.length);
    const hold = pointOfAim(aimed.launches.value, aimed.tipForward, 30);
    expect(rows.find(([distance]) => distance === 30)?.[1]).toBeCloseTo(100 * (hold.ok ? hold.value : NaN), 2);
  });
});

describe('both sides of the point-on distance (common practice)', () => {
  it('hold under the centre inside it and over the centre beyond, with the whole band', () => {
    const aimed = aimedFor(bare(0.06));
    const { pointOn } = holdsOf(aimed);
    if (!pointOn.ok) throw new Error(pointOn.problem.sentence);
    expect(rowAt(aimed, pointOn.value.low / 2).hold.high).toBeLessThan(0);
    expect(rowAt(aimed, pointOn.value.high + 10).hold.low).toBeGreaterThan(0);
  });
});

describe('a millimetre of eye height', () => {
  // Similar triangles: a millimetre at the nock is as many at the target as the tip goes into the distance.
  it('sends the arrow higher by about the distance over the arrow’s length', () => {
    const aimed = aimedFor(bare());
    expect(strikesHigher(aimed, 30, 0.001)).toBeCloseTo((0.001 * 30) / aimed.tipForward, 2);
  });
});

describe('what a little of eye height does, in words', () => {
  // 30 m and 30 yd over 0.74 m of arrow: 40.5 and 37.1 times as much; a sixteenth of an inch is 1.5875 mm.
  it('says it in the units that the person measures and shoots in', () => {
    expect(eyeHeightTells(units)).toBe('A millimetre moves a point of aim by some 4 cm at 30 m, so nothing is assumed here.');
    expect(eyeHeightTells({ ...yards, setting: 'in' })).toBe(
      'A sixteenth of an inch moves a point of aim by some 2.3 in at 30 yd, so nothing is assumed here.',
    );
    expect(aLittle({ ...units, setting: 'in' }).size).toBeCloseTo(0.0015875, 12);
  });
});

describe('the words of a point of aim', () => {
  const band = (value: number, half: number) => ({ value, low: value - half, high: value + half });
  const row = (hold: number, ground: number | null = null) => ({
    distance: 30,
    hold: band(hold, 0.05),
    over: null,
    ground: ground === null ? null : band(ground, 0.3),
    crawl: null,
  });

  it('say in a cell the size, the side and the band', () => {
    expect(holdCell(band(-2.8, 0.05), units, ['above', 'below'])).toEqual({
      figure: '280 below',
      band: '275 to 285',
      side: 'below',
    });
    expect(holdCell(band(0.15, 0.25), units, ['above', 'below'])).toEqual({
      figure: '15 above',
      band: '10 below to 40 above',
      side: 'above',
    });
    expect(holdCell(band(0.001, 0.3), units, ['over', 'under'])).toEqual({
      figure: 'on it',
      band: '30 under to 30 over',
      side: 'on',
    });
    expect(holdCell({ value: 0.3, low: -0.002, high: 0.6 }, units, ['above', 'below']).band).toBe('0 to 60 above');
  });

  it('say what lies under the tip: the ground with its marker, the stand, the butt, or what stands behind it', () => {
    expect(whereItLies(row(-2.8, 15.5), units)).toBe(
      'That is under the ground at the target: lay a marker 15.5 m out (15.2 to 15.8) and hold the tip on it.',
    );
    expect(whereItLies(row(-1), units)).toBe('That is under the butt, on its stand.');
    expect(whereItLies(row(0.2), units)).toBe('That is on the butt.');
    expect(whereItLies(row(3), units)).toMatch(/^That is over the butt: pick something behind it/);
  });

  it('say how far a string walker goes down', () => {
    const walked = { ...row(-0.9), crawl: { value: 0.023, low: 0.014, high: 0.029 } };
    expect(crawlSentence(walked, units)).toBe('Or walk 23 mm down the string (14 to 29) and hold the tip on the centre.');
    expect(crawlSentence(row(0.9), units)).toBeNull();
  });

  it('give back behind Why the launch angle that the flight asked for', () => {
    const aimed = aimedFor(bare());
    const why = holdWhy(aimed, rowAt(aimed, 30), units);
    expect(why.symbols.map(({ symbol }) => symbol)).toEqual(['R', 'θ', 'e', 'L', 'd', 'h']);
    // Without air half of arcsin(g R / v²) is 3.13 degrees; the eye over the arrow, the drop and the drag change it by little.
    expect(Number.parseFloat(why.symbols[1]?.value ?? '')).toBeGreaterThan(2.5);
    expect(Number.parseFloat(why.symbols[1]?.value ?? '')).toBeLessThan(3.6);
  });
});

describe('the point-of-aim card', () => {
  const aimed = aimedFor(bare());

  it('has a row for every distance of its span, each with its hold, side, band and marker', () => {
    const made = pointPaper(aimed, { from: 20, to: 60, step: 10 }, face('80'), units);
    if (!made.ok) throw new Error(made.problem.sentence);
    const { rows, title } = made.value;
    expect(rows.map(({ label }) => label)).toEqual(['20 m', '30 m', '40 m', '50 m', '60 m']);
    expect(title).toMatch(/^Points of aim, point on at \d+ m/);
    for (const [i, { hold, side, holdM, ground, band }] of rows.entries()) {
      const row = rowAt(aimed, 20 + 10 * i);
      expect(holdM).toBe(row.hold.value);
      expect(hold).toMatch(side === 'on' ? /^on the centre$/ : new RegExp(`^\\d+ cm ${side}$`));
      expect(band).not.toBe('');
      expect(ground === null).toBe(row.ground === null);
    }
    expect(rows.some(({ ground }) => /^marker [\d.]+ m out$/.test(ground ?? ''))).toBe(true);
  });

  it('leaves out what this bow should not be raised for, says so, and begins with distances it can shoot', () => {
    const slow = aimedFor(bare(0.06, 24));
    const made = pointPaper(slow, { from: 10, to: 70, step: 10 }, face('80'), units);
    if (!made.ok) throw new Error(made.problem.sentence);
    expect(made.value.rows.length).toBeLessThan(7);
    expect(made.value.note).toMatch(/Past \d+ m this bow would be raised too far\.$/);
    expect(pointsMaker(slow, face('80'), units).usual.to).toBeLessThanOrEqual(slow.farthest);
    expect(pointsMaker(aimed, face('80'), yards).usual.from).toBeCloseTo(9.144, 9);
  });

  it('is refused in words for a span that holds nothing, or more than a card', () => {
    for (const span of [
      { from: 30, to: 20, step: 5 },
      { from: 10, to: 90, step: 1 },
      { from: 10, to: 20, step: 0 },
      { from: NaN, to: 20, step: 5 },
    ])
      expect(pointPaper(aimed, span, face('80'), units)).toMatchObject({ ok: false, problem: { code: 'span' } });
    expect(pointPaper(aimed, { from: 115, to: 120, step: 5 }, face('80'), units).ok).toBe(aimed.farthest >= 115);
  });
});
