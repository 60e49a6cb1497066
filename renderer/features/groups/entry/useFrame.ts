import { useMemo, useState } from 'react';
import type { ShotGroup } from '../../../../core/model/group.ts';
import { closeIn, reachOf, wholeFace } from '../../../plots/face/geometry.ts';
import type { OneGroup } from '../derive.ts';
import { useEntry } from './store.ts';

/** How much of the face is shown, and the way to more or less of it. */
export interface Frame {
  /** Half the side of the window [m]. */
  readonly half: number;
  readonly isWhole: boolean;
  /** Whether asking for the other would change anything. */
  readonly canTurn: boolean;
  turn(): void;
}

/** Two shots do not say yet where the group that is entered lies: bare shafts fly wide [count]. */
const ENOUGH = 3;

/**
 * The frame of a face stays as it is while shots are set on it: under a pointer nothing moves. It is chosen on coming to the groups, when a
 * person begins an end, and when somebody asks; beyond that it only widens for a shot that would lie out of sight.
 */
export function useFrame(
  groups: readonly (OneGroup | null)[],
  entering: ShotGroup,
  whole: boolean,
  onWhole: (whole: boolean) => void,
): Frame {
  const { begun } = useEntry(entering.id);
  const [first, second] = groups;
  const [a, b] = [first?.group.shots, second?.group.shots];
  const shots = useMemo(() => [...(a ?? []), ...(b ?? [])], [a, b]);
  const reach = useMemo(() => reachOf(shots), [shots]);
  const radius = (first ?? second)?.face.rings[0]?.radius ?? 0.2;
  const key = `${entering.id} ${first?.group.id ?? ''} ${second?.group.id ?? ''} ${radius} ${begun ?? ''}`;
  const chosen = () => (whole || entering.shots.length < ENOUGH ? wholeFace(radius, shots) : closeIn(shots, radius)).half;
  const [kept, setKept] = useState(() => ({ key, half: chosen() }));
  const half = kept.key !== key ? chosen() : reach > kept.half ? wholeFace(0, shots).half : kept.half;
  if (kept.key !== key || kept.half !== half) setKept({ key, half });

  const isWhole = half >= wholeFace(radius).half * 0.98;
  const close = closeIn(shots, radius).half;
  return {
    half,
    isWhole,
    canTurn: !isWhole || close < half * 0.98,
    turn: () => {
      setKept({ key, half: isWhole ? close : wholeFace(radius, shots).half });
      onWhole(!isWhole);
    },
  };
}
