import { testers } from '../../../core/arrow/index.ts';
import type { ArrowSet } from '../../../core/model/arrowSet.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import { label } from '../../plots/labels.ts';
import { figureBox, figureSize, figureText } from '../dimension/figureBox.ts';
import type { Span } from '../dimension/lines.ts';
import { detail } from './nockEnd.ts';

/** How each tester's span and load are written. */
const words: Readonly<Record<ArrowSet['convention'], { readonly span: string; readonly load: string }>> = {
  '28 in, 880 g': { span: '28 in span', load: '880 g' },
  '26 in, 2 lb': { span: '26 in span', load: '2 lb' },
};
const LONGEST = Math.max(...Object.values(testers).map(({ span }) => span));

/** The shaft on its tester: two supports, the load at mid-span, and the sag that is the spine. The sag is drawn for the eye. */
export function spineTester(arrowSet: ArrowSet, units: UnitChoice, width: number, assumed: number | null, marked: boolean) {
  const { span } = testers[arrowSet.convention];
  const middle = width / 2;
  const reach = (width / 2 - 16) * (span / LONGEST);
  const [left, right] = [middle - reach, middle + reach];
  const [line, sag] = [30, 24];
  const size = figureSize(figureText('deflection', arrowSet.deflection, units, assumed), ['deflection'], marked);
  const x = middle + 44;
  const box = figureBox(size, x, detail.figures, 'middle');
  // A beam on two supports under a load at mid-span follows a cubic on either side.
  const at = (px: number) => {
    const u = Math.min(1, Math.max(-1, (px - middle) / reach));
    const a = 1 - Math.abs(u);
    return line + (sag * (3 * a - a ** 3)) / 2;
  };
  const steps = Array.from({ length: 41 }, (_, i) => left + ((right - left) * i) / 40);
  const span2: Span = {
    axis: 'up',
    from: line,
    to: line + sag,
    line: x,
    objectFrom: null,
    objectTo: middle,
    leadTo: box.top,
  };
  return {
    width,
    line: `M${left - 12} ${line}H${right + 12}`,
    shaft: `M${left - 10} ${line - 3}L${steps.map((px) => `${px.toFixed(1)} ${at(px).toFixed(1)}`).join('L')}L${right + 10} ${line - 3}`,
    supports: [left, right].map((px) => `M${px} ${line + 1}l6 11h-12z`),
    hook: `M${middle} ${line + sag}v8`,
    weight: `M${middle - 18} ${line + sag + 8}h36l4 22h-44z`,
    span: span2,
    deflection: { box, anchor: 'middle' as const },
    labels: [
      label(words[arrowSet.convention].span, middle, 14, 'middle', 'text', 12),
      label(words[arrowSet.convention].load, middle, line + sag + 23, 'middle', 'text', 12),
    ],
    spanLine: {
      axis: 'across',
      from: left,
      to: right,
      line: 10,
      objectFrom: line,
      objectTo: line,
      gap: [middle - 34, middle + 34],
    } as Span,
  };
}
