import type { Measure } from '../../core/model/limits.ts';
import type { FigureProps } from './useFigure.ts';

/** A figure of a record as it is entered. */
export interface FigureSpec {
  readonly measure: Measure;
  readonly name: string;
  /** What the journal calls the change. */
  readonly label: string;
  readonly hint?: string;
}

/** Every figure of a record with how it is kept, by the record's own names. */
export function figuresOf<K extends string>(
  record: string,
  specs: Readonly<Record<K, FigureSpec>>,
  values: Readonly<Record<K, number | null>>,
  keep: (label: string, patch: { readonly [field: string]: number | null }) => unknown,
): Readonly<Record<K, FigureProps>> {
  const entry = (field: K): FigureProps => {
    const { measure, name, label, hint } = specs[field];
    return {
      measure,
      name,
      value: values[field],
      onKeep: (value) => keep(label, { [field]: value }),
      field: `${record}.${field}`,
      ...(hint === undefined ? {} : { hint }),
    };
  };
  return Object.fromEntries((Object.keys(specs) as K[]).map((field) => [field, entry(field)])) as Record<K, FigureProps>;
}
