import type { WalkBack } from '../../group/index.ts';
import { textQuantity } from '../../units/index.ts';
import type { Cause } from '../reading.ts';
import { acrossText, chanceSentence, sideOf } from '../words.ts';
import type { TrialInput, TrialReading } from './types.ts';

/**
 * Headline and line under it for a walk-back.
 *
 * @equation by what the line does: bends, slants, stands upright, or cannot be told
 * @param line - from walkBack [record]
 * @param outward - whether it runs or bulges away from the riser [choice]
 * @param input - the trial with its records [record]
 * @returns headline and line under it [record]
 * @validity as walkBack
 * @source own derivation
 * @example walkBackWords(walkBack([5, 10, 20, 30].map((distance) => ({ distance, offsets: [0.01 * distance, 0.0104 * distance] }))).value, false, exampleTrialInput).headline // "The line slants to the right: 306 mm at 30 m"
 */
export function walkBackWords(
  line: WalkBack,
  outward: boolean,
  { units, bundle }: TrialInput,
): Pick<TrialReading, 'headline' | 'subline'> {
  const far = Math.max(...line.drawn.map(({ distance }) => distance));
  const at = textQuantity(far, 'distance', units);
  const across = acrossText(Math.tan(line.angle) * far, units);
  const side = sideOf(line.angle);
  const hand = bundle.archer.hand === 'right' ? 'right-handed' : 'left-handed';
  const misses =
    line.misses.parabola !== null && line.misses.parabola.p < 0.05
      ? ' The distances scatter more than the arrows of each: the intervals are too narrow.'
      : '';
  switch (line.line) {
    case 'bends': {
      const bulge = line.bend.curvature > 0 ? 'left' : 'right';
      return {
        headline: `The line bends: it bulges ${acrossText(line.bend.bow, units)} to the ${bulge}`,
        subline: `${chanceSentence(line.bend.p)} That is ${outward ? 'outward' : 'inward'} for a ${hand} archer.${misses}`,
      };
    }
    case 'slants':
      return {
        headline: `The line slants to the ${side}: ${across} at ${at}`,
        subline: `${chanceSentence(line.angleP)} That is ${outward ? 'outward' : 'inward'} for a ${hand} archer. No bend is shown.${misses}`,
      };
    case 'straight up':
      return {
        headline: 'The line stands upright',
        subline: `At ${at} it is ${across} ${side} of plumb, within one arrow\u2019s scatter.${misses}`,
      };
    case 'cannot tell':
      return {
        headline: `It cannot be told whether the line slants`,
        subline: `At ${at} it is ${across} ${side} of plumb. ${chanceSentence(line.angleP)}${misses}`,
      };
  }
}

/**
 * What may lie behind a line that slants or bends, with what speaks for and against it.
 *
 * @equation sight and cant, button, centre shot, wind; a constant angle slants and never bends
 * @param line - from walkBack [record]
 * @param outward - whether it runs or bulges away from the riser [choice]
 * @returns the causes; none for an upright line [list]
 * @validity disputed: the button way and the rest way read a slant differently
 * @source from memory
 * @example walkBackCauses({ line: 'straight up' }, true) // []
 */
export function walkBackCauses({ line }: Pick<WalkBack, 'line'>, outward: boolean): readonly Cause[] {
  if (line !== 'bends' && line !== 'slants') return [];
  const bent = line === 'bends';
  const cause = (text: string, evidenceFor: readonly string[], evidenceAgainst: readonly string[] = []): Cause => ({
    cause: text,
    evidenceFor,
    evidenceAgainst,
  });
  return [
    cause(
      'Sight to one side, or the bow canted',
      bent ? [] : ['A constant angle slants the line just so.'],
      bent ? ['A constant angle leaves the line straight.'] : [],
    ),
    cause(
      `The button is too ${outward ? 'firm' : 'soft'}`,
      bent ? [] : ['The button way reads a slant so (not checked against a source).'],
      [],
    ),
    cause(`The centre shot is too far ${outward ? 'out' : 'in'}`, [
      bent
        ? 'Both ways read a bend so (not checked against a source).'
        : 'The rest way reads a slant so (not checked against a source).',
    ]),
    cause('Wind, or tiring from distance to distance', [], []),
  ];
}
