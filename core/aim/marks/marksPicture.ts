import type { Bundle } from '../../model/bundle.ts';
import { wallTime } from '../../model/common.ts';
import type { Result } from '../../model/problem.ts';
import type { SightMark } from '../../model/sightMark.ts';
import { changeSince } from './changeSince.ts';
import { fitMarks } from './fitMarks.ts';
import { type MarksChange, type MovedMark, movedMarks } from './movedMarks.ts';
import { priorsOf } from './priorsOf.ts';
import { scaleOf, type ToldScale } from './scaleOf.ts';
import { changesSince, type ChangedSince, markStanding } from './standing.ts';
import { thenAndNow } from './thenAndNow.ts';
import type { FittedMarks, KnownMark } from './types.ts';

/** A mark that is no longer proven. */
export interface UnprovenMark {
  readonly mark: SightMark;
  /** What is otherwise since. */
  readonly changes: readonly ChangedSince[];
  /** How far it may have moved; null where that cannot be told. */
  readonly moved: MovedMark | null;
}

/** All that the marks of a set-up say. */
export interface MarksPicture extends ToldScale {
  /** In the order given. */
  readonly proven: readonly SightMark[];
  readonly unproven: readonly UnprovenMark[];
  /** Null without marks. */
  readonly fit: Result<FittedMarks> | null;
  /** Of proven marks; or, where none is left, of the newest that were shot in alike, as they were. */
  readonly from: 'proven' | 'moved' | null;
  /** The marks that the fit is of, those left out too: `judged` of the fit goes by it. */
  readonly of: readonly SightMark[];
  /** What changed since those of a fit that is `moved`: every reading must be moved by it. */
  readonly change: MarksChange | null;
}

const shotAt = ({ context }: SightMark): number => wallTime(context.shotAt);
const alike = (one: SightMark, other: SightMark): boolean => changesSince(one.context, other.context).length === 0;

const known = ({ distance, reading, shots, leftOut }: SightMark): KnownMark => ({
  distance,
  reading,
  ...(shots === null ? {} : { shots }),
  leftOut: leftOut !== null,
});

function fitOf(marks: readonly SightMark[], bundle: Bundle, spread: number | null): Result<FittedMarks> {
  const { settings } = bundle.setup;
  const priors = priorsOf(bundle, { sightRadius: settings.sightRadius, spreadPerMetre: spread });
  return priors.ok ? fitMarks(marks.map(known), scaleOf(settings).scale, priors.value) : priors;
}

/** Marks that were shot in alike, the newest lot first. */
function lotsOf(marks: readonly SightMark[]): readonly (readonly SightMark[])[] {
  const lots: SightMark[][] = [];
  for (const mark of [...marks].sort((a, b) => shotAt(b) - shotAt(a))) {
    const lot = lots.find(([first]) => first !== undefined && alike(mark, first));
    if (lot === undefined) lots.push([mark]);
    else lot.push(mark);
  }
  return lots;
}

interface Lot {
  readonly marks: readonly SightMark[];
  readonly fit: Result<FittedMarks>;
  readonly change: Result<MarksChange>;
}

function lotOf(marks: readonly SightMark[], bundle: Bundle, spread: number | null): Lot[] {
  const [newest] = marks;
  if (newest === undefined) return [];
  const { then } = thenAndNow(newest.context, bundle);
  // The bar's ends of today say nothing of a mark that was read then.
  const settings = { ...then.setup.settings, sightLowest: null, sightHighest: null };
  const endless = { ...then, setup: { ...then.setup, settings } };
  return [{ marks, fit: fitOf(marks, endless, spread), change: changeSince(newest.context, bundle) }];
}

function movedIn({ marks, fit, change }: Lot, mark: SightMark): MovedMark | null {
  if (!marks.includes(mark) || !fit.ok || !change.ok) return null;
  return movedMarks(fit.value, change.value, [mark.distance])[0] ?? null;
}

/**
 * What the sight marks of a set-up say: which of them hold, what the sight reads from them, and how far the others may have moved.
 *
 * @equation marks with no change since are fitted together; of the others each lot shot in alike is fitted as it was and moved by changeSince; with no proven mark that counts the newest lot stands in, moved
 * @param bundle - the set-up as it stands [record]
 * @param marks - its sight marks [list]
 * @param spread - the archer's scatter up and down from groups, or null [rad]
 * @returns scale, proven and unproven marks, and the fit [record]
 * @validity as fitMarks; a refusal is the fit's
 * @source own derivation
 * @example marksPicture(exampleBundle, [], null).fit // null
 */
export function marksPicture(bundle: Bundle, marks: readonly SightMark[], spread: number | null): MarksPicture {
  const told = scaleOf(bundle.setup.settings);
  const standing = marks.map((mark) => ({ mark, ...markStanding(mark, bundle) }));
  const proven = standing.filter((one) => one.proven).map(({ mark }) => mark);
  const lots = lotsOf(standing.filter((one) => !one.proven).map(({ mark }) => mark)).flatMap((lot) => lotOf(lot, bundle, spread));
  const unproven = standing
    .filter((one) => !one.proven)
    .map(({ mark, changes }): UnprovenMark => {
      const lot = lots.find((one) => one.marks.includes(mark));
      return { mark, changes, moved: lot === undefined ? null : movedIn(lot, mark) };
    });
  const all = { ...told, proven, unproven };
  const counts = ({ leftOut }: SightMark) => leftOut === null;
  const last = lots.find((lot) => lot.marks.some(counts));
  if (!proven.some(counts) && last !== undefined) {
    if (!last.change.ok) return { ...all, fit: last.change, from: 'moved', of: last.marks, change: null };
    return { ...all, fit: last.fit, from: 'moved', of: last.marks, change: last.change.value };
  }
  if (proven.length === 0) return { ...all, fit: null, from: null, of: [], change: null };
  return { ...all, fit: fitOf(proven, bundle, spread), from: 'proven', of: proven, change: null };
}
