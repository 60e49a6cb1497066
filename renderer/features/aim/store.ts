import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { AirGiven } from '../../../core/flight/index.ts';
import type { Id } from '../../../core/model/common.ts';

/** The part of the page that stands under the flight. */
export type AimPart = 'marks' | 'holds' | 'conditions' | 'flight';

/** What a person has chosen on this screen for one set-up; null: the bench's own choice. Leaving and coming back keeps it. */
export interface AimChoice {
  readonly part: AimPart | null;
  /** The distance that the sight is set for [m]. */
  readonly setFor: number | null;
  readonly otherEye: number | null;
  /** What is known of the air; null: nothing, so 15 °C at sea level. */
  readonly air: AirGiven | null;
}

/** What a flight is worked out from. */
export type FlownChoice = Pick<AimChoice, 'setFor'> & Partial<Pick<AimChoice, 'air'>>;

const untouched: AimChoice = { part: null, setFor: null, otherEye: null, air: null };

const store = createStore<{ readonly bySetup: Readonly<Record<Id, AimChoice>> }>(() => ({ bySetup: {} }));

export function chooseInAim(setupId: Id, patch: Partial<AimChoice>): void {
  store.setState(({ bySetup }) => ({ bySetup: { ...bySetup, [setupId]: { ...(bySetup[setupId] ?? untouched), ...patch } } }));
}

export const useAimChoice = (setupId: Id | null): AimChoice =>
  useStore(store, (state) => (setupId === null ? untouched : (state.bySetup[setupId] ?? untouched)));
