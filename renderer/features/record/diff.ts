import { diffSnapshots, frozenFigures, type DiffRow } from '../../../core/compare/index.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import type { ShownFigure } from '../../../core/model/snapshot.ts';
import { textQuantity, type Use } from '../../../core/units/index.ts';
import type { Compared } from './selectors.ts';

/** What lies between two states of one bow, ready to print. */
export interface StateDiff {
  readonly differ: readonly DiffRow[];
  readonly same: number;
  /** Worked-out figures that were shown then and read otherwise now. */
  readonly figures: readonly DiffRow[];
  /** Said when an earlier version of the program worked out the figures of then. */
  readonly versions: string | null;
}

export function diffOf({ from, to, then, now }: Compared, version: string, units: UnitChoice): StateDiff {
  const { differ, same } = diffSnapshots(then, now, units);
  const versions = [from.programVersion, to === null ? version : to.programVersion] as const;
  return {
    differ,
    same,
    figures: shownDiffer(from.figures, to === null ? frozenFigures(now) : to.figures, units),
    versions:
      versions[0] === versions[1]
        ? null
        : `Worked out then by version ${versions[0]}, now by ${versions[1]}: part of a difference may be the program’s.`,
  };
}

/** The figures that read otherwise than they were shown then. */
function shownDiffer(then: readonly ShownFigure[], now: readonly ShownFigure[], units: UnitChoice): readonly DiffRow[] {
  const text = ({ value, use }: ShownFigure) => (value === null ? 'not known' : textQuantity(value, use as Use, units));
  return then.flatMap((before): readonly DiffRow[] => {
    const after = now.find((figure) => figure.key === before.key);
    if (after === undefined || text(before) === text(after)) return [];
    const apart =
      before.value === null || after.value === null
        ? ''
        : textQuantity(after.value - before.value, before.use as Use, units, { signed: true });
    return [{ key: before.key, name: before.name, then: text(before), now: text(after), difference: apart }];
  });
}
