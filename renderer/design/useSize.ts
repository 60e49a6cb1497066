import { useLayoutEffect, useState, type RefObject } from 'react';

/** The inner size of an element, kept up to date [px]; null until it has been laid out. */
export function useSize(element: RefObject<HTMLElement | null>): { width: number; height: number } | null {
  const [size, setSize] = useState<{ width: number; height: number } | null>(null);
  useLayoutEffect(() => {
    const watched = element.current;
    if (watched === null) return;
    const measure = () => setSize({ width: watched.clientWidth, height: watched.clientHeight });
    const observer = new ResizeObserver(measure);
    observer.observe(watched);
    measure();
    return () => observer.disconnect();
  }, [element]);
  return size;
}
