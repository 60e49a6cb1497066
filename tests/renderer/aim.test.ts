import { describe, expect, it } from 'vitest';
import type { Bundle } from '../../core/model/bundle.ts';
import { exampleBundle } from '../../core/model/example.ts';
import { defaultPreferences, type UnitChoice } from '../../core/model/preferences.ts';
import { aimPicture, type AimPicture } from '../../renderer/features/aim/derive.ts';
import { tableDistances } from '../../renderer/features/aim/distances.ts';
import { noFlight } from '../../renderer/features/aim/noFlight.ts';
import type { FlownChoice } from '../../renderer/features/aim/store.ts';
import { basis, headline, holdSentence, overLine, readingAt } from '../../renderer/features/aim/words.ts';

const { units } = defaultPreferences;
const yards: UnitChoice = { ...units, distance: 'yd' };
const untouched: FlownChoice = { setFor: null };

const withSetup = (settings: Partial<Bundle['setup']['settings']>, form: Partial<Bundle['setup']['form']> = {}): Bundle => ({
  ...exampleBundle,
  setup: {
    ...exampleBundle.setup,
    settings: { ...exampleBundle.setup.settings, ...settings },
    form: { ...exampleBundle.setup.form, ...form },
  },
});

function pictureOf(bundle: Bundle, choice: FlownChoice = untouched, inUnits = units): AimPicture {
  const picture = aimPicture(bundle, choice, inUnits);
  if (!picture.ok) throw new Error(picture.problem.sentence);
  return picture.value;
}

describe('the words of the Aim screen', () => {
  it('say a hold with its side and its band, nearer end first', () => {
    expect(holdSentence(30, { value: -0.86, low: -0.92, high: -0.8 }, units)).toBe(
      'At 30 m hold the tip 86 cm below the centre (80 to 92)',
    );
    expect(holdSentence(60, { value: 0.5, low: 0.4, high: 0.7 }, units)).toBe(
      'At 60 m hold the tip 50 cm above the centre (40 to 70)',
    );
  });

  it('say both sides when the band holds the centre', () => {
    expect(holdSentence(30, { value: 0.15, low: -0.1, high: 0.54 }, units)).toBe(
      'At 30 m hold the tip 15 cm above the centre (10 cm below to 54 cm above)',
    );
    expect(holdSentence(30, { value: 0, low: -0.1, high: 0.1 }, units)).toBe('At 30 m hold the tip on the centre');
  });

  it('say heights over and under the line, never with a minus', () => {
    expect(overLine({ value: 0.64, low: 0.61, high: 0.67 }, units)).toBe('64 cm over the line (61 to 67)');
    expect(overLine({ value: -1.02, low: -1.1, high: -0.95 }, units)).toBe('102 cm under the line (95 to 110)');
    expect(overLine({ value: 1e-9, low: 0, high: 2e-9 }, units)).toBe('on the line of sight');
  });

  it('state the finding in the headline: the rise with a sight, the point-on distance without', () => {
    const sight = pictureOf(withSetup({ arrowSpeed: 55 }, { aiming: 'sight' }));
    expect(headline(sight, false, units)).toMatch(/^Set for 50 m it rises \d+ cm above the line of sight$/);
    const bare = pictureOf(withSetup({ arrowSpeed: 55 }, { aiming: 'gap', eyeHeight: 0.06 }));
    expect(headline(bare, true, units)).toMatch(/^Point on at \d+ m, \d+ to \d+$/);
  });

  it('say what the band rests on', () => {
    expect(basis(pictureOf(withSetup({ arrowSpeed: 55 })), false, units)).toContain('a measured speed of 180 ft/s');
    const estimated = basis(pictureOf(withSetup({})), false, units);
    expect(estimated).toContain('a speed estimated from the bow');
    expect(estimated).toContain('A chronograph narrows it.');
    // 326 gr now; with 290 gr it was measured.
    const before = withSetup({ arrowSpeed: 55, speedMass: 290 * 6.479891e-5 });
    expect(basis(pictureOf(before), false, units)).toMatch(
      /rests on a speed of 17\d to 17\d ft\/s with 326 gr, carried over from 180 ft\/s measured with 290 gr, and .*\. Measure it again\./,
    );
    expect(basis(pictureOf(withSetup({}, { eyeHeight: null })), false, units)).toContain(
      'Assumed until measured: the eye height',
    );
  });

  it('say that the arrow is down where it is down', () => {
    const picture = pictureOf(withSetup({ arrowSpeed: 55 }));
    expect(readingAt(picture, 30, units)?.figures).toMatch(/over the line .* s \(.* ft\/s left/);
    expect(readingAt(picture, 78, units)?.figures).toMatch(/^down before: it meets the ground at about \d+ m$/);
  });
});

describe('the picture of the Aim screen', () => {
  it('meets the line of sight at the distance it is set for, whatever the speed is', () => {
    const picture = pictureOf(withSetup({}), { setFor: 40 });
    const row = picture.rows.find((one) => one.chosen);
    expect(row?.distance).toBe(40);
    for (const end of ['low', 'value', 'high'] as const) expect(row?.figures?.height[end]).toBeCloseTo(0, 5);
  });

  it('leaves out rows where the arrow has come down, and only beyond the target', () => {
    const { rows, setFor, down } = pictureOf(withSetup({ arrowSpeed: 45 }));
    expect(rows.length).toBeGreaterThan(6);
    for (const { distance, figures } of rows) expect(figures === null, `${distance} m`).toBe(down !== null && distance > down);
    expect(rows.filter(({ distance }) => distance <= setFor).every(({ figures }) => figures !== null)).toBe(true);
  });

  it('says no point-on distance without the eye height or the arrow’s length, but draws the flight', () => {
    const noEye = pictureOf(withSetup({}, { eyeHeight: null }));
    expect(noEye.withoutSight.pointOn).toMatchObject({ ok: false, problem: { field: 'eyeHeight' } });
    const noLength = pictureOf({ ...withSetup({ arrowSpeed: 55 }), arrowSet: { ...exampleBundle.arrowSet, length: null } });
    expect(noLength.withoutSight.pointOn).toMatchObject({ ok: false, problem: { field: 'arrowLength' } });
    expect(noLength.rows.length).toBeGreaterThan(0);
  });

  it('names the field that is missing when there is no speed and nothing to estimate it from', () => {
    const nothing = withSetup({ weightOnFingers: null, arrowSpeed: null });
    const found = aimPicture({ ...nothing, bow: { ...nothing.bow, markedWeight: null } }, untouched, units);
    expect(found.ok).toBe(false);
    if (!found.ok) expect(found.problem.field).toMatch(/weightOnFingers|markedWeight/);
  });

  it('asks a compound for a measured speed, and then draws its flight', () => {
    const compound = (arrowSpeed: number | null): Bundle => {
      const bundle = withSetup({ arrowSpeed });
      return { ...bundle, bow: { ...bundle.bow, bowKind: 'compound' } };
    };
    const estimated = aimPicture(compound(null), untouched, units);
    expect(estimated).toMatchObject({ ok: false, problem: { field: 'arrowSpeed' } });
    expect(aimPicture(compound(85), untouched, units).ok).toBe(true);
  });

  it('takes the distances of the trade in metres or in yards, and the chosen one in its place (common practice)', () => {
    expect(tableDistances(units, 30)).toEqual([10, 18, 20, 30, 40, 50, 60, 70]);
    expect(tableDistances(units, 43)).toEqual([10, 18, 20, 30, 40, 43, 50, 60, 70]);
    expect(tableDistances(yards, 27.432).map((metres) => Math.round(metres / 0.9144))).toEqual([10, 20, 30, 40, 50, 60, 70, 80]);
  });
});

describe('Aim without a flight', () => {
  const nothing: Bundle = {
    ...withSetup({ weightOnFingers: null, arrowSpeed: null, braceHeight: null }),
    archer: { ...exampleBundle.archer, drawLength: null },
    bow: { ...exampleBundle.bow, markedWeight: null },
    arrowSet: { ...exampleBundle.arrowSet, weighed: null, linearDensity: null },
  };
  const lacks = (bundle: Bundle) => {
    const found = aimPicture(bundle, untouched, units);
    return found.ok ? null : noFlight(bundle, found.problem);
  };

  it('tells all that is missing at once, and no more once it is there', () => {
    const weighed = { ...nothing, arrowSet: { ...nothing.arrowSet, weighed: 0.021 } };
    const timed = { ...nothing, setup: { ...nothing.setup, settings: { ...nothing.setup.settings, arrowSpeed: 55 } } };
    expect([nothing, weighed, timed].map((bundle) => lacks(bundle)?.title)).toEqual([
      'No flight yet: the arrow’s weight and a speed are missing',
      'No flight yet: a speed is missing',
      'No flight yet: the arrow’s weight is missing',
    ]);
    expect(lacks({ ...timed, arrowSet: weighed.arrowSet })).toBeNull();
    expect(lacks(nothing)).toMatchObject({ amiss: null, estimates: true });
  });

  it('estimates no compound’s speed, and says of a figure that cannot be that it is amiss', () => {
    expect(lacks({ ...nothing, bow: { ...nothing.bow, bowKind: 'compound' } })?.estimates).toBe(false);
    const light = { ...nothing, arrowSet: { ...nothing.arrowSet, weighed: 0.0001 } };
    expect(lacks(light)?.amiss).toBe('A weighed arrow is below what can be.');
  });
});
