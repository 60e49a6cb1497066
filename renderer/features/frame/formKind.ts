import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { Screen } from '../../../core/findings/finding.ts';
import { keepFocus, leaveField } from './keepFocus.ts';

/** How the figures of a bow and of an arrow are entered: on their drawing, or as rows of a form. The choice holds for both. */
export type FormKind = 'drawing' | 'plain form';

const store = createStore<{ readonly kind: FormKind }>(() => ({ kind: 'drawing' }));

export const chooseForm = (kind: FormKind): void => store.setState({ kind });

export const useFormKind = (): FormKind => useStore(store, ({ kind }) => kind);

/** What F2 does, where there is a drawing to turn over: what is being typed is kept, and the same field is open on the other side. */
export function turnForm(screen: Screen): void {
  if (screen !== 'bow' && screen !== 'arrow') return;
  const here = document.activeElement;
  const field = here instanceof HTMLElement ? here.dataset['field'] : undefined;
  leaveField();
  chooseForm(store.getState().kind === 'drawing' ? 'plain form' : 'drawing');
  requestAnimationFrame(() => {
    document.querySelector<HTMLElement>(`[data-field="${field}"]`)?.focus();
    keepFocus();
  });
}
