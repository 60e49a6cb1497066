import type { Tear } from '../../../core/model/trial.ts';
import type { TrialPlot } from '../../../core/trials/index.ts';
import { label } from '../labels.ts';
import { Lettered } from '../Lettered.tsx';
import { onPad, padView } from './pad.ts';
import { TearShape } from './TearShape.tsx';
import './tears.css';
import './trialPlot.css';

interface Props {
  data: Extract<TrialPlot, { kind: 'tears' }>;
  size: number;
  shaftRadius: number;
  scale: { readonly length: number; readonly text: string };
  sentence: string;
}

/** Every tear on one hole, the mean with the oval that holds it, and how far to the side a tuned bow may tear. */
export function Tears({ data, size, shaftRadius, scale, sentence }: Props) {
  const { tears, mean, usual } = data;
  const reach = [...tears, { across: usual * 0.85, up: 0 }];
  const view = padView(reach, size);
  const middle = size / 2;
  const per = middle / view.half;
  const at = mean === null ? null : onPad(view, { across: mean.across.value, up: mean.up.value });
  const wide = Math.min(size, 2 * usual * per);
  return (
    <svg className="trial-plot" width={size} height={size} role="img" aria-label={sentence}>
      <rect className="paper" width={size} height={size} />
      <rect className="usual-band" x={middle - wide / 2} y="0" width={wide} height={size} />
      <path className="centre-line" d={`M0 ${middle}H${size}M${middle} 0V${size}`} />
      {tears.map((tear: Tear, i) => (
        <TearShape
          key={i}
          from={{ x: middle, y: middle }}
          to={onPad(view, tear)}
          radius={shaftRadius * per}
          bare={tear.fletching === 'bare'}
          name={`tear ${i + 1}`}
        />
      ))}
      {mean !== null && at !== null && (
        <g className="tear-mean">
          {(['case', 'oval'] as const).map((layer) => (
            <ellipse
              key={layer}
              className={layer}
              cx={at.x}
              cy={at.y}
              rx={((mean.across.high - mean.across.low) / 2) * per}
              ry={((mean.up.high - mean.up.low) / 2) * per}
            />
          ))}
          <path d={`M${middle} ${middle}L${at.x} ${at.y}`} />
        </g>
      )}
      <Lettered label={label('usual on a tuned bow', 8, size - 10, 'start', 'name', 13)} halo />
      <path className="axis" d={`M${size - 12 - scale.length * per} 12v5h${scale.length * per}v-5`} />
      <Lettered label={label(scale.text, size - 12, 31, 'end', 'text', 12)} halo />
      <rect className="frame-line" x="0.5" y="0.5" width={size - 1} height={size - 1} />
    </svg>
  );
}
