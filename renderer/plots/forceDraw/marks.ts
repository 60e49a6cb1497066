import { area, line, scaleLinear, type ScaleLinear } from 'd3';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import { factorOf, unitOf } from '../../../core/units/index.ts';
import type { Label } from '../labels.ts';
import { inchSteps, ticksAcross, ticksUp, widthUp, type Tick } from '../ticks.ts';
import { upTo, type ForceDrawData, type ForceSample } from './data.ts';
import { placeLabels, type Drawn } from './placing.ts';

export interface ForceDrawMarks extends Drawn {
  readonly height: number;
  readonly across: readonly Tick[];
  readonly curve: string;
  /** The curve past this archer's draw. */
  readonly beyond: string;
  /** What is not known: null where it was all read. */
  readonly band: { readonly area: string; readonly edges: readonly [string, string] } | null;
  /** The energy that comes back, and that which does not; without a way back the first is all of it. */
  readonly energy: string;
  readonly lost: string | null;
  readonly letDown: string | null;
  readonly labels: readonly Label[];
}

/** Pixels: the lane for the readout above, the axis below, and how high the plot is for its width. */
const frame = { lane: 24, axis: 24, right: 14, least: 190, most: 320, share: 0.62 } as const;
/** The room above the heaviest force, for its label. */
const HEADROOM = 1.16;
/** A narrower band is a line, and says nothing [px]. */
const LEAST_BAND = 3;

/** What a force-draw curve looks like at a width: paths, places and labels, none of which touch. */
export function forceDrawMarks(data: ForceDrawData, width: number, units: UnitChoice): ForceDrawMarks {
  const height = Math.round(Math.min(frame.most, Math.max(frame.least, width * frame.share)));
  const last = data.samples.at(-1)?.draw ?? data.full;
  const heaviest = Math.max(...data.samples.map(({ high }) => high), ...data.readings.map(({ force }) => force));
  const axisY = height - frame.axis;
  const y = scaleLinear([0, heaviest * HEADROOM], [axisY, frame.lane]);
  const force = { factor: factorOf('weight', units), symbol: unitOf('weight', units) };
  const left = Math.ceil(widthUp(y, force)) + 8;
  const right = width - frame.right;
  const least = Math.min(data.brace, ...data.readings.map(({ draw }) => draw));
  const x = scaleLinear([least, last], [left, right]);
  const draws = {
    factor: factorOf('length', units),
    symbol: unitOf('length', units),
    ...(units.length === 'in' ? { steps: inchSteps } : {}),
  };

  const path = (samples: readonly ForceSample[], of: (sample: ForceSample) => number) =>
    line<ForceSample>(
      (sample) => x(sample.draw),
      (sample) => y(of(sample)),
    ).digits(2)([...samples]) ?? '';
  const drawn = upTo(data.samples, data.full);
  const beyond = data.samples.filter(({ draw }) => draw >= data.full - 1e-9);
  const under =
    area<ForceSample>()
      .x(({ draw }) => x(draw))
      .y0(axisY)
      .y1(({ value }) => y(value))
      .digits(2)([...drawn]) ?? '';
  const back = data.letDown.map(({ draw, force: pull }) => ({ draw, value: pull, low: pull, high: pull }));
  const uncertain = data.samples.some(({ low, high }) => y(low) - y(high) > LEAST_BAND);
  const marks = {
    width,
    height,
    x,
    y,
    window: { left, right, top: frame.lane, bottom: axisY },
    across: ticksAcross(x, draws, axisY, width),
    up: ticksUp(y, force, left - 8),
    curve: path(drawn, ({ value }) => value),
    beyond: path(beyond, ({ value }) => value),
    band: uncertain
      ? {
          area:
            area<ForceSample>()
              .x(({ draw }) => x(draw))
              .y0(({ low }) => y(low))
              .y1(({ high }) => y(high))
              .digits(2)([...data.samples]) ?? '',
          edges: [path(data.samples, ({ high }) => high), path(data.samples, ({ low }) => low)] as const,
        }
      : null,
    energy: under,
    lost: back.length < 2 ? null : between(drawn, back, x, y),
    letDown: back.length < 2 ? null : path(back, ({ value }) => value),
    dots: data.readings.map((reading) => ({
      x: x(reading.draw),
      y: y(reading.force),
      kind: reading.flagged !== null ? ('flagged' as const) : reading.way === 'draw' ? ('drawn' as const) : ('let down' as const),
      why: reading.flagged,
    })),
    full: { x: x(data.full), y: y(data.weight.value) },
    stacks: data.stacksFrom === null ? null : { x: x(data.stacksFrom), y: y(forceAt(data.samples, data.stacksFrom)) },
  };
  return { ...marks, labels: placeLabels(data, marks, units) };
}

/** Between the way there and the way back, as far as the way back was read. */
function between(
  there: readonly ForceSample[],
  back: readonly ForceSample[],
  x: ScaleLinear<number, number>,
  y: ScaleLinear<number, number>,
): string {
  const end = back.at(-1)?.draw ?? 0;
  const shared = there.filter(({ draw }) => draw <= end + 1e-9);
  return (
    area<ForceSample>()
      .x(({ draw }) => x(draw))
      .y0(({ draw }) => y(forceAt(back, draw)))
      .y1(({ value }) => y(value))
      .digits(2)([...shared]) ?? ''
  );
}

/** Between samples in a straight line. */
export function forceAt(samples: readonly ForceSample[], draw: number): number {
  const after = samples.findIndex((sample) => sample.draw >= draw);
  if (after === -1) return samples.at(-1)?.value ?? 0;
  const [a, b] = [samples[after - 1] ?? samples[after], samples[after]];
  if (a === undefined || b === undefined || a.draw === b.draw) return b?.value ?? 0;
  return a.value + ((b.value - a.value) * (draw - a.draw)) / (b.draw - a.draw);
}
