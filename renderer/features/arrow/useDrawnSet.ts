import { useMemo } from 'react';
import type { ArrowSet } from '../../../core/model/arrowSet.ts';
import { useEased } from '../../drawing/useEased.ts';

/** The figures that the drawing follows with a short movement. */
const followed = ['length', 'diameter', 'balance', 'vaneLength', 'vaneFromThroat', 'pointMass'] as const;

/** The set as it is drawn: on its way to its figures. One that was only just entered, or taken out, is drawn at once. */
export function useDrawnSet(arrowSet: ArrowSet): ArrowSet {
  const known = followed.flatMap((field): [string, number][] => {
    const value = arrowSet[field];
    return value === null ? [] : [[field, value]];
  });
  const eased = useEased(Object.fromEntries(known));
  return useMemo(() => {
    const shown = followed.filter((field) => arrowSet[field] !== null && eased[field] !== undefined);
    return { ...arrowSet, ...Object.fromEntries(shown.map((field) => [field, eased[field]])) };
  }, [arrowSet, eased]);
}
