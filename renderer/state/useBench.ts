import { createContext, useContext } from 'react';
import { useStore } from 'zustand';
import type { Bundle } from '../../core/model/bundle.ts';
import type { UnitChoice } from '../../core/model/preferences.ts';
import type { Bench, BenchState } from './bench.ts';
import { bundleOf } from './selectors.ts';

export const BenchContext = createContext<Bench | null>(null);

/** The store itself, for handlers that read the state when they run. */
export function useBenchApi(): Bench {
  const bench = useContext(BenchContext);
  if (bench === null) throw new Error('no bench around this component');
  return bench;
}

export function useBench<T>(select: (state: BenchState) => T): T {
  return useStore(useBenchApi(), select);
}

export const useUnits = (): UnitChoice => useBench((state) => state.preferences.units);

/** The set-up on the bench; null before there is one. */
export const useBundle = (): Bundle | null => useBench((state) => bundleOf(state.records, state.setupId));
