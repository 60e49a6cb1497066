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

type Patch = Partial<MarksDesk>;

export function setDesk(setupId: Id, patch: Patch | ((desk: MarksDesk) => Patch)): void {
  store.setState(({ bySetup }) => {
    const desk = bySetup[setupId] ?? untouched;
    return { bySetup: { ...bySetup, [setupId]: { ...desk, ...(typeof patch === 'function' ? patch(desk) : patch) } } };
  });
}

/** A mark that was refused stands where it was typed, unless another is being typed there meanwhile. */
export const typedAgain =
  ({ distance, reading }: Pick<MarksDesk, 'distance' | 'reading'>) =>
  (desk: MarksDesk): Patch =>
    desk.distance === '' && desk.reading === '' ? { distance, reading } : {};

export const useDesk = (setupId: Id): MarksDesk => useStore(store, ({ bySetup }) => bySetup[setupId] ?? untouched);
