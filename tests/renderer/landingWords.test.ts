import { describe, expect, it } from 'vitest';
import { marksPicture, misjudged, readingsNow, windDrift, windFrom } from '../../core/aim/index.ts';
import { expectedScore } from '../../core/group/index.ts';
import type { Bundle } from '../../core/model/bundle.ts';
import { exampleBundle, exampleFletched } from '../../core/model/example.ts';
import { defaultPreferences, type UnitChoice } from '../../core/model/preferences.ts';
import { givenOf, usualFace, type Given } from '../../renderer/features/aim/conditions/given.ts';
import { gapText, hillWhy } from '../../renderer/features/aim/conditions/hillWords.ts';
import {
  allowOf,
  blownOf,
  hillOf,
  landsOf,
  wrongHere,
  wrongRows,
  type Lands,
} from '../../renderer/features/aim/conditions/lands.ts';
import {
  allowText,
  facePicture,
  landsTitle,
  missText,
  saidText,
  scoredText,
} from '../../renderer/features/aim/conditions/landsWords.ts';
import type { ConditionsChoice } from '../../renderer/features/aim/conditions/store.ts';
import { readsAt } from '../../renderer/features/aim/conditions/useSightReading.ts';
import { windText } from '../../renderer/features/aim/conditions/windWords.ts';
import { bandText, refusedTitle } from '../../renderer/features/aim/conditions/words.ts';
import { aimPicture } from '../../renderer/features/aim/derive.ts';
import { bundle, mark } from './marksShot.ts';

const { units } = defaultPreferences;
const yards: UnitChoice = { ...units, distance: 'yd' };
const rad = Math.PI / 180;
const none = () => null;
const untouched: ConditionsChoice = {
  slope: 0,
  windSpeed: 0,
  windHour: 3,
  marked: null,
  believed: null,
  within: null,
  face: null,
};
const measured: Bundle = {
  ...exampleBundle,
  setup: { ...exampleBundle.setup, settings: { ...exampleBundle.setup.settings, arrowSpeed: 55 } },
};

function asked(choice: Partial<ConditionsChoice>, bundle = measured, groups = [exampleFletched], inUnits = units): Given {
  const picture = aimPicture(bundle, { setFor: 50, air: null }, inUnits);
  if (!picture.ok) throw new Error(picture.problem.sentence);
  return givenOf(bundle, picture.value, { ...untouched, ...choice }, groups, inUnits);
}

function landed(given: Given): Lands {
  const found = landsOf(given);
  if (!found.ok) throw new Error(found.problem.sentence);
  return found.value;
}

const titleOf = (given: Given, inUnits = units) =>
  landsTitle(given, landed(given), wrongHere(given), inUnits).replaceAll('\u00a0', ' ');
const inCm = (metres: number) => Math.abs(100 * metres).toFixed(0);

// How a person would say it: a target at 6 m is in reach of every bow.
describe('Over a refusal', () => {
  it('a target too near to be misjudged by so much is not called out of reach', () => {
    expect(refusedTitle('too-near')).toBe('Too near for such a guess');
    expect(refusedTitle('out-of-reach')).toBe('Out of reach');
  });
});

describe('the headline of hill, wind and wrong distance', () => {
  it('says how low a sight set 5 m short strikes and what that costs, as the misjudged distance and the score have it by themselves', () => {
    const given = asked({ believed: 45 });
    const off = misjudged(given.launches.value, 45, 50);
    if (!off.ok) throw new Error(off.problem.sentence);
    // Nobody has ten groups here: 3 mrad, a settled archer's, on the 80 cm face that the rule book sets at 50 m.
    const score = (y: number) =>
      expectedScore({ spread: [0.15, 0.15], offset: { x: 0, y } }, given.shaftRadius, given.face).points;
    expect(titleOf(given)).toBe(
      `5 m short at 50 m: ${inCm(off.value)} cm low, ${score(off.value).toFixed(1)} points an arrow instead of ${score(0).toFixed(1)}`,
    );
  });

  it('says the drift of a wind from the right to the left', () => {
    const given = asked({ windSpeed: 5 });
    const drift = windDrift(given.launches.value, 50, windFrom(5, Math.PI / 2));
    if (!drift.ok) throw new Error(drift.problem.sentence);
    expect(drift.value.across).toBeLessThan(0);
    expect(titleOf(given)).toContain(`${inCm(drift.value.across)} cm left`);
    expect(titleOf(given)).toMatch(/^5 m\/s from 3 o’clock at 50 m: /);
    // 5 m/s are 11.2 mph, by the definition of the mile.
    expect(titleOf(given, yards)).toMatch(/^11\.2 mph from 3 o’clock at 54\.7 yd: /);
  });

  it('names several in a word each, and a single slope by its degrees', () => {
    expect(titleOf(asked({ slope: -30 * rad }))).toMatch(/^30° down at 50 m: \d+ cm high, /);
    expect(titleOf(asked({ slope: 20 * rad, windSpeed: 6, windHour: 9, believed: 60 }))).toMatch(
      /^Hill, wind and 10 m long at 50 m: \d+ cm high and \d+ cm right, \d\.\d points an arrow instead of \d\.\d$/,
    );
  });

  it('says of a guessed distance how far it strikes low and high', () => {
    expect(titleOf(asked({ marked: false, within: 4 }))).toMatch(
      /^A distance guessed to within 4 m at 50 m: up to \d+ cm low or \d+ cm high, \d\.\d points an arrow instead of \d\.\d$/,
    );
  });

  it('says what a sight 5 short would cost while nothing is wrong, in yards for those who shoot yards', () => {
    expect(titleOf(asked({}))).toMatch(/^Nothing to allow for at 50 m: \d\.\d points an arrow; 5 m short would be \d\.\d$/);
    expect(titleOf(asked({}, measured, [], yards), yards)).toMatch(/; 5 yd short would be \d\.\d$/);
  });

  it('keeps a figure and its unit on one line', () => {
    const given = asked({ believed: 45 });
    expect(landsTitle(given, landed(given), wrongHere(given), units)).toContain('5\u00a0m short at 50\u00a0m:');
  });
});

describe('what is said of a landing', () => {
  it('says what the score rests on: memory until there are groups enough, then the groups', () => {
    expect(scoredText(asked({}), units)).toBe(
      'On the 80 cm, 10 to 1 face, with arrows that scatter 15 cm each way (one standard deviation, from memory, a settled archer’s).',
    );
    const often = Array.from({ length: 4 }, () => exampleFletched);
    expect(scoredText(asked({}, measured, often), units)).toMatch(
      /scatter .* across, .* up \(one standard deviation, by this bow’s groups\)/,
    );
    const learner = { ...measured, archer: { ...measured.archer, experience: 'learner' as const } };
    expect(scoredText(asked({}, learner), units)).toContain('30 cm each way (one standard deviation, from memory, a learner’s)');
  });

  it('says in words that arrows miss the face, and where those go', () => {
    const said = (choice: Partial<ConditionsChoice>) => missText(landed(asked(choice)));
    expect(said({ face: '122' })).toBeNull();
    expect(said({ believed: 70, face: '40' })).toBe(
      'No arrow strikes the face; the highest pass over the butt: the ground behind it must be clear.',
    );
    expect(said({ believed: 30, face: '40' })).toContain('the lowest strike the ground in front of the butt');
    expect(said({ face: '40', windSpeed: 6 })).toMatch(/^\d+ of 100 arrows miss the face\.$/);
  });

  it('says what strikes the middle, with a sight and without', () => {
    const given = asked({ slope: 25 * rad, windSpeed: 5 });
    const allow = allowOf(given);
    if (!allow.ok) throw new Error(allow.problem.sentence);
    expect(allowText(given, allow.value, none, units)).toMatch(
      /^To strike the middle of a face at 50 m: set the sight for \d+\.\d m and hold \d+ cm right\.$/,
    );
    const bare: Bundle = { ...measured, setup: { ...measured.setup, form: { ...measured.setup.form, aiming: 'gap' } } };
    expect(allowText(asked({ slope: 25 * rad }, bare), allow.value, none, units)).toContain('aim as for');
    expect(allowText(asked({ believed: 45 }), allow.value, none, units)).toBeNull();
  });

  it('says what the sight reads there where its marks are fitted, and not to one who has no sight', () => {
    const given = asked({ slope: 25 * rad });
    const allow = allowOf(given);
    if (!allow.ok || allow.value.setFor === null) throw new Error('A distance to set the sight for was expected.');
    const { setFor } = allow.value;
    const picture = marksPicture(bundle, [mark(20), mark(60)], null);
    const [reading = null] = readingsNow(picture, [setFor.value]);
    const text = `(reads ${(reading?.value ?? 0).toFixed(1)})`;
    expect(allowText(given, allow.value, readsAt(picture), units)).toContain(`${setFor.value.toFixed(1)} m ${text}`);
    const short = { ...picture, scale: { ...picture.scale, highest: 20 } };
    expect(readsAt(short)(setFor.value)).toMatch(/^reads [\d.]+, off the bar$/);
    expect(readsAt(null)(50)).toBeNull();
    const bare: Bundle = { ...measured, setup: { ...measured.setup, form: { ...measured.setup.form, aiming: 'gap' } } };
    expect(allowText(asked({ slope: 25 * rad }, bare), allow.value, readsAt(picture), units)).not.toContain('reads');
  });

  it('gives bands their sides only where they lie on both', () => {
    expect(bandText({ value: 0.05, low: 0.042, high: 0.058 }, 'up', units)).toBe('4.2 to 5.8');
    expect(bandText({ value: -0.48, low: -0.52, high: -0.44 }, 'up', units)).toBe('44 to 52');
    expect(bandText({ value: 0.01, low: -0.02, high: 0.031 }, 'across', units)).toBe('2 left to 3.1 right');
    expect(bandText({ value: 0, low: 0, high: 0 }, 'up', units)).toBe('');
  });

  it('says the same to those who hear the picture', () => {
    const given = asked({ believed: 45, windSpeed: 3 });
    expect(saidText(landed(given), units)).toMatch(
      /^Nothing allowed for, the centre lies \d+ cm low and [\d.]+ cm left \(\d+ to \d+ cm low and [\d.]+ to [\d.]+ cm left\); \d\.\d points/,
    );
    expect(facePicture(given, landed(given), units)).toMatch(
      /^Where the group will land on the 80 cm, 10 to 1 face at 50 m with 3 m\/s/,
    );
  });

  it('tells a wind in three units and by what it does', () => {
    expect(windText(5)).toBe('5 m/s, 18 km/h, 11 mph. Force 3, gentle breeze: leaves and twigs move all the time.');
  });
});

describe('the three answers beside the face', () => {
  it('set the sight for less than the distance both ways, and say each reason the rule leaves out with what it adds', () => {
    const given = asked({ slope: 30 * rad });
    const hill = hillOf(given.launches, 50, given.slope);
    if (!hill.ok || hill.value.gap === null) throw new Error('a hill was expected');
    const [up, down] = hill.value.sides;
    expect(up?.setFor?.value).toBeLessThan(50);
    expect(down?.setFor?.value).toBeLessThan(up?.setFor?.value ?? NaN);
    const { gravity, drag, eye } = hill.value.gap;
    expect(hill.value.cosineRule + gravity + drag + eye).toBeCloseTo(up?.setFor?.value ?? NaN, 6);
    expect(gapText(given.slope, hill.value.gap, units)).toMatch(
      /^The rule leaves out gravity along the path, which slows it on the way up \(\+\d\.\d m\), drag over the whole way \(\+\d\.\d m\) and the eye over the arrow \(−\d\.\d m\)\.$/,
    );
    expect(gapText(0.01, { gravity: 0, drag: 0.01, eye: 0 }, units)).toBe(
      'Here the cosine rule is as good as the full solution.',
    );
    expect(hillWhy(given, hill.value, units).symbols.map(({ value }) => value)).toContain('30°');
  });

  it('hold off as far as the arrow drifts, to the other side', () => {
    const given = asked({});
    const blown = blownOf(given.launches, 50, 4, 3);
    if (!blown.ok) throw new Error(blown.problem.sentence);
    expect(blown.value.allow.hold.value).toBeGreaterThan(0);
    expect(blown.value.drift.value).toBeLessThan(0);
    expect(blown.value.allow.hold.value / -blown.value.drift.value).toBeCloseTo(1, 1);
  });

  it('cost nothing to who knows the distance, more to who guesses it, and most to who is out by the whole of it', () => {
    const rows = wrongRows(asked({ within: 5 }), [20, 30, 40, 50, 60]);
    expect(rows).toHaveLength(5);
    for (const { known, guessing, short, long, guess } of rows) {
      expect(guess).not.toBeNull();
      expect(known).toBeGreaterThan(guessing);
      expect(guessing).toBeGreaterThan(short);
      expect(known).toBeGreaterThan(long);
    }
  });

  it('leave a dash where nobody misjudges a distance by so much', () => {
    expect(wrongRows(asked({ within: 15 }), [16])[0]?.guess).toBeNull();
  });
});

describe('the face that is asked about', () => {
  it('is that of the latest group near the distance, else the one that the rule book sets', () => {
    // World Archery: 122 cm at 60 m and more, 80 at 30 and 50 m, 60 at 25, 40 at 18 (from memory).
    expect(usualFace([exampleFletched], 18.5)).toBe('40');
    expect([70, 60, 50, 30, 25, 18].map((distance) => usualFace([], distance))).toEqual(['122', '122', '80', '80', '60', '40']);
    const odd = { ...exampleFletched, context: { ...exampleFletched.context, distance: 50, face: '60' as const } };
    expect(usualFace([odd, exampleFletched], 52)).toBe('60');
  });
});
