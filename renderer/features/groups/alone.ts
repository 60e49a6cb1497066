import type { UnitChoice } from '../../../core/model/preferences.ts';
import { showQuantity, textQuantity } from '../../../core/units/index.ts';
import type { OneGroup } from './derive.ts';
import { wholeText } from './wholeText.ts';

const ASK = 'To ask whether a shift is real, put a second group beside it: bare against fletched, or before against after.';

/** What one group says by itself. */
export function aloneSentence({ group, measures, problem }: OneGroup, units: UnitChoice): { headline: string; subline: string } {
  if (measures === null) return { headline: (problem?.sentence ?? '').replace(/\.$/, ''), subline: ASK };
  const digits = units.setting === 'mm' ? 0 : 1;
  const [low, high] = measures.meanRadiusInterval;
  const [size, ofMany] = [measures.meanRadius, measures.meanRadiusOfMany].map((radius) =>
    textQuantity(radius, 'setting', units, { digits }),
  );
  const least = showQuantity(low, 'setting', units, { digits }).figure;
  const most = showQuantity(high, 'setting', units, { digits }).figure;
  // Of thousands of shots both ends are one figure.
  const between = least === most ? '' : ` (${least} to ${textQuantity(high, 'setting', units, { digits })}, 95 %)`;
  return {
    headline: `${wholeText(measures.n)} ${group.fletching} shots${measures.n < group.shots.length ? ` of ${wholeText(group.shots.length)}` : ''}, mean radius of these ${size}`,
    subline: `Very many such shots would show ${ofMany}${between}. ${ASK}`,
  };
}
