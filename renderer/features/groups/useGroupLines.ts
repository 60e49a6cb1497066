import { useMemo } from 'react';
import type { Id } from '../../../core/model/common.ts';
import type { ShotGroup } from '../../../core/model/group.ts';
import { now } from '../../state/clock.ts';
import { trialsOf } from '../../state/selectors.ts';
import { useBench, useUnits } from '../../state/useBench.ts';
import { groupLines, type GroupLine } from './groupLines.ts';

/** The groups of the set-up as they stand in a list, each by a name of its own. */
export function useGroupLines(groups: readonly ShotGroup[]): ReadonlyMap<Id, GroupLine> {
  const units = useUnits();
  const trials = useBench((state) => trialsOf(state.records, state.setupId, false));
  // A trial that was put away leaves its groups their name.
  const away = useBench((state) => trialsOf(state.records, state.setupId, true));
  return useMemo(() => groupLines(groups, [...trials, ...away], units, now()), [groups, trials, away, units]);
}
