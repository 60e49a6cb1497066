import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { Id } from '../../../core/model/common.ts';

interface CompareStore {
  /** The other set-up that was chosen last, by the reference's id. */
  readonly other: Readonly<Record<Id, Id>>;
}

const store = createStore<CompareStore>(() => ({ other: {} }));

export const chooseOther = (referenceId: Id, otherId: Id): void =>
  store.setState(({ other }) => ({ other: { ...other, [referenceId]: otherId } }));

export const useChosenOther = (referenceId: Id | null): Id | null =>
  useStore(store, ({ other }) => (referenceId === null ? null : (other[referenceId] ?? null)));
