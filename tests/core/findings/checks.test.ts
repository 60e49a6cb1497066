import { describe, expect, it } from 'vitest';
import {
  allFindings,
  bareInHand,
  centreShotFinding,
  lookOverFinding,
  nockingPointFinding,
  overshootFinding,
  tillerFinding,
} from '../../../core/findings/index.ts';
import {
  defaultPreferences,
  exampleBare,
  exampleFletched,
  exampleNow,
  type Stamp,
  type Trial,
} from '../../../core/model/index.ts';
import { exampleTrial } from '../../../core/trials/index.ts';
import { setUp } from '../trials/build.ts';

const { units } = defaultPreferences;
const inch = 0.0254;
const mm = 0.001;
const list = (bundle = setUp(), more: Partial<Parameters<typeof allFindings>[1]> = {}) =>
  allFindings(bundle, { units, now: exampleNow, ...more });

describe('settings against common practice', () => {
  // Tiller 0 to +6 mm; longbow +3 to +6; even for three under; string walkers by trial: common practice.
  const tiller = (tillerMm: number, form = {}, bow = {}) =>
    tillerFinding(setUp({ form, bow, settings: { tiller: tillerMm * mm } }), units);
  it('takes a tiller of 0 to +6 mm for split fingers, +3 to +6 for a longbow, even for three under, none for string walkers', () => {
    expect([-1, 0, 6, 7].map((figure) => tiller(figure)?.level)).toEqual(['caution', 'ok', 'ok', 'caution']);
    expect([2, 3, 6].map((figure) => tiller(figure, {}, { bowKind: 'longbow' })?.level)).toEqual(['caution', 'ok', 'ok']);
    expect([0, 4].map((figure) => tiller(figure, { hook: 'three under' })?.level)).toEqual(['ok', 'caution']);
    expect(tiller(-8, { hook: 'string walk' })).toBeNull();
    expect([tiller(7)?.title, tiller(-1)?.title]).toEqual(['Tiller +7 mm, high', 'Tiller \u22121 mm, low']);
  });

  // Nocking point 3 to 10 mm recurve, 10 to 16 off the hand or shelf, 10 to 15 and more string walking: common practice, from memory.
  const nock = (nockMm: number, form = {}, bow = {}) =>
    nockingPointFinding(setUp({ form, bow, settings: { nockingPoint: nockMm * mm } }), units);
  it('starts a nocking point at 3 to 10 mm from a rest, 10 to 16 off the hand or shelf, 10 and more for string walkers', () => {
    expect([2, 3, 10, 11].map((figure) => nock(figure)?.level)).toEqual(['caution', 'ok', 'ok', 'caution']);
    expect([9, 10, 16, 17].map((figure) => nock(figure, {}, { arrowPass: 'hand' })?.level)).toEqual([
      'caution',
      'ok',
      'ok',
      'caution',
    ]);
    expect([8, 25].map((figure) => nock(figure, { hook: 'string walk' })?.level)).toEqual(['caution', 'ok']);
    expect(nock(-2)?.title).toBe('Nocking point 2 mm below square, low');
  });

  // 1.6 to 3.2 mm at the point (common practice); at the button only 0.5 to 1.0 mm (computed from the two distances).
  it('judges a centre shot at the datum where it was read: 2 mm is right at the point and far out at the button', () => {
    const at = (figure: number, centreShotDatum: 'point' | 'button') =>
      centreShotFinding(setUp({ settings: { centreShot: figure * mm, centreShotDatum } }), units);
    expect([at(2, 'point')?.level, at(2, 'button')?.level, at(0.7, 'button')?.level]).toEqual(['ok', 'caution', 'ok']);
    expect(at(2, 'button')?.title).toBe('Centre shot 2 mm outward, at the button: too far out');
    expect(at(-1, 'point')?.title).toBe('Centre shot 1 mm inward, at the point: too far in');
  });

  it('says the outward side for each hand', () => {
    const detail = (hand: 'right' | 'left') => centreShotFinding(setUp({ archer: { hand }, bow: { hand } }), units)?.detail;
    expect([detail('right'), detail('left')]).toEqual([
      'Common practice for a finger release: left of the string for a right-handed archer.',
      'Common practice for a finger release: right of the string for a left-handed archer.',
    ]);
  });
});

describe('look-over: unknown is shown, never assumed sound', () => {
  const looked = (at: string | null) =>
    lookOverFinding(
      setUp({ bow: { lookedOver: at === null ? null : ({ at, offsetMinutes: 60 } satisfies Stamp) } }),
      'bow',
      exampleNow,
    );

  it('holds for the day and no longer', () => {
    expect(looked('2026-05-02T09:00:00Z').level).toBe('ok');
    const old = looked('2026-05-01T09:00:00Z');
    expect([old.level, old.title, old.short.figure]).toEqual(['unknown', 'Bow not looked over since 1 May 2026', '1 d']);
    expect(old.action).toMatchObject({ kind: 'go', screen: 'bow', field: 'bow.lookOver' });
  });

  it('is unknown when there is none on record, or when it lies in time to come', () => {
    expect(looked(null)).toMatchObject({ level: 'unknown', title: 'Bow: no look-over on record' });
    expect(looked('2026-05-03T09:00:00Z').level).toBe('unknown');
  });
});

describe('the ground beyond the target', () => {
  // A national rule of 2014: targets to 60 yd want 110 yd from the shooting line, farther ones 50 yd behind the target.
  const clear = (yards: number) =>
    overshootFinding({ value: 190, low: 170, high: 210 }, yards * 0.9144, { ...units, distance: 'yd' }).detail;
  it('keeps 110 yd clear for targets to 60 yd, and 50 yd behind those farther off', () => {
    expect([clear(20), clear(60), clear(80)].map((text) => /keeps (\d+) yd/.exec(text)?.[1])).toEqual(['110', '110', '130']);
  });

  it('is a caution however far the line lies: an arrow that flies 163 m is not made harmless by a line at 166 m', () => {
    expect(overshootFinding({ value: 190, low: 170, high: 210 }, 50, units)).toMatchObject({
      level: 'caution',
      title: 'Loosed high, an arrow could fly 210 m',
    });
    const past = overshootFinding({ value: 143, low: 124, high: 163 }, 120, units);
    expect([past.level, past.title]).toEqual(['caution', 'Loosed high, an arrow could fly 163 m']);
    expect(past.detail).toMatch(/^Never draw above the target\. .*keeps 166 m clear/);
  });

  it('waits while the speed is not known', () => {
    expect(overshootFinding(null, 50, units).level).toBe('waiting');
  });
});

describe('the caution for bare shafts', () => {
  const warned = (bare?: boolean) =>
    list(setUp(), { screen: 'groups', ...(bare === undefined ? {} : { bare }) }).some(({ id }) => id === 'range');
  const none = { groups: [], shown: [], trials: [], chosen: null };
  const long = { ...exampleNow, at: new Date(Date.parse(exampleNow.at) + 90 * 24 * 3_600_000).toISOString() };
  const trial = (kind: Trial['trial'], patch: Partial<Trial> = {}): Trial => ({
    ...exampleTrial(kind).trial,
    ended: null,
    ...patch,
  });

  it('stands at the head, and only where somebody knows of none is it left off', () => {
    expect([warned(), warned(true), warned(false)]).toEqual([true, true, false]);
    expect(list(setUp(), { screen: 'trials', bare: true }).find(({ level }) => level === 'caution')?.id).toBe('range');
  });

  it('is due wherever bare shafts are planned, begun, shot or looked at', () => {
    const today = { ...exampleBare, context: { ...exampleBare.context, shotAt: exampleNow } };
    expect(bareInHand({ ...none, groups: [today] }, exampleNow)).toBe(true);
    expect(bareInHand({ ...none, groups: [today], chosen: trial('walk-back') }, exampleNow)).toBe(true);
    expect(bareInHand({ ...none, groups: [exampleBare], shown: [exampleFletched, exampleBare] }, long)).toBe(true);
    for (const kind of ['bare shaft', 'nocking point'] as const) {
      expect(bareInHand({ ...none, trials: [trial(kind)] }, long), kind).toBe(true);
      expect(bareInHand({ ...none, chosen: trial(kind, { ended: exampleNow }) }, long), kind).toBe(true);
    }
    expect(bareInHand({ ...none, chosen: trial('paper tear', { plan: { ...trial('paper tear').plan, others: 2 } }) }, long)).toBe(
      true,
    );
  });

  it('is not due while fletched arrows alone are shot', () => {
    expect(bareInHand({ ...none, groups: [exampleFletched], shown: [exampleFletched] }, exampleNow)).toBe(false);
    expect(bareInHand({ ...none, groups: [exampleBare] }, long)).toBe(false);
    for (const kind of ['walk-back', 'brace height', 'a against b'] as const)
      expect(bareInHand({ ...none, trials: [trial('bare shaft')], chosen: trial(kind) }, long), kind).toBe(false);
    expect(bareInHand({ ...none, trials: [trial('bare shaft', { ended: exampleNow })] }, long)).toBe(false);
  });
});

describe('the list', () => {
  it('is worst first and the same on every screen but for what the screen adds', () => {
    const bad = setUp({ settings: { pointAhead: 0, nockingPoint: 0.02, tiller: null }, bow: { lookedOver: null } });
    const order = ['stop', 'caution', 'unknown', 'waiting', 'ok'];
    const ranks = list(bad).map(({ level }) => order.indexOf(level));
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
    expect(new Set(ranks)).toEqual(new Set([0, 1, 2, 3, 4]));
    const ids = (screen: 'bow' | 'groups' | 'aim') => list(bad, { screen }).map(({ id }) => id);
    expect(ids('groups').filter((id) => id !== 'range')).toEqual(ids('bow'));
    expect(ids('aim').filter((id) => id !== 'overshoot')).toEqual(ids('bow'));
  });

  it('has every id once, a number or word in every title, and a why for everything that is judged', () => {
    const findings = list(setUp({ settings: { braceHeight: 8 * inch } }), { screen: 'groups' });
    expect(new Set(findings.map(({ id }) => id)).size).toBe(findings.length);
    for (const { level, why, title, short } of findings) {
      expect(title.length).toBeLessThan(60);
      expect(short.word).toMatch(/^\S+$/);
      if (level !== 'waiting') expect(why?.source).toBeTruthy();
    }
  });

  it('never says safe, and lets no NaN out whatever is missing', () => {
    const empty = setUp({
      archer: { drawLength: null },
      bow: { length: null, markedWeight: null, braceLow: null, braceHigh: null, leastMassPerWeight: null, lookedOver: null },
      arrowSet: {
        length: null,
        deflection: null,
        linearDensity: null,
        pointMass: null,
        weighed: null,
        diameter: null,
        lookedOver: null,
      },
      settings: {
        braceHeight: null,
        tiller: null,
        nockingPoint: null,
        centreShot: null,
        buttonTurns: null,
        weightOnFingers: null,
        pointAhead: null,
      },
    });
    const findings = list(empty, { screen: 'aim' });
    expect(findings.filter(({ level }) => level === 'waiting').length).toBeGreaterThan(6);
    for (const text of [findings, list()].map((found) => JSON.stringify(found))) {
      expect(text).not.toMatch(/\bsafe\b/i);
      expect(text).not.toMatch(/NaN|Infinity/);
    }
  });

  it('says for a compound what does not hold', () => {
    const findings = list(setUp({ bow: { bowKind: 'compound' } }));
    expect(findings.find(({ id }) => id === 'compound')?.level).toBe('unknown');
    const fingers = ['suitability', 'ability', 'tiller', 'nockFit', 'nockingPoint', 'centreShot', 'strands'];
    expect(findings.map(({ id }) => id).filter((id) => fingers.includes(id))).toEqual([]);
    expect(list().map(({ id }) => id)).toEqual(expect.arrayContaining(fingers));
  });
});
