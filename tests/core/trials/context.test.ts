import { describe, expect, it } from 'vitest';
import { defaultPreferences, exampleBare, exampleFletched } from '../../../core/model/index.ts';
import { contextDifferences } from '../../../core/trials/index.ts';
import { withContext } from './build.ts';

const { units } = defaultPreferences;
const { context } = exampleFletched;
const other = { ...exampleFletched, shots: exampleBare.shots };
const sentences = (change: Partial<typeof context>, bareTrial = true) =>
  contextDifferences(exampleFletched, withContext(bareTrial ? exampleBare : other, change), units).map(
    ({ sentence }) => sentence,
  );

describe('what was not the same while two groups were shot', () => {
  it('is nothing when the context is the same', () => {
    expect(contextDifferences(exampleFletched, exampleBare, units)).toEqual([]);
  });

  it('voids a verdict over two distances and says which', () => {
    const found = contextDifferences(exampleFletched, withContext(exampleBare, { distance: 30 }), units);
    expect(found).toMatchObject([
      { key: 'distance', voids: true, sentence: 'Fletched shot at 18 m, bare at 30 m: one distance was expected.' },
    ]);
  });

  it('takes a mark paced a hand apart as one distance, and 18 m and 20 yd as two', () => {
    expect(sentences({ distance: 18.1 })).toEqual([]);
    expect(sentences({ distance: 20 * 0.9144 })).toHaveLength(1);
  });

  it('voids bare against fletched in two forms, but only tells it between two fletched groups', () => {
    const anchor = { form: { ...context.form, anchor: 'side of the face' as const } };
    const [bare] = contextDifferences(exampleFletched, withContext(exampleBare, anchor), units);
    expect(bare).toMatchObject({
      voids: true,
      sentence: 'Anchor: under the jaw for fletched; side of the face for bare. One form was expected.',
    });
    const [fletched] = contextDifferences(exampleFletched, withContext(other, anchor), units);
    expect(fletched).toMatchObject({ voids: false, equipment: false });
    expect(fletched?.sentence).toMatch(/The difference is not the equipment\u2019s alone\.$/);
  });

  it('does not void on a form that was noted for one group only, and asks for it', () => {
    const found = contextDifferences(exampleFletched, withContext(exampleBare, { form: { ...context.form, hook: null } }), units);
    expect(found).toMatchObject([{ voids: false, sentence: 'Hook: split for fletched; not noted for bare. Note it for both.' }]);
  });

  it('tells settings in the person\u2019s units, and lets them be what is on trial between two fletched groups', () => {
    const lower = { settings: { ...context.settings, braceHeight: 8.25 * 0.0254 } };
    expect(sentences(lower)).toEqual([
      'Brace height: 8 1/2 in for fletched; 8 1/4 in for bare. The shift is not the missing fletching\u2019s alone.',
    ]);
    expect(contextDifferences(exampleFletched, withContext(other, lower), units)).toMatchObject([
      { equipment: true, voids: false, sentence: 'Brace height: 8 1/2 in for the first; 8 1/4 in for the second.' },
    ]);
  });

  it('passes over settings that cannot be read again more finely, and those measured once only', () => {
    expect(sentences({ settings: { ...context.settings, braceHeight: 8.5 * 0.0254 + 0.0005 } })).toEqual([]);
    expect(sentences({ settings: { ...context.settings, tiller: null } })).toEqual([]);
    expect(sentences({ settings: { ...context.settings, centreShot: null, centreShotDatum: 'button' } })).toEqual([]);
  });

  it('tells face, day, weather, light, kit and arrows', () => {
    const changed = {
      face: '60' as const,
      shotAt: { at: '2026-05-03T10:30:00Z', offsetMinutes: 60 },
      weather: 'windy',
      light: 'dusk',
      kit: 'new tab',
      arrowSetId: '20000000-0000-4000-8000-000000000001',
    };
    const found = contextDifferences(exampleFletched, withContext(exampleBare, changed), units);
    expect(found.map(({ key }) => key)).toEqual(['arrowSet', 'face', 'day', 'weather', 'light', 'kit']);
    for (const { sentence, voids, equipment } of found) {
      expect(sentence).toMatch(
        equipment
          ? /The shift is not the missing fletching\u2019s alone\.$/
          : /The difference is not the equipment\u2019s alone\.$/,
      );
      expect(voids).toBe(false);
    }
  });

  it('takes the day where it was lived: an hour before midnight at two places can be two days', () => {
    expect(sentences({ shotAt: { at: '2026-05-02T23:30:00Z', offsetMinutes: 60 } })).toEqual([
      'Shot on 2 May 2026 and on 3 May 2026. The difference is not the equipment\u2019s alone.',
    ]);
    expect(sentences({ shotAt: { at: '2026-05-02T23:30:00Z', offsetMinutes: 0 } })).toEqual([]);
  });

  it('puts what voids first', () => {
    const found = contextDifferences(exampleFletched, withContext(exampleBare, { weather: 'windy', distance: 10 }), units);
    expect(found.map(({ key }) => key)).toEqual(['distance', 'weather']);
  });
});
