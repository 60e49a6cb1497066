import { describe, expect, it } from 'vitest';
import { driftOverEnds } from '../../core/group/index.ts';
import { defaultPreferences, TrialKind, type ShotGroup } from '../../core/model/index.ts';
import { groupQuestions, sheetReading } from '../../core/questions/index.ts';
import { sheet } from '../../core/trials/index.ts';
import { plantedTruths } from '../../fixtures/demo/index.ts';
import { now, of, pairs, records } from './demoClub.ts';
import { askedOfEnds, byEnd, namedFirst, trialBench } from './demoTrialBench.ts';

// What was planted is the source: the generator knows the truth, and the trade's order says what comes first (common practice).
const { trials, ends, scoreSheet, trialFigures } = plantedTruths;
const { units } = defaultPreferences;
const bench = trialBench(records, now);

describe('the trials of the demo club', () => {
  it('are of all seven kinds, with every archer, one of them left-handed', () => {
    expect(new Set(of('trial').map(({ trial }) => trial))).toEqual(new Set(TrialKind.options));
    expect(
      of('trial')
        .map(({ id }) => id)
        .sort(),
    ).toEqual(trials.map(({ trialId }) => trialId).sort());
    for (const { trialId, setupId, kind, planted } of trials) {
      const trial = bench.get('trial', trialId);
      expect([trial.trial, trial.setupId], planted).toEqual([kind, setupId]);
    }
    const archers = trials.map(({ setupId }) => bench.bundle(setupId).archer);
    expect(new Set(archers.map(({ id }) => id)).size).toBe(4);
    expect(archers.filter(({ hand }) => hand === 'left').length).toBeGreaterThan(2);
  });

  it('stand at every stage: not begun, left half way, whole, and ended with what was changed', () => {
    const stage = (trialId: string): string => {
      const { trial, groups } = bench.input(trialId);
      const { rows, next } = sheet({ trial, groups, units });
      if (trial.ended !== null) return trial.changes.length > 0 ? 'ended' : 'ended without a word';
      return rows.every(({ done }) => !done) ? 'not begun' : next === null ? 'whole' : 'half way';
    };
    const stages = trials.map(({ trialId }) => stage(trialId));
    expect([...stages].sort()).toEqual(['ended', 'ended', 'half way', 'not begun', ...Array<string>(6).fill('whole')]);
    expect(
      of('trial')
        .filter(({ cautionsRead }) => cautionsRead === null)
        .map(({ id }) => stage(id)),
    ).toEqual(['not begun']);
  });

  it('were each shot in one form, on one day, in one light and weather, so that nothing but what is on trial differs', () => {
    let compared = 0;
    for (const { id, trial } of of('trial')) {
      const [first, ...others] = [...bench.input(id).groups.values()].map(({ context }) => context);
      const onTrial = trial === 'brace height' || trial === 'nocking point' || trial === 'a against b';
      for (const other of others) {
        const { distance: _, settings, shotAt, ...rest } = other;
        expect({ ...first, ...rest }, id).toEqual(first);
        expect(shotAt.at.slice(0, 10), id).toBe(first?.shotAt.at.slice(0, 10));
        if (!onTrial) expect(settings).toEqual(first?.settings);
        compared++;
      }
    }
    expect(compared).toBeGreaterThan(20);
  });

  it('leave the newest groups of every set-up what they were: the planted pair', () => {
    for (const { setupId, fletchedId, bareId } of pairs) {
      const newest = [...bench.groupsOf(setupId)].sort((a, b) => a.context.shotAt.at.localeCompare(b.context.shotAt.at));
      expect(newest.slice(-2).map(({ id }) => id)).toEqual([fletchedId, bareId]);
    }
  });

  it('let the newest groups be asked nothing new: no drift, no other centre, no flyer comes of what was tried before', () => {
    const inTrials = new Set(of('trial').flatMap(({ groups }) => groups.flatMap(({ first, second }) => [first, second])));
    let answered = 0;
    for (const { setupId, fletchedId, bareId } of pairs)
      for (const [about, beside] of [
        [fletchedId, bareId],
        [bareId, fletchedId],
      ]) {
        const group = bench.get('group', about ?? '');
        const acts = (others: readonly ShotGroup[]) =>
          groupQuestions({
            group,
            beside: bench.get('group', beside ?? ''),
            others,
            bundle: bench.bundle(setupId),
            shaftRadius: 0.00275,
            units,
          })
            .filter(({ standing }) => standing === 'act')
            .map(({ id }) => id)
            .sort();
        const all = bench.groupsOf(setupId);
        const before = acts(all.filter(({ id }) => !inTrials.has(id)));
        expect(acts(all), `${setupId} ${group.fletching}`).toEqual(before);
        answered += before.length;
      }
    expect(answered).toBeGreaterThan(2);
  });

  it('have planted in them what can be found: 3.5 standard errors and more (computed independently)', () => {
    const { bare, walkBack, tears, nocking, silencers, brace } = trialFigures;
    expect(bare.across / (bare.perMetre * Math.sqrt(1 / 24 + 1 / 16))).toBeGreaterThan(3.5);
    // Offsets over their distance have one spread, so that the slant is the intercept of a plain line on 1/z; three arrows each.
    const inverse = walkBack.distances.map((z) => 1 / z);
    const mean = inverse.reduce((sum, u) => sum + u, 0) / inverse.length;
    const about = inverse.reduce((sum, u) => sum + (u - mean) ** 2, 0) / inverse.length;
    const error = (walkBack.perMetre / Math.sqrt(3 * inverse.length)) * Math.sqrt(1 + mean ** 2 / about);
    expect(walkBack.slant / error).toBeGreaterThan(3.5);
    expect(tears.up / (tears.spread / 3)).toBeGreaterThan(3.5);
    expect(Math.abs(silencers.y) / (silencers.spread * Math.sqrt(2 / 18))).toBeGreaterThan(3.5);
    const middle = nocking.steps.reduce((sum, step) => sum + step, 0) / nocking.steps.length;
    const lever = Math.sqrt(nocking.steps.reduce((sum, step) => sum + (step - middle) ** 2, 0));
    expect((nocking.lower * lever) / (nocking.spread * Math.sqrt(1 / 9 + 1 / 6))).toBeGreaterThan(3.5);
    const spreadsOff = Math.abs(ends.odd.y) / ends.spread;
    expect(spreadsOff).toBeGreaterThanOrEqual(2);
    expect(spreadsOff).toBeLessThanOrEqual(3);
    expect(brace.steps).toHaveLength(5);
  });

  for (const planted of trials)
    it(`${planted.kind}: ${planted.planted}`, () => {
      const reading = bench.read(planted.trialId);
      expect(reading.verdict, reading.headline).toBe(planted.expected.verdict);
      if (planted.expected.tells !== null) expect(reading.headline).toContain(planted.expected.tells);
      expect(reading.next.kind, reading.next.title).toBe(planted.expected.next);
      expect(namedFirst(planted, reading, bench.bundle(planted.setupId)), reading.next.title).toBe(true);
      expect(reading.more !== null, reading.headline).toBe(planted.expected.next === 'shoot' || planted.kind === 'brace height');
    });

  it('tell the planted figures: the level nocking point, the slant, the speed that falls', () => {
    const { nocking, walkBack, brace } = trialFigures;
    const plot = (kind: string) => bench.read(trials.find((trial) => trial.kind === kind)?.trialId ?? '').plot;
    const level = plot('nocking point');
    const found = level?.kind === 'heights' ? level.level : null;
    expect(found !== null && found.low < nocking.level && nocking.level < found.high).toBe(true);
    const line = plot('walk-back');
    const drawn = line?.kind === 'walk-back' ? line.line : [];
    const [near, far] = [drawn[0], drawn.at(-1)];
    expect(drawn.length).toBeGreaterThan(1);
    expect(
      Math.abs(((far?.offset ?? 0) - (near?.offset ?? 0)) / ((far?.distance ?? 1) - (near?.distance ?? 0)) - walkBack.slant),
    ).toBeLessThan(0.0012);
    const sweep = bench.read(trials.find(({ kind }) => kind === 'brace height')?.trialId ?? '');
    expect(sweep.subline).toContain('Speed falls');
    expect(brace.slower).toBeGreaterThan(0);
  });
});

describe('the numbered dozen over six ends', () => {
  const group = bench.get('group', ends.groupId);

  it('has each arrow once in an end, and one shot left out with its reason; no other group has', () => {
    expect(group.shots).toHaveLength(ends.arrows * ends.ends);
    expect(new Set(group.shots.map(({ arrow, end }) => `${arrow ?? ''} in ${end ?? ''}`)).size).toBe(ends.arrows * ends.ends);
    const left = of('group').flatMap(({ id, shots }) =>
      shots.filter(({ leftOut }) => leftOut !== null).map(({ arrow, end, leftOut }) => ({ id, arrow, end, leftOut })),
    );
    const { arrow, end, reason } = ends.leftOut;
    expect(left).toEqual([{ id: group.id, arrow, end, leftOut: reason }]);
  });

  it('asks for an act where something was planted, and nowhere else', () => {
    const acts = askedOfEnds(records, now).filter(({ standing }) => standing === 'act');
    expect(acts.map(({ id }) => id)).toEqual(['left out', 'odd', 'drift']);
    expect(acts.find(({ id }) => id === 'odd')?.answer).toMatch(
      new RegExp(`^Yes: arrow ${ends.odd.arrow} strikes \\d+ mm lower than the others\\.$`),
    );
    expect(acts.find(({ id }) => id === 'drift')?.answer).toMatch(/^Yes: the last of 6 ends lies \d+ mm right of the first end/);
  });

  it('is the only group in which the centre drifted from end to end', () => {
    const drifted = of('group').filter((one) => {
      const found = driftOverEnds(byEnd(one));
      return found.ok && found.value.verdict === 'real';
    });
    expect(drifted.map(({ id }) => id)).toEqual([group.id]);
  });
});

describe('the score sheet', () => {
  it('tells the spread it was drawn from, though nobody marked a hole', () => {
    const { ends: scores, face, distance } = bench.get('scoreSheet', scoreSheet.sheetId);
    expect(scores.map((end) => end.length)).toEqual(Array(12).fill(6));
    const read = sheetReading(scores, face, distance, scoreSheet.shaft / 2);
    if (!read.ok) throw new Error(read.problem.sentence);
    const [low, high] = read.value.spread.interval;
    expect(low < scoreSheet.spread && scoreSheet.spread < high).toBe(true);
    expect(read.value.apart).toBeNull();
  });
});
