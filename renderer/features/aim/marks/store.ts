import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { Id } from '../../../../core/model/common.ts';

/** Distances from one to another in even steps [m]. */
export interface Span {
  readonly from: number;
  readonly to: number;
  readonly step: number;
}

/** What a person is at with the marks of one set-up; leaving and coming back keeps it. */
export interface MarksDesk {
  /** A mark that is being typed: not kept yet, and never lost. */
  readonly distance: string;
  readonly reading: string;
  /** The distances of table and strip; null: those that are usual. */
  readonly span: Span | null;
}

const untouched: MarksDesk = { distance: '', reading: '', span: null };

const store = createStore<{ readonly bySetup: Readonly<Record<Id, MarksDesk>> }>(() => ({ bySetup: {} }));

export function setDesk(setupId: Id, patch: Partial<MarksDesk>): void {
  store.setState(({ bySetup }) => ({ bySetup: { ...bySetup, [setupId]: { ...(bySetup[setupId] ?? untouched), ...patch } } }));
}

export const useDesk = (setupId: Id): MarksDesk => useStore(store, ({ bySetup }) => bySetup[setupId] ?? untouched);
