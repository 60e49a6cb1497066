import { useCallback, useState, type RefCallback } from 'react';

interface Size {
  readonly width: number;
  readonly height: number;
}

/** The inner size of whatever element takes the returned ref, kept up to date [px]; null until it has been laid out. */
export function useSize(): readonly [RefCallback<HTMLElement>, Size | null] {
  const [size, setSize] = useState<Size | null>(null);
  const watch = useCallback((element: HTMLElement | null) => {
    if (element === null) return undefined;
    const measure = () => setSize({ width: element.clientWidth, height: element.clientHeight });
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    measure();
    return () => observer.disconnect();
  }, []);
  return [watch, size];
}
