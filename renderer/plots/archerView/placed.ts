import type { ArrowSeen } from './arrowSeen.ts';
import type { ViewScale } from './frame.ts';
import type { GroundLine } from './groundLines.ts';
import type { Stand } from './stand.ts';

/** Everything of the picture but its texts, with the bow to the right [px]. */
export interface Placed {
  readonly width: number;
  readonly height: number;
  readonly frame: ViewScale;
  /** Turns everything that is drawn for a bow to the right into the picture for the other hand; texts are placed by it already. */
  readonly mirrored: boolean;
  readonly butt: { readonly x: number; readonly y: number; readonly side: number };
  readonly centre: { readonly x: number; readonly y: number };
  /** The printed face across [px]. */
  readonly faceSize: number;
  readonly stand: Stand;
  readonly ground: readonly GroundLine[];
  /** Where the target stands on the ground. */
  readonly foot: number;
  readonly bow: { readonly x: number; readonly width: number };
  readonly string: { readonly x: number; readonly width: number };
  /** Where tip or pin is held. */
  readonly held: { readonly x: number; readonly y: number };
  readonly arrow: ArrowSeen | null;
  /** On the ground, lying: its middle and half axes. */
  readonly marker: { readonly x: number; readonly y: number; readonly rx: number; readonly ry: number } | null;
  /** From the centre up or down to what is held; null where they are too near to dimension. */
  readonly dimension: { readonly x: number; readonly from: number; readonly to: number } | null;
  /** From the centre sideways to it. */
  readonly sideways: { readonly y: number; readonly from: number; readonly to: number } | null;
  readonly interval: { readonly x: number; readonly low: number; readonly high: number } | null;
}
