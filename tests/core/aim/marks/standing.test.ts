import { describe, expect, it } from 'vitest';
import { changesSince, markContext, markStanding } from '../../../../core/aim/index.ts';
import { exampleBundle, exampleNow } from '../../../../core/model/example.ts';
import type { Bundle, Settings, SightMark } from '../../../../core/model/index.ts';
import { grain, inch, poundForce } from '../../../../core/units/exact.ts';

type Context = SightMark['context'];

const full: Partial<Settings> = {
  arrowSpeed: 55,
  upperBolt: 2,
  lowerBolt: 2,
  nockFit: 'a light tap frees it',
  stringMaterial: 'HMPE',
  strands: 16,
  stringLength: 64 * inch,
  stringMass: 100 * grain,
  twists: 20,
  sightUnit: 0.001,
  sightGrows: 'down',
  sightRadius: 0.85,
  sightLowest: 0,
  sightHighest: 100,
  buttonPreload: 3,
  buttonRate: 1000,
};
const set = (settings: Partial<Settings>, bundle: Bundle = exampleBundle): Bundle => ({
  ...bundle,
  setup: { ...bundle.setup, settings: { ...bundle.setup.settings, ...settings } },
});
const bundle = set(full);
const context = markContext(bundle, exampleNow);
const namesOf = (now: Bundle, then: Context = context) => markStanding({ context: then }, now).changes.map(({ name }) => name);

describe('A sight mark', () => {
  it('holds while nothing changes', () => {
    expect(markStanding({ context }, bundle)).toEqual({ proven: true, changes: [] });
  });

  // Common practice: marks hold for one archer, bow, arrow and form.
  const upAndDown: readonly (readonly [string, Bundle])[] = [
    ['Brace height', set({ braceHeight: 8.6 * inch }, bundle)],
    ['Tiller', set({ tiller: 0.005 }, bundle)],
    ['Nocking point', set({ nockingPoint: 0.0065 }, bundle)],
    ['Weight on the fingers', set({ weightOnFingers: 34 * poundForce }, bundle)],
    ['Measured speed', set({ arrowSpeed: 54 }, bundle)],
    ['Upper limb bolt', set({ upperBolt: 2.5 }, bundle)],
    ['Lower limb bolt', set({ lowerBolt: 1.5 }, bundle)],
    ['Nock fit', set({ nockFit: 'tight' }, bundle)],
    ['String', set({ stringMaterial: 'polyester' }, bundle)],
    ['Strands', set({ strands: 18 }, bundle)],
    ['String length', set({ stringLength: 64.25 * inch }, bundle)],
    ['String mass', set({ stringMass: 110 * grain }, bundle)],
    ['Twists', set({ twists: 28 }, bundle)],
    ['One unit of the sight', set({ sightUnit: 0.01 }, bundle)],
    ['Sight’s numbers grow', set({ sightGrows: 'up' }, bundle)],
    ['Eye to the pin', set({ sightRadius: 0.9 }, bundle)],
    ['Anchor', { ...bundle, setup: { ...bundle.setup, form: { ...bundle.setup.form, anchor: 'side of the face' } } }],
    ['Hook', { ...bundle, setup: { ...bundle.setup, form: { ...bundle.setup.form, hook: 'three under' } } }],
    ['Eye above the arrow', { ...bundle, setup: { ...bundle.setup, form: { ...bundle.setup.form, eyeHeight: 0.12 } } }],
    ['Draw length', { ...bundle, archer: { ...bundle.archer, drawLength: 28 * inch } }],
    ['Point', { ...bundle, arrowSet: { ...bundle.arrowSet, pointMass: 110 * grain } }],
    ['Arrow length', { ...bundle, arrowSet: { ...bundle.arrowSet, length: 27.5 * inch } }],
    ['Shaft diameter', { ...bundle, arrowSet: { ...bundle.arrowSet, diameter: 0.0065 } }],
    ['Weighed arrow', { ...bundle, arrowSet: { ...bundle.arrowSet, weighed: 340 * grain } }],
  ];
  it.each(upAndDown)('is no longer proven with another %s', (name, now) => {
    expect(namesOf(now)).toEqual([name]);
    expect(markStanding({ context }, now).proven).toBe(false);
  });

  it('says then and now in the figures’ own unit', () => {
    expect(markStanding({ context }, set({ strands: 18 }, bundle)).changes[0]).toMatchObject({ use: 'count', then: 16, now: 18 });
    expect(markStanding({ context }, set({ nockFit: 'tight' }, bundle)).changes[0]).toMatchObject({
      use: null,
      then: 'a light tap frees it',
      now: 'tight',
    });
  });

  // Common practice: button and centre shot move the group sideways.
  it('does not care for what moves arrows only sideways, nor for the ends of the bar, nor how the aim is taken', () => {
    const sideways = set(
      {
        buttonTurns: 5,
        centreShot: 0.004,
        centreShotDatum: 'button',
        buttonPreload: 5,
        buttonRate: 2000,
        sightLowest: -10,
        sightHighest: 120,
      },
      bundle,
    );
    expect(namesOf(sideways)).toEqual([]);
    const { setup } = bundle;
    expect(namesOf({ ...bundle, setup: { ...setup, form: { ...setup.form, aiming: 'gap' } } })).toEqual([]);
  });

  it('does not care for a difference that cannot be read again', () => {
    expect(namesOf(set({ braceHeight: 8.5 * inch + 0.0009, twists: 20.4 }, bundle))).toEqual([]);
    expect(namesOf({ ...bundle, arrowSet: { ...bundle.arrowSet, weighed: 326.4 * grain } })).toEqual([]);
  });

  it('does not care for a figure that was blank then and noted since, nor for one that was taken out', () => {
    const blank = markContext(exampleBundle, exampleNow);
    expect(namesOf(bundle, blank)).toEqual([]);
    expect(namesOf(exampleBundle)).toEqual([]);
    expect(namesOf({ ...bundle, archer: { ...bundle.archer, drawLength: null } })).toEqual([]);
  });

  it('is no longer proven once a string was fitted, and a date that was only noted since is none', () => {
    expect(namesOf(set({ stringFitted: '2026-05-03' }, bundle))).toEqual(['String fitted on']);
    expect(namesOf(set({ stringFitted: '2026-05-02' }, bundle))).toEqual([]);
    expect(namesOf(set({ stringFitted: '2026-01-10' }, bundle))).toEqual([]);
    const dated = markContext(set({ stringFitted: '2026-01-10' }, bundle), exampleNow);
    expect(namesOf(set({ stringFitted: '2026-01-10' }, bundle), dated)).toEqual([]);
    expect(namesOf(set({ stringFitted: '2026-02-10' }, bundle), dated)).toEqual(['String fitted on']);
  });

  it('takes the tiller from the two distances where these were read', () => {
    const read = (upper: number) => set({ tillerUpper: upper, tillerLower: 0.177 }, bundle);
    expect(namesOf(read(0.185), markContext(read(0.18), exampleNow))).toEqual(['Tiller']);
    expect(namesOf(read(0.18))).toEqual([]);
  });

  it('belongs to one set of arrows, and names the one that is shot now', () => {
    const other = {
      ...bundle,
      arrowSet: { ...bundle.arrowSet, id: '20000000-0000-4000-8000-000000000001', name: 'The spare dozen' },
    };
    expect(markStanding({ context }, other).changes).toEqual([
      { key: 'arrowSet.id', name: 'Arrows', use: null, then: 'another set', now: 'The spare dozen' },
    ]);
  });

  // 28 in at 7 gr/in, point 100, insert 12, nock 8, fletching 9 gr: 325 gr by hand.
  it('knows the whole arrow again, weighed then and built of its parts now', () => {
    const built = (patch: Partial<Bundle['arrowSet']>) => ({
      ...bundle,
      arrowSet: { ...bundle.arrowSet, weighed: null, ...patch },
    });
    const weighed = (mass: number) => markContext({ ...bundle, arrowSet: { ...bundle.arrowSet, weighed: mass } }, exampleNow);
    expect(namesOf(built({}), weighed(325 * grain))).toEqual([]);
    const [change] = markStanding({ context: weighed(320 * grain) }, built({})).changes;
    expect(change).toMatchObject({ key: 'arrowSet.mass', name: 'Arrow mass', use: 'mass', then: 320 * grain });
    expect(Number(change?.now) / grain).toBeCloseTo(325, 6);
    // Each part as near as it can be read again, all of them together not.
    const heavier = built({ pointMass: 100.4 * grain, insertMass: 12.4 * grain, nockMass: 8.4 * grain });
    expect(namesOf(heavier, markContext(built({}), exampleNow))).toEqual(['Arrow mass']);
    expect(namesOf(built({ pointMass: 110 * grain }), markContext(built({}), exampleNow))).toEqual(['Point']);
    // A part that nobody had noted is taken to have been there.
    expect(namesOf(built({}), markContext(built({ nockMass: null }), exampleNow))).toEqual([]);
  });

  it('is alike with another that was shot in with the same', () => {
    const later = { ...context, shotAt: { at: '2026-06-02T10:00:00Z', offsetMinutes: 60 } };
    expect(changesSince(context, later)).toEqual([]);
    expect(changesSince(later, context)).toEqual([]);
  });
});
