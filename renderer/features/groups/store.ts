import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { Id } from '../../../core/model/common.ts';

/** What a set-up's page shows: which two groups, which of them takes the next shot, and whether the whole face was asked for. */
export interface GroupsPage {
  readonly firstId: Id | null;
  readonly secondId: Id | null;
  readonly enteringId: Id | null;
  readonly whole: boolean;
}

const fresh: GroupsPage = { firstId: null, secondId: null, enteringId: null, whole: false };

const pages = createStore<Readonly<Record<Id, GroupsPage>>>(() => ({}));

export function turnTo(setupId: Id, patch: Partial<GroupsPage>): void {
  pages.setState((all) => ({ ...all, [setupId]: { ...(all[setupId] ?? fresh), ...patch } }));
}

export const usePage = (setupId: Id): GroupsPage => useStore(pages, (all) => all[setupId] ?? fresh);
