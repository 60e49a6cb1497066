import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { Id } from '../../../core/model/common.ts';

export type PartName = 'plan' | 'shoot' | 'read' | 'change';

/** Where a person stands on a trial's page. */
interface TrialPlace {
  /** The part that is open; null: the one that the trial has come to. */
  readonly part: PartName | null;
  /** The row of the sheet in hand; null: the next one that is wanted. */
  readonly row: string | null;
}

interface Pages {
  /** The trial on the page, by set-up. */
  readonly chosen: Readonly<Record<Id, Id | null>>;
  readonly places: Readonly<Record<Id, TrialPlace>>;
}

const start: TrialPlace = { part: null, row: null };

const pages = createStore<Pages>(() => ({ chosen: {}, places: {} }));

export function chooseTrial(setupId: Id, trialId: Id | null): void {
  pages.setState(({ chosen }) => ({ chosen: { ...chosen, [setupId]: trialId } }));
}

export const useChosenTrial = (setupId: Id): Id | null => useStore(pages, ({ chosen }) => chosen[setupId] ?? null);

export function standIn(trialId: Id, patch: Partial<TrialPlace>): void {
  pages.setState(({ places }) => ({ places: { ...places, [trialId]: { ...(places[trialId] ?? start), ...patch } } }));
}

export const useTrialPlace = (trialId: Id): TrialPlace => useStore(pages, ({ places }) => places[trialId] ?? start);
