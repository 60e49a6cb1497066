import { useLayoutEffect, useRef, useState, type RefObject } from 'react';

/** Narrower than this nothing could be drawn [px]. */
const LEAST = 220;

/** The width of an element as it stands, followed when the window changes. */
export function useWidth(first: number): readonly [RefObject<HTMLDivElement | null>, number] {
  const element = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(first);
  useLayoutEffect(() => {
    const box = element.current;
    if (box === null) return;
    const measure = () => setWidth(Math.max(LEAST, Math.floor(box.clientWidth)));
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(box);
    return () => observer.disconnect();
  }, []);
  return [element, width];
}
