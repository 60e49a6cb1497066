import { extent, scaleLinear } from 'd3';

/** The one line from too stiff to too weak: what stands on it and below it is placed by the same scale. */
export interface SpineScale {
  readonly left: number;
  readonly right: number;
  readonly width: number;
  /** Where a deflection stands [m -> px]. */
  readonly at: (deflection: number) => number;
  readonly ticks: readonly { readonly at: number; readonly text: string }[];
}

/** Columns beside the axis for the names of the views and for what they say, px. */
const nameWidth = 128;
const saysWidth = 136;

/** A scale that holds every deflection given, with some air, in the shown unit's round figures. */
export function spineScale(deflections: readonly number[], width: number, perUnit: number, unit: string): SpineScale {
  const [least = 0, most = 0] = extent(deflections.map((si) => si / perUnit));
  const margin = Math.max(0.15 * (most - least), 0.06 * most);
  const left = nameWidth;
  const right = width - saysWidth;
  const x = scaleLinear([Math.max(0, least - margin), most + margin], [left, right]).nice(6);
  const count = Math.max(3, Math.floor((right - left) / 70));
  const values = x.ticks(count);
  // As many decimals as these ticks need, or two of them would read alike.
  const format = x.tickFormat(count);
  return {
    left,
    right,
    width,
    at: (deflection) => x(deflection / perUnit),
    ticks: values.map((value, i) => ({ at: x(value), text: `${format(value)}${i === values.length - 1 ? ` ${unit}` : ''}` })),
  };
}
