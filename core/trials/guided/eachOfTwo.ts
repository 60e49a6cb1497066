/** A against B asks two things, whether the centre moves and whether the size changes: each has half of the trial's 5 % of false alarms. */
export const EACH_OF_TWO = 0.025;
