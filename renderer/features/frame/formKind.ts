import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { Screen } from '../../../core/findings/finding.ts';

/** How the figures of a bow and of an arrow are entered: on their drawing, or as rows of a form. The choice holds for both. */
export type FormKind = 'drawing' | 'plain form';

const store = createStore<{ readonly kind: FormKind }>(() => ({ kind: 'drawing' }));

export const chooseForm = (kind: FormKind): void => store.setState({ kind });

export const useFormKind = (): FormKind => useStore(store, ({ kind }) => kind);

/** What F2 does; only where there is a drawing to turn over. */
export function turnForm(screen: Screen): void {
  if (screen === 'bow' || screen === 'arrow') chooseForm(store.getState().kind === 'drawing' ? 'plain form' : 'drawing');
}
