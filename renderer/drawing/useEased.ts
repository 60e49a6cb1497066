import { useEffect, useMemo, useRef, useState } from 'react';

/** The drawing follows a figure in this time [ms]; where less motion is wished for it jumps. */
const FOLLOWS = 120;

/** The given figures, on their way to where they now are. Figures that are the same are the same object. */
export function useEased<T extends Readonly<Record<string, number>>>(target: T): T {
  const key = JSON.stringify(target);
  const to = useMemo(() => JSON.parse(key) as T, [key]);
  const [shown, setShown] = useState(to);
  const now = useRef(to);
  // Who wishes for less motion is shown the new figures in the same drawing that brings them, not in a second one.
  const jumps = matchMedia('(prefers-reduced-motion: reduce)').matches;
  if (jumps && shown !== to) setShown(to);

  useEffect(() => {
    const from = now.current;
    if (from === to) return undefined;
    const show = (figures: T) => {
      now.current = figures;
      setShown(figures);
    };
    if (jumps) return show(to);
    const began = performance.now();
    let frame = requestAnimationFrame(function step(at) {
      const share = Math.min(1, Math.max(0, (at - began) / FOLLOWS));
      const eased = share * (2 - share);
      const mixed = Object.entries(to).map(([name, end]) => [name, mix(from[name] ?? end, end, eased)]);
      show(share === 1 ? to : (Object.fromEntries(mixed) as T));
      if (share < 1) frame = requestAnimationFrame(step);
    });
    return () => cancelAnimationFrame(frame);
  }, [to, jumps]);
  return jumps ? to : shown;
}

const mix = (a: number, b: number, share: number): number => a + (b - a) * share;
