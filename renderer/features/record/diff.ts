import { diffSnapshots, frozenFigures, type DiffRow } from '../../../core/compare/index.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import type { ShownFigure } from '../../../core/model/snapshot.ts';
import { isUse, textQuantity } from '../../../core/units/index.ts';
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

/** What another version of the program has worked out and this one cannot. */
const NOT_HERE = 'not known here';

/** The figures that read otherwise than they were shown then. */
function shownDiffer(then: readonly ShownFigure[], now: readonly ShownFigure[], units: UnitChoice): readonly DiffRow[] {
  const text = ({ value, use }: ShownFigure) =>
    value === null ? 'not known' : isUse(use) ? textQuantity(value, use, units) : NOT_HERE;
  return then.flatMap((before): readonly DiffRow[] => {
    const { key, name, use, value } = before;
    const after = now.find((figure) => figure.key === key);
    if (after === undefined) return value === null ? [] : [{ key, name, then: text(before), now: NOT_HERE, difference: '' }];
    if (text(before) === text(after)) return [];
    const apart =
      value === null || after.value === null || after.use !== use || !isUse(use)
        ? ''
        : textQuantity(after.value - value, use, units, { signed: true });
    return [{ key, name, then: text(before), now: text(after), difference: apart }];
  });
}
