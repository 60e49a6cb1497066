import { useMemo } from 'react';
import { onBar, readingsNow, type MarksPicture } from '../../../../core/aim/index.ts';
import type { Bundle } from '../../../../core/model/bundle.ts';
import { readText } from '../marks/words.ts';
import { useMarksPicture } from '../useMarksPicture.ts';

/** "reads 63.4": what the sight reads where it is set for a distance; null where no marks are fitted. */
export type ReadsAt = (setFor: number) => string | null;

export function readsAt(marks: MarksPicture | null): ReadsAt {
  return (setFor) => {
    if (marks?.fit?.ok !== true) return null;
    const [reading = null] = readingsNow(marks, [setFor]);
    if (reading === null) return null;
    const off = onBar(reading, marks.scale) === 'off' ? ', off the bar' : '';
    return `reads ${readText(reading.value, marks.scale)}${off}`;
  };
}

export function useSightReading(bundle: Bundle): ReadsAt {
  const marks = useMarksPicture(bundle);
  return useMemo(() => readsAt(marks), [marks]);
}
