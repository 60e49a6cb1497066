import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { DiffRow } from '../../../core/compare/index.ts';
import type { Id } from '../../../core/model/common.ts';

/** What a person has open on this screen for one set-up; leaving and coming back keeps it. */
export interface RecordChoice {
  /** The snapshot the diff starts from; null: the newest. */
  readonly from: Id | null;
  /** Where the diff ends; null: as it stands. */
  readonly to: Id | null;
  /** What the last putting back did, until something else is chosen. */
  readonly putBack: readonly DiffRow[] | null;
}

interface RecordStore {
  readonly bySetup: Readonly<Record<Id, RecordChoice>>;
}

const untouched: RecordChoice = { from: null, to: null, putBack: null };

const store = createStore<RecordStore>(() => ({ bySetup: {} }));

export function chooseInRecord(setupId: Id, patch: Partial<RecordChoice>): void {
  store.setState(({ bySetup }) => ({
    bySetup: { ...bySetup, [setupId]: { ...(bySetup[setupId] ?? untouched), putBack: null, ...patch } },
  }));
}

export const useRecordChoice = (setupId: Id | null): RecordChoice =>
  useStore(store, (state) => (setupId === null ? untouched : (state.bySetup[setupId] ?? untouched)));
