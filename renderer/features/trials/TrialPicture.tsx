import type { TrialInput, TrialPlot, TrialReading } from '../../../core/trials/index.ts';

interface Props {
  plot: TrialPlot;
  input: TrialInput;
  reading: TrialReading;
}

/** The picture of what was read, by the kind of numbers it draws. */
export function TrialPicture({ plot }: Props) {
  return <p>{plot.kind}</p>;
}
