import { useMemo } from 'react';
import type { MarksPicture } from '../../../core/aim/index.ts';
import type { Finding } from '../../../core/findings/finding.ts';
import { allFindings, bareInHand, type FindingOptions } from '../../../core/findings/index.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import type { Id } from '../../../core/model/common.ts';
import { now } from '../../state/clock.ts';
import { groupsOf, trialsOf } from '../../state/selectors.ts';
import { useBench, useBundle, useUnits } from '../../state/useBench.ts';
import { useMarksPicture } from '../aim/useMarksPicture.ts';
import { useRange } from '../aim/useRange.ts';
import { pairOf } from '../groups/derive.ts';
import { usePage } from '../groups/store.ts';
import { useChosenTrial } from '../trials/store.ts';

interface Known {
  readonly asked: string;
  readonly marks: MarksPicture | null;
  readonly findings: readonly Finding[];
}

const known = new WeakMap<Bundle, Known>();

/** The column, the headline and the page ask for one list at once: it is worked out for the first of them. */
function findingsOf(bundle: Bundle, options: FindingOptions): readonly Finding[] {
  // The picture of the marks is one and the same as long as nothing was written.
  const { marks = null, ...told } = options;
  const asked = JSON.stringify({ ...told, now: options.now.at.slice(0, 'YYYY-MM-DDThh:mm'.length) });
  const last = known.get(bundle);
  if (last?.asked === asked && last.marks === marks) return last.findings;
  const findings = allFindings(bundle, options);
  known.set(bundle, { asked, marks, findings });
  return findings;
}

/** Every check of the set-up on the bench, worst first; the same list on every screen. */
export function useFindings(): readonly Finding[] {
  const bundle = useBundle();
  const units = useUnits();
  const screen = useBench((state) => state.screen);
  const range = useRange(screen === 'aim' ? bundle : null);
  const marks = useMarksPicture(screen === 'aim' ? bundle : null);
  const bare = useBareInHand(bundle?.setup.id ?? '', screen === 'trials');
  return useMemo(
    () => (bundle === null ? [] : findingsOf(bundle, { units, now: now(), screen, bare, marks, ...range })),
    [bundle, units, screen, bare, marks, range],
  );
}

/** Whether bare shafts are in hand or planned: on the page of trials by the trial that is open there, else by the groups. */
function useBareInHand(setupId: Id, ofTrials: boolean): boolean {
  const groups = useBench(({ records }) => groupsOf(records, setupId));
  const trials = useBench(({ records }) => trialsOf(records, setupId, false));
  const page = usePage(setupId);
  const chosenId = useChosenTrial(setupId);
  const { first, second } = pairOf(groups, page);
  const shown = ofTrials ? [] : [first, second].filter((group) => group !== null);
  const chosen = ofTrials ? (trials.find(({ id }) => id === chosenId) ?? null) : null;
  return bareInHand({ groups, shown, trials, chosen }, now());
}
