import type { FindingAction } from '../../../core/findings/finding.ts';
import { edited, type Bench } from '../../state/bench.ts';
import { bundleOf } from '../../state/selectors.ts';
import { showPartWith } from '../aim/fieldPart.ts';
import { now } from '../../state/clock.ts';

/** Does what a finding offers: opens the field that mends it, or notes a look-over. */
export function answer(bench: Bench, action: FindingAction): void {
  const state = bench.getState();
  if (action.kind === 'go') {
    state.go(action.screen);
    if (action.screen === 'aim' && state.setupId !== null) showPartWith(state.setupId, action.field);
    // The screen must be drawn before its field can take the focus.
    requestAnimationFrame(() =>
      requestAnimationFrame(() => {
        const asked = document.querySelector<HTMLElement>(`[data-field="${action.field}"]`);
        // Aim without a flight has none of its parts: what the flight waits for stands there first.
        const field = asked ?? (action.screen === 'aim' ? document.querySelector<HTMLElement>('.aim-begin [data-field]') : null);
        field?.scrollIntoView({ block: 'center' });
        field?.focus();
      }),
    );
    return;
  }
  const bundle = bundleOf(state.records, state.setupId);
  if (bundle === null) return;
  const what = action.what === 'bow' ? bundle.bow : bundle.arrowSet;
  void state.change(`${what.name} looked over`, (records) => {
    const record = records.get(what.id);
    return record?.kind === 'bow' || record?.kind === 'arrowSet' ? [edited(record, { lookedOver: now() })] : [];
  });
}
