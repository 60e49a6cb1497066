import { describe, expect, it } from 'vitest';
import { changeSince, markContext, thenAndNow } from '../../../../core/aim/index.ts';
import { exampleBundle, exampleNow } from '../../../../core/model/example.ts';
import type { ArrowSet, Band, Bundle, Form, Settings } from '../../../../core/model/index.ts';
import { grain, inch, poundForce } from '../../../../core/units/exact.ts';
import { valueOf } from '../../group/shots.ts';

interface Patch {
  readonly settings?: Partial<Settings>;
  readonly form?: Partial<Form>;
  readonly arrowSet?: Partial<ArrowSet>;
  readonly drawLength?: number | null;
}
const like = ({ settings = {}, form = {}, arrowSet = {}, drawLength = 27.5 * inch }: Patch): Bundle => ({
  archer: { ...exampleBundle.archer, drawLength },
  bow: exampleBundle.bow,
  arrowSet: { ...exampleBundle.arrowSet, ...arrowSet },
  setup: {
    ...exampleBundle.setup,
    settings: { ...exampleBundle.setup.settings, ...settings },
    form: { ...exampleBundle.setup.form, ...form },
  },
});
const since = (then: Patch, now: Patch) => valueOf(changeSince(markContext(like(then), exampleNow), like(now)));
const holds = (band: Band | undefined, figure: number) => band !== undefined && band.low <= figure && figure <= band.high;

describe('What changed for the marks', () => {
  it('is nothing when nothing did, or when a blank was filled in', () => {
    expect(since({}, {})).toEqual({});
    expect(since({ settings: { arrowSpeed: null } }, { settings: { arrowSpeed: 57, sightRadius: 0.8 } })).toEqual({});
    expect(since({ drawLength: null }, {})).toEqual({});
  });

  it('is the ratio of the speeds where both were measured', () => {
    const { speed } = since({ settings: { arrowSpeed: 55 } }, { settings: { arrowSpeed: 54 } });
    expect(speed?.value).toBeCloseTo(54 / 55, 12);
    // Two readings of 1 % each.
    expect((speed?.high ?? NaN) / (speed?.value ?? NaN) - 1).toBeCloseTo(0.01 * Math.SQRT2, 12);
  });

  // Klopsteg: (m + K) v² stays; K of recurve bows is 4 to 10 g. k goes as D²/m.
  it.each([
    ['estimated', null],
    ['measured before', 51],
  ])('is a slower arrow with a heavier point, its speed %s', (_, arrowSpeed) => {
    const [then, now] = [100, 120].map((points) => ({
      settings: { arrowSpeed },
      arrowSet: { pointMass: points * grain, weighed: (226 + points) * grain },
    })) as [Patch, Patch];
    const { speed, k } = since(then, now);
    const [m0, m1] = [326 * grain, 346 * grain];
    const [least, most] = [0.004, 0.01].map((virtual) => Math.sqrt((m0 + virtual) / (m1 + virtual))) as [number, number];
    expect(speed?.value).toBeGreaterThan(least);
    expect(speed?.value).toBeLessThan(most);
    expect(k?.value).toBeCloseTo(m0 / m1, 12);
  });

  it('follows the parts where the whole arrow was not weighed again', () => {
    const { k } = since({}, { arrowSet: { pointMass: 120 * grain } });
    expect(k?.value).toBeCloseTo(326 / 346, 9);
  });

  // 28 in at 7 gr/in with 100, 12, 8 and 9 gr: 325 gr by hand; a heavier arrow is slower and keeps its speed better.
  it('goes by the whole arrow that was weighed then and is built of its parts now', () => {
    const { speed, k } = since({ arrowSet: { weighed: 290 * grain } }, { arrowSet: { weighed: null } });
    expect(k?.value).toBeCloseTo(290 / 325, 6);
    expect(speed?.value).toBeLessThan(0.98);
    expect(since({ arrowSet: { weighed: 325 * grain } }, { arrowSet: { weighed: null } })).toEqual({});
  });

  it('is more drag for a thicker shaft, and what its vanes do nobody knows', () => {
    const { k, speed } = since({}, { arrowSet: { diameter: 0.0065 } });
    expect(k?.value).toBeCloseTo((0.0065 / 0.0058) ** 2, 12);
    expect(holds(k, 1.15 * (0.0065 / 0.0058) ** 2)).toBe(true);
    expect(speed).toBeUndefined();
  });

  // From memory: an inch of draw gives a finger bow some 2 to 7 % more speed; a pound in 33 about 1.5 %.
  it('is more speed with more draw or weight, also where the speed was measured before', () => {
    for (const arrowSpeed of [null, 55]) {
      const draw = since({ settings: { arrowSpeed } }, { settings: { arrowSpeed }, drawLength: 28.5 * inch }).speed;
      expect(draw?.value).toBeGreaterThan(1.02);
      expect(draw?.value).toBeLessThan(1.07);
      const weight = since({ settings: { arrowSpeed } }, { settings: { arrowSpeed, weightOnFingers: 34 * poundForce } }).speed;
      expect(weight?.value).toBeCloseTo(Math.sqrt(34 / 33), 2);
      for (const band of [draw, weight])
        expect(((band?.value ?? NaN) - 1) / 2).toBeCloseTo((band?.high ?? NaN) / (band?.value ?? NaN) - 1, 9);
    }
  });

  it('takes the eye back with a longer draw, and leaves the pin on the bow', () => {
    const { sightRadius } = since(
      { settings: { sightRadius: 0.85 } },
      { settings: { sightRadius: 0.85 }, drawLength: 28.5 * inch },
    );
    expect(sightRadius?.value).toBeCloseTo(1 * inch, 12);
    const told = since(
      { settings: { sightRadius: 0.85 } },
      { settings: { sightRadius: 0.9 }, drawLength: 28.5 * inch },
    ).sightRadius;
    expect(told?.value).toBeCloseTo(0.05, 12);
  });

  it('is the eye where it was measured, and wide where only the anchor changed', () => {
    expect(since({}, { form: { eyeHeight: 0.125 } }).eyeHeight).toMatchObject({ value: expect.closeTo(0.015, 12) });
    const { eyeHeight } = since({ form: { eyeHeight: null } }, { form: { eyeHeight: null, anchor: 'side of the face' } });
    expect(eyeHeight?.value).toBeLessThan(0);
    expect(holds(eyeHeight, -0.06)).toBe(true);
    expect(holds(eyeHeight, 0)).toBe(true);
  });

  it('may turn the launch either way with the nocking point, by no more than its angle over the draw', () => {
    const { launchAngle } = since({}, { settings: { nockingPoint: 0.008 } });
    expect(launchAngle?.value).toBe(0);
    expect(launchAngle?.high).toBeCloseTo(0.002 / (27.5 * inch), 12);
    expect(launchAngle?.low).toBe(-(launchAngle?.high ?? NaN));
    const tiller = since({}, { settings: { tiller: 0.006 } }).launchAngle;
    expect(tiller?.high).toBeGreaterThan(0);
    expect(tiller?.high).toBeLessThan(launchAngle?.high ?? NaN);
  });

  it('is wider for what no figure tells: a string, a bolt, a hook', () => {
    for (const now of [
      { settings: { stringFitted: '2026-06-01' } },
      { settings: { upperBolt: 1 } },
      { form: { hook: 'three under' as const } },
    ]) {
      const { speed } = since({ settings: { upperBolt: 0 } }, { ...now, settings: { upperBolt: 0, ...now.settings } });
      expect(speed?.value).toBe(1);
      expect((speed?.high ?? NaN) - 1).toBeGreaterThan(0.009);
    }
    const read = { upperBolt: 1, weightOnFingers: 34 * poundForce };
    const { speed } = since({ settings: { upperBolt: 0 } }, { settings: read });
    expect((speed?.high ?? NaN) / (speed?.value ?? NaN) - 1).toBeLessThan(0.0125);
  });

  it('cannot be told of another scale', () => {
    const context = markContext(like({ settings: { sightUnit: 0.001 } }), exampleNow);
    expect(changeSince(context, like({ settings: { sightUnit: 0.005 } }))).toMatchObject({ problem: { code: 'another-scale' } });
    const weightless = changeSince(markContext(like({}), exampleNow), like({ arrowSet: { weighed: null, linearDensity: null } }));
    expect(weightless.ok).toBe(true);
  });

  it('is worked out between the set-up then and now, each blank filled from the other', () => {
    const [then, now] = [like({ settings: { twists: 20 }, drawLength: null }), like({ settings: { strands: 16 } })];
    const both = thenAndNow(markContext(then, exampleNow), now);
    expect(both.then.archer.drawLength).toBe(27.5 * inch);
    expect(both.then.setup.settings).toMatchObject({ twists: 20, strands: 16 });
    expect(both.now.setup.settings).toMatchObject({ twists: 20, strands: 16 });
  });
});
