import { spineOf, STANDARD } from '../arrow/index.ts';
import { drawWeight } from '../bow/index.ts';
import type { ArrowSet } from '../model/arrowSet.ts';
import type { Bundle } from '../model/bundle.ts';
import { archerFields, arrowFields, settingFields } from './fields.ts';

/** A set-up in which one measured thing is off by its doubt. */
interface Nudge {
  readonly name: string;
  readonly bundle: Bundle;
}

const arrowDoubts = arrowFields.filter(({ use }) => use !== null);
const resolutionOf = (fields: readonly { readonly key: string; readonly resolution: number }[], key: string): number =>
  fields.find((field) => field.key === key)?.resolution ?? 0;

/**
 * The set-up with each thing that was measured, in turn, off by as much as it can be read again.
 *
 * @equation one figure of the arrow, the modulus of a tube that nobody spined, the draw, the brace height or the weight at a time, plus its resolution or the end of its band
 * @param bundle - the set-up with its records [record]
 * @returns the nudged set-ups, named by what was measured on what, so that two set-ups can tell what they share [list]
 * @validity figures that are not on record are not nudged
 * @source jcgm-100
 * @example nudgesOf(exampleBundle).length // 12
 */
export function nudgesOf(bundle: Bundle): readonly Nudge[] {
  const { archer, bow, arrowSet, setup } = bundle;
  const nudges: Nudge[] = [];
  for (const { key, resolution } of arrowDoubts) {
    const value = arrowSet[key];
    if (typeof value !== 'number') continue;
    const nudged: ArrowSet = { ...arrowSet, [key]: value + resolution };
    nudges.push({ name: `${arrowSet.id} ${key} ${value}`, bundle: { ...bundle, arrowSet: nudged } });
  }
  const spine = spineOf(arrowSet);
  // One alloy's modulus is the same unknown for every tube.
  if (spine.ok && spine.value.from === 'tube')
    nudges.push({
      name: 'modulus of aluminium',
      bundle: { ...bundle, arrowSet: { ...arrowSet, deflection: spine.value.deflection.high, convention: STANDARD } },
    });
  if (archer.drawLength !== null) {
    const drawLength = archer.drawLength + resolutionOf(archerFields, 'drawLength');
    nudges.push({
      name: `${archer.id} drawLength ${archer.drawLength}`,
      bundle: { ...bundle, archer: { ...archer, drawLength } },
    });
  }
  const set = (name: string, settings: Partial<typeof setup.settings>) =>
    nudges.push({ name, bundle: { ...bundle, setup: { ...setup, settings: { ...setup.settings, ...settings } } } });
  const { braceHeight } = setup.settings;
  if (braceHeight !== null)
    set(`${bow.id} braceHeight ${braceHeight}`, { braceHeight: braceHeight + resolutionOf(settingFields, 'braceHeight') });
  const weight = drawWeight(bow, archer, setup.settings);
  if (weight.ok)
    set(`${bow.id} ${archer.id} weight ${weight.value.value}`, {
      weightOnFingers: weight.value.high,
      weightDraw: archer.drawLength,
    });
  return nudges;
}
