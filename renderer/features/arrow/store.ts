import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { Matching } from '../../../core/dozen/index.ts';
import type { Id } from '../../../core/model/common.ts';

/** What the dozen of a set-up is asked for: how many to match, how closely, and how far they are shot. */
export interface DozenPage {
  readonly count: number;
  readonly matching: Matching;
  /** [m] */
  readonly distance: number;
}

const fresh: DozenPage = { count: 6, matching: 'club', distance: 30 };

const pages = createStore<Readonly<Record<Id, DozenPage>>>(() => ({}));

export function askOf(setupId: Id, patch: Partial<DozenPage>): void {
  pages.setState((all) => ({ ...all, [setupId]: { ...(all[setupId] ?? fresh), ...patch } }));
}

export const useDozenPage = (setupId: Id): DozenPage => useStore(pages, (all) => all[setupId] ?? fresh);
