import { useUnits } from '../../../state/useBench.ts';
import type { Head, Part, PartProps } from '../part.ts';
import { holdsHead } from './head.ts';
import { WithoutSight } from './WithoutSight.tsx';
import './holds.css';

function useHead({ picture }: PartProps): Head {
  return holdsHead(picture, useUnits());
}

/** Where to hold the tip of the arrow when there is no sight. */
export const holdsPart: Part = { name: 'Without a sight', useHead, Body: WithoutSight };
