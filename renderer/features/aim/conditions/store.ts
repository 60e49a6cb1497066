import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { Id } from '../../../../core/model/common.ts';
import type { FaceId } from '../../../../core/model/group.ts';

/** What a person has chosen to go wrong for one set-up; null: the bench's own choice. Leaving and coming back keeps it. */
export interface ConditionsChoice {
  /** Upwards when positive [rad]. */
  readonly slope: number;
  /** [m/s] */
  readonly windSpeed: number;
  /** Where it comes from, by the clock with the target at 12: 0 to 11 [hours]. */
  readonly windHour: number;
  /** The distances are known, or else guessed. */
  readonly marked: boolean | null;
  /** What the sight is set for [m]; null: for where the target stands. */
  readonly believed: number | null;
  /** How far out a guessed distance may be [m]. */
  readonly within: number | null;
  readonly face: FaceId | null;
}

const untouched: ConditionsChoice = {
  slope: 0,
  windSpeed: 0,
  windHour: 3,
  marked: null,
  believed: null,
  within: null,
  face: null,
};

// Apart from the other choices of Aim: a slider that is drawn along must not have the whole page flown anew.
const store = createStore<{ readonly bySetup: Readonly<Record<Id, ConditionsChoice>> }>(() => ({ bySetup: {} }));

export function chooseConditions(setupId: Id, patch: Partial<ConditionsChoice>): void {
  store.setState(({ bySetup }) => ({ bySetup: { ...bySetup, [setupId]: { ...(bySetup[setupId] ?? untouched), ...patch } } }));
}

export const useConditionsChoice = (setupId: Id): ConditionsChoice =>
  useStore(store, ({ bySetup }) => bySetup[setupId] ?? untouched);
