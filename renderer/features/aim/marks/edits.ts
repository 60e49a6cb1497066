import { markContext, markStanding } from '../../../../core/aim/index.ts';
import type { Id } from '../../../../core/model/common.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import type { SightMark } from '../../../../core/model/sightMark.ts';
import { textQuantity } from '../../../../core/units/index.ts';
import { born, edited, type Bench } from '../../../state/bench.ts';
import { newSightMark } from '../../../state/births.ts';
import { now } from '../../../state/clock.ts';
import { bundleOf, type Records } from '../../../state/selectors.ts';

const figure = (reading: number, units: UnitChoice): string => textQuantity(reading, 'reading', units);
const far = (distance: number, units: UnitChoice): string => textQuantity(distance, 'distance', units);
const unitsOf = (bench: Bench): UnitChoice => bench.getState().preferences.units;

/** A distance with its unit, as somebody may type it. */
const LONGEST = 20;

/** Writes one mark anew from what it is when the write's turn comes. */
function rewrite(
  bench: Bench,
  markId: Id,
  label: string,
  patch: (mark: SightMark, records: Records) => Partial<SightMark> | null,
): Promise<boolean> {
  return bench.getState().change(label, (records) => {
    const mark = records.get(markId);
    const laid = mark?.kind === 'sightMark' ? patch(mark, records) : null;
    return mark?.kind === 'sightMark' && laid !== null ? [edited(mark, laid)] : [];
  });
}

/** One mark more of the set-up, with what it is shot with now. */
export function addMark(bench: Bench, setupId: Id, distance: number, reading: number, typed = ''): Promise<boolean> {
  const units = unitsOf(bench);
  // Whoever types yards where metres are shown means yards, and looks for them in the journal.
  const where = /[a-z]/i.test(typed) ? typed.trim().slice(0, LONGEST) : far(distance, units);
  return bench.getState().change(`Mark for ${where}: ${figure(reading, units)}`, (records) => {
    const bundle = bundleOf(records, setupId);
    return bundle === null ? [] : [born(newSightMark(bundle, { distance, reading, shots: null }))];
  });
}

/** Another reading was shot in: it holds for the set-up as it stands, and a reason to leave the old one out is none for the new. */
export function shotInAgain(bench: Bench, mark: SightMark, reading: number): Promise<boolean> {
  const units = unitsOf(bench);
  return rewrite(bench, mark.id, `Mark for ${far(mark.distance, units)}: ${figure(reading, units)}`, (stands, records) => {
    const bundle = bundleOf(records, stands.setupId);
    if (bundle === null) return null;
    // What no longer held was shot in with other arrows: they settle nothing of the new reading.
    const shots = markStanding(stands, bundle).proven ? stands.shots : null;
    return { reading, shots, leftOut: null, context: markContext(bundle, now()) };
  });
}

/** Sets what was mistyped of a mark, which holds as before. */
export function correctMark(
  bench: Bench,
  mark: SightMark,
  label: string,
  patch: Partial<Pick<SightMark, 'distance' | 'shots' | 'note'>>,
): Promise<boolean> {
  return rewrite(bench, mark.id, `${label}, mark for ${far(mark.distance, unitsOf(bench))}`, () => patch);
}

/** Leaves a mark out of the fit for a reason, or counts it again. */
export function leaveOutMark(bench: Bench, mark: SightMark, reason: string | null): Promise<boolean> {
  const label = `${reason === null ? 'Counted again' : 'Left out'}: mark for ${far(mark.distance, unitsOf(bench))}`;
  return rewrite(bench, mark.id, label, () => ({ leftOut: reason }));
}

/** Puts a mark away, or takes it out again. */
export function putMarkAway(bench: Bench, mark: SightMark, away: boolean): Promise<boolean> {
  const label = `Mark for ${far(mark.distance, unitsOf(bench))} ${away ? 'put away' : 'taken out again'}`;
  return rewrite(bench, mark.id, label, () => ({ archivedAt: away ? now() : null }));
}

/** Nothing was changed on the bow: what differs was only put right in the notebook, so that the marks hold. One Change. */
export function marksHold(bench: Bench, marks: readonly SightMark[]): Promise<boolean> {
  return bench.getState().change('Marks hold: only the notebook was put right', (records) =>
    marks.flatMap(({ id }) => {
      const mark = records.get(id);
      const bundle = mark?.kind === 'sightMark' ? bundleOf(records, mark.setupId) : null;
      if (mark?.kind !== 'sightMark' || bundle === null) return [];
      const context = { ...markContext(bundle, mark.context.shotAt), weather: mark.context.weather };
      return [edited(mark, { context })];
    }),
  );
}
