import type { UnitChoice } from '../../../core/model/preferences.ts';
import { inch } from '../../../core/units/exact.ts';
import { showQuantity, textQuantity } from '../../../core/units/index.ts';
import type { Said } from '../readAlong/words.ts';
import { upTo, type ForceDrawData } from './data.ts';
import { forceAt } from './marks.ts';

/** The finding: what is stored, and whether the bow stacks. */
export function headline({ from, energy, stacksFrom, tellsStacking }: ForceDrawData, units: UnitChoice): string {
  const stored = textQuantity(energy.value, 'energy', units);
  if (from !== 'readings') return `About ${stored} stored`;
  if (stacksFrom !== null) return `${stored} stored; stacks from ${textQuantity(stacksFrom, 'length', units)}`;
  return tellsStacking ? `${stored} stored, no stacking` : `${stored} stored`;
}

/** What stands under it: how the last inches pull, what the way back keeps, or what the estimate rests on. */
export function note(data: ForceDrawData, units: UnitChoice): string {
  if (data.from === 'readings') {
    const { growth, loss } = data;
    const least = showQuantity(growth.least, 'weightPerLength', units).figure;
    const most = textQuantity(growth.most, 'weightPerLength', units);
    const over = textQuantity(2 * inch, 'length', units);
    // Only cams let a bow hold less than it took on the way: there is nothing to stack then.
    if (data.lastRise < 0)
      return `${textQuantity(-data.lastRise, 'weight', units)} less over the last ${over}, from a peak of ${textQuantity(peak(data), 'weight', units)}.${whose(data, units)}`;
    const last = `${textQuantity(data.lastRise, 'weight', units)} in the last ${over}`;
    const even = data.tellsStacking ? `, ${least} to ${most} over the later half` : '; too few readings there to tell stacking';
    const kept =
      loss === null
        ? ''
        : ` Let down slowly, the bow keeps ${textQuantity(loss.energy, 'energy', units)}, ${Math.round(100 * loss.share)} %.`;
    return `${last}${even}.${kept}${whose(data, units)}`;
  }
  const band = `${showQuantity(data.energy.low, 'energy', units).figure} to ${textQuantity(data.energy.high, 'energy', units)}`;
  const basis =
    data.from === 'marked weight'
      ? 'from the marked weight and the kind of bow'
      : 'from the weight on the fingers and the kind of bow';
  return `${band}, ${basis}. Read it on a scale for its own curve.`;
}

/** The heaviest on the way to the draw that the figures are for. */
const peak = ({ samples, full }: ForceDrawData): number => Math.max(...upTo(samples, full).map(({ value }) => value));

/** Whose draw the figures are for, where it is not the archer's. */
const whose = ({ fullOf, full }: ForceDrawData, units: UnitChoice): string =>
  fullOf === 'archer' ? '' : ` To the deepest reading, ${textQuantity(full, 'length', units)}: enter a draw length.`;

/** The force at a draw, how fast it grows there and what is stored up to there. */
export function saidAt(data: ForceDrawData, draw: number, units: UnitChoice): Said {
  const samples = data.samples;
  const half = inch / 4;
  const slope = (forceAt(samples, draw + half) - forceAt(samples, draw - half)) / (2 * half);
  return {
    where: textQuantity(draw, 'length', units),
    figures: [
      textQuantity(forceAt(samples, draw), 'weight', units),
      textQuantity(slope, 'weightPerLength', units),
      `${textQuantity(storedTo(data, draw), 'energy', units)} stored`,
    ],
  };
}

/** The picture in a sentence. */
export function sentence(data: ForceDrawData, units: UnitChoice): string {
  const weight = textQuantity(data.weight.value, 'weight', units);
  const draw = textQuantity(data.full, 'length', units);
  const flagged = data.readings.filter((reading) => reading.flagged !== null).length;
  const doubts = flagged === 0 ? '' : ` ${flagged} of ${data.readings.length} readings are flagged.`;
  return `Force against draw. ${headline(data, units)}: ${weight} ${data.fullOf === 'archer' ? 'on the fingers' : 'on the scale'} at ${draw}. ${note(data, units)}${doubts}`;
}

function storedTo(data: ForceDrawData, draw: number): number {
  let sum = 0;
  data.samples.forEach((sample, i) => {
    const before = data.samples[i - 1];
    if (before === undefined || before.draw >= draw) return;
    const end = Math.min(sample.draw, draw);
    sum += ((before.value + forceAt(data.samples, end)) / 2) * (end - before.draw);
  });
  return sum;
}
