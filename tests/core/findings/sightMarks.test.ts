import { describe, expect, it } from 'vitest';
import { marksPicture, spreadPerMetre } from '../../../core/aim/index.ts';
import { allFindings, marksSpeedFinding, sightMarksFinding, unprovenFinding } from '../../../core/findings/index.ts';
import { defaultPreferences, exampleBundle, exampleNow, type Bundle } from '../../../core/model/index.ts';
import { plantedTruths } from '../../../fixtures/demo/index.ts';
import { of } from '../demoClub.ts';

const { units } = defaultPreferences;
const { tobin, ines } = plantedTruths.marks;

function benchOf(setupId: string): Bundle {
  const setup = of('setup').find(({ id }) => id === setupId);
  const archer = of('archer').find(({ id }) => id === setup?.archerId);
  const bow = of('bow').find(({ id }) => id === setup?.bowId);
  const arrowSet = of('arrowSet').find(({ id }) => id === setup?.arrowSetId);
  if (!setup || !archer || !bow || !arrowSet) throw new Error('no such set-up');
  return { setup, archer, bow, arrowSet };
}

function pictureOf(setupId: string, patch: Partial<Bundle['setup']['settings']> = {}, leftOut: readonly number[] = []) {
  const bundle = benchOf(setupId);
  const now = { ...bundle, setup: { ...bundle.setup, settings: { ...bundle.setup.settings, ...patch } } };
  const marks = of('sightMark').filter((mark) => mark.setupId === setupId && !leftOut.includes(mark.distance));
  return marksPicture(now, marks, spreadPerMetre(of('group').filter((group) => group.setupId === setupId)));
}

// What is expected was planted in the demo: fixtures/demo/marks.ts.
describe('The finding about sight marks', () => {
  it('waits where there is none, and leads to where one is typed', () => {
    const found = sightMarksFinding(marksPicture(exampleBundle, [], null), units);
    expect(found).toMatchObject({ level: 'waiting', action: { screen: 'aim', field: 'marks.next.distance' } });
  });

  it('says so where every mark was left out, and blames no flight', () => {
    const bundle = benchOf(tobin.setupId);
    const marks = of('sightMark').filter((mark) => mark.setupId === tobin.setupId);
    const out = marks.map((mark) => ({
      ...mark,
      leftOut: 'windy',
      context: { ...mark.context, settings: bundle.setup.settings },
    }));
    const picture = marksPicture(bundle, out, null);
    expect(picture.proven).toHaveLength(out.length);
    expect(sightMarksFinding(picture, units)).toMatchObject({ level: 'unknown', title: 'Every sight mark is left out' });
  });

  it('says that Tobin’s four agree, and that the one for 70 m, from before the string, is no longer proven', () => {
    const picture = pictureOf(tobin.setupId);
    expect(picture.proven.map(({ distance }) => distance)).toEqual(tobin.proven);
    expect(sightMarksFinding(picture, units)).toMatchObject({ level: 'ok', title: 'The four marks agree' });
    const unproven = unprovenFinding(picture, units);
    expect(unproven).toMatchObject({ level: 'unknown', title: `The mark for ${tobin.unproven} m no longer proven` });
    for (const name of tobin.changed) expect(picture.unproven[0]?.changes.map((change) => change.name)).toContain(name);
  });

  it('finds the speed that was planted, beside the bow’s own', () => {
    const found = marksSpeedFinding(pictureOf(tobin.setupId), units);
    expect(found?.level).toBe('ok');
    const { fit } = pictureOf(tobin.setupId);
    const speed = fit?.ok === true ? fit.value.figures.speed : { value: NaN, sd: NaN };
    expect(Math.abs(speed.value - tobin.truth.speed)).toBeLessThan(3 * speed.sd);
  });

  it('names the mark that Ines read off wrongly, with what the others expect', () => {
    const found = sightMarksFinding(pictureOf(ines.setupId), units);
    expect(found).toMatchObject({ level: 'caution', title: `The mark for ${ines.misread} m does not fit` });
    const { rule } = found ?? { rule: null };
    // Her scale grows upward; a figure 5 too small was written down.
    expect(rule === null ? NaN : rule.value).toBeLessThan(rule?.low ?? NaN);
  });

  it('does not blame one of two', () => {
    const found = sightMarksFinding(pictureOf(ines.setupId, {}, [30, 50, 60]), units);
    expect(found?.level).toBe('caution');
    expect(found?.title).toBe('Two marks do not go together');
    expect(found?.detail).toContain('neither can be blamed');
  });

  it('does not say that marks agree which scatter wider than usual', () => {
    const bundle = benchOf(tobin.setupId);
    const marks = of('sightMark').filter((mark) => mark.setupId === tobin.setupId && mark.distance < 70);
    const to = (by: number) => {
      const rough = marks.map((mark, i) => ({ ...mark, reading: mark.reading + (i % 2 === 0 ? by : -by) }));
      return marksPicture(bundle, rough, spreadPerMetre(of('group').filter(({ setupId }) => setupId === tobin.setupId)));
    };
    const wider = (by: number) => {
      const { fit } = to(by);
      return fit?.ok === true && fit.value.judged.every(({ verdict }) => verdict === 'fits') ? fit.value.wider : NaN;
    };
    const by = [0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1, 1.1, 1.2].find((one) => wider(one) >= 1.5 && wider(one) < 2.5);
    expect(by).toBeDefined();
    const found = sightMarksFinding(to(by ?? NaN), units);
    expect(found?.level).toBe('ok');
    expect(found?.title).toBe(`The four marks scatter ${wider(by ?? NaN).toFixed(1)} times as wide as usual`);
    expect(found?.detail).toMatch(/every interval is wider by that/);
  });

  // The page's own headlines: an end of the bar at 60, and two readings far apart for one distance.
  it('names why marks fit no flight', () => {
    const off = sightMarksFinding(pictureOf(tobin.setupId, { sightLowest: 0, sightHighest: 60 }), units);
    expect(off).toMatchObject({ level: 'caution', title: 'A mark lies off the bar of the sight' });
    const [one, ...others] = of('sightMark').filter((mark) => mark.setupId === tobin.setupId && mark.distance < 70);
    if (one === undefined) throw new Error('no mark');
    const twice = { ...one, id: `${one.id.slice(0, -1)}f`, reading: one.reading + 40 };
    const torn = sightMarksFinding(marksPicture(benchOf(tobin.setupId), [one, twice, ...others], null), units);
    expect(torn?.title).toBe('The marks contradict one another');
  });

  it('says what one mark leaves open', () => {
    expect(sightMarksFinding(pictureOf(tobin.setupId, {}, [18, 30, 40, 70]), units)).toMatchObject({
      level: 'unknown',
      title: 'One sight mark, for 50 m',
    });
  });

  it('cautions when nothing proven is left, and is quiet again when the setting is put back', () => {
    const changed = pictureOf(tobin.setupId, { nockingPoint: 0.009 });
    expect(sightMarksFinding(changed, units)).toBeNull();
    expect(unprovenFinding(changed, units)).toMatchObject({ level: 'caution', title: 'Five marks no longer proven' });
    expect(unprovenFinding(pictureOf(tobin.setupId, {}, [70]), units)).toBeNull();
  });

  it('stands in the list of Aim only where marks are told of', () => {
    const bundle = benchOf(tobin.setupId);
    const ids = (marks: ReturnType<typeof pictureOf> | null) =>
      allFindings(bundle, { units, now: exampleNow, screen: 'aim', marks }).map(({ id }) => id);
    expect(ids(pictureOf(tobin.setupId))).toEqual(expect.arrayContaining(['sightMarks', 'unproven', 'marksSpeed']));
    expect(ids(null)).not.toContain('sightMarks');
  });
});
