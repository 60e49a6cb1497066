import type { FittedMarks, StripRow } from '../../../../core/aim/index.ts';
import type { Result } from '../../../../core/model/problem.ts';

/** What the page asks of its strip worker: a strip from one distance to another [m], from so many draws of a seed. */
export interface StripInput {
  readonly fit: FittedMarks;
  readonly from: number;
  readonly to: number;
  readonly step: number;
  readonly draws: number;
}

/** Strips for the screen and for paper are asked for apart: a newer one only takes the place of one of its own kind. */
export type StripLane = 'screen' | 'paper';

export interface StripAsk {
  readonly id: number;
  readonly task: StripLane;
  readonly input: StripInput;
  readonly seed: number;
}

export type StripReply =
  | { readonly id: number; readonly result: Result<StripRow[]> }
  /** A newer one was asked for meanwhile, or the page asked for no more. */
  | { readonly id: number; readonly cancelled: true };
