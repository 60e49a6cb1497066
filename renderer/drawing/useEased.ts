import { useEffect, useRef, useState } from 'react';

/** The drawing follows a figure in this time [ms]; where less motion is wished for it jumps. */
const FOLLOWS = 120;

/** The given figures, on their way to where they now are. */
export function useEased<T extends Readonly<Record<string, number>>>(target: T): T {
  const [shown, setShown] = useState(target);
  const now = useRef(target);
  const key = JSON.stringify(target);

  useEffect(() => {
    const to = JSON.parse(key) as T;
    const from = now.current;
    const show = (figures: T) => {
      now.current = figures;
      setShown(figures);
    };
    if (JSON.stringify(from) === key) return undefined;
    if (matchMedia('(prefers-reduced-motion: reduce)').matches) return show(to);
    const began = performance.now();
    let frame = requestAnimationFrame(function step(at) {
      const share = Math.min(1, Math.max(0, (at - began) / FOLLOWS));
      const eased = share * (2 - share);
      const mixed = Object.entries(to).map(([name, end]) => [name, mix(from[name] ?? end, end, eased)]);
      show(share === 1 ? to : (Object.fromEntries(mixed) as T));
      if (share < 1) frame = requestAnimationFrame(step);
    });
    return () => cancelAnimationFrame(frame);
  }, [key]);
  return shown;
}

const mix = (a: number, b: number, share: number): number => a + (b - a) * share;
