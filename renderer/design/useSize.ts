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
    const measure = () => {
      const { clientWidth: width, clientHeight: height } = element;
      // The observer calls once for nothing when it begins; a page that is as large as before is not drawn again.
      setSize((last) => (last?.width === width && last.height === height ? last : { width, height }));
    };
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    measure();
    return () => observer.disconnect();
  }, []);
  return [watch, size];
}
