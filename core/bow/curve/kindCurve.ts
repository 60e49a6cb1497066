import type { Band } from '../../model/band.ts';
import { inch } from '../../units/exact.ts';
import type { KindFigures } from '../kinds.ts';
import { carriedWeight, weightPerInch } from '../weightAtDraw.ts';
import { movedDraw } from './moved.ts';
import type { Curve, Place } from './readCurve.ts';

/** Force as a share of the weight at full draw, against the share of the stroke; straight on past full draw. */
export interface Shape {
  readonly at: (share: number) => number;
  readonly slope: (share: number) => number;
}

/** Outside these the cubic would not rise all the way for the fullnesses of bows: a stroke that long or short is no bow's. */
const steepness = { least: 0.6, most: 1.4 } as const;

/**
 * The simplest curve of a given fullness whose weight still grows at full draw as the trade says: a cubic.
 *
 * @equation F/F_full = a x + b x² + c x³, a = 12φ − 6 + σ, b = 3 − σ − 2a, c = a + σ − 2; σ = 5.25 % for each inch of stroke, kept between 0.6 and 1.4
 * @param fullness - φ, from .46 to .61 [-]
 * @param stroke - d, power stroke [m]
 * @returns the curve and its slope [record]
 * @validity the fullnesses that kinds of bows have: there it rises all the way
 * @source own derivation
 * @example kindShape(0.55, 0.45).at(1) // 1
 */
export function kindShape(fullness: number, stroke: number): Shape {
  const grows = (weightPerInch.inside.value * stroke) / inch;
  const end = Math.min(steepness.most, Math.max(steepness.least, grows));
  const a = 12 * fullness - 6 + end;
  const b = 3 - end - 2 * a;
  const c = a + end - 2;
  return {
    at: (x) => (x <= 0 ? 0 : x < 1 ? x * (a + x * (b + x * c)) : 1 + end * (x - 1)),
    slope: (x) => (x < 0 ? 0 : x < 1 ? a + x * (2 * b + x * 3 * c) : end),
  };
}

/**
 * The force-draw curve that the kind of bow lets expect for a weight at full draw.
 *
 * @equation F = F_full s(x), s of kindShape at φ; E = φ F_full d; the band holds F_full and φ at their ends, E's adds both in squares
 * @param kind - the kind's figures [record]
 * @param weight - F_full, value with low and high [N] [record]
 * @param place - brace and full, AMO draws [m] [record]
 * @returns force [N] and slope [N/m] at an AMO draw, and energy [J] [record]
 * @validity nothing of this bow but its weight was read: a guess with its band
 * @source own derivation
 * @example curveOfKind(kindFigures.longbow, { value: 200, low: 200, high: 200 }, { brace: 0.25, full: 0.75, shift: 0 }).energy.value // 51
 */
export function curveOfKind({ fullness }: Pick<KindFigures, 'fullness'>, weight: Band, { brace, full }: Place): Curve {
  const stroke = full - brace;
  const shape = shapes(fullness, stroke);
  const share = (draw: number) => (draw - brace) / stroke;
  const value = fullness.value * weight.value * stroke;
  const reach = (side: 'low' | 'high') =>
    Math.hypot(
      fullness.value * (weight[side] - weight.value) * stroke,
      (fullness[side] - fullness.value) * weight.value * stroke,
    );
  return {
    force: (draw) => ({
      value: weight.value * shape.value.at(share(draw)),
      low: weight.low * shape.low.at(share(draw)),
      high: weight.high * shape.high.at(share(draw)),
    }),
    value: (draw) => weight.value * shape.value.at(share(draw)),
    slope: (draw) => (weight.value * shape.value.slope(share(draw))) / stroke,
    energy: { value, low: value - reach('low'), high: value + reach('high') },
  };
}

/**
 * The force-draw curve that the kind of bow lets expect through one reading.
 *
 * @equation F = F_read s(x)/s(x_read), s of kindShape; the band by φ, and past the reading by the weight's growth per inch as carriedWeight has it
 * @param kind - the kind's figures [record]
 * @param reading - its AMO draw [m] and force [N] [record]
 * @param place - brace and full, AMO draws, and the shift of the brace height since [m] [record]
 * @returns force [N] and slope [N/m] at an AMO draw, and energy [J]; null more than 10 in short of full draw [record]
 * @validity one reading beyond the brace height; two say more than the kind does
 * @source own derivation
 * @example curveThroughOne(kindFigures.longbow, { draw: 0.75, force: 200 }, { brace: 0.25, full: 0.75, shift: 0 }).energy.value // 51
 */
export function curveThroughOne(
  { fullness }: Pick<KindFigures, 'fullness'>,
  reading: { readonly draw: number; readonly force: number },
  { brace, full, shift }: Place,
): Curve | null {
  const read = movedDraw(reading.draw, shift, brace, full);
  const carried = (draw: number) => carriedWeight(1, read, draw);
  const atFull = read < full ? carried(full) : null;
  if (read < full && atFull === null) return null;
  const stroke = full - brace;
  const shape = shapes(fullness, stroke);
  const share = (draw: number) => (draw - brace) / stroke;
  const through = (side: keyof Band, draw: number) => (reading.force * shape[side].at(share(draw))) / shape[side].at(share(read));
  const doubt = (side: 'low' | 'high', draw: number): number => {
    const grown = draw > read ? carried(draw) : null;
    return grown === null ? 1 : grown[side] / grown.value;
  };
  const force = (draw: number): Band => {
    const value = through('value', draw);
    const ends = [through('low', draw), through('high', draw)];
    return { value, low: Math.min(value, ...ends) * doubt('low', draw), high: Math.max(value, ...ends) * doubt('high', draw) };
  };
  const weight = force(full);
  const energies = (['low', 'high'] as const).map((side) => fullness[side] * through(side, full) * stroke);
  const value = fullness.value * weight.value * stroke;
  const past = (side: 'low' | 'high') => (Math.abs(doubt(side, full) - 1) * weight.value * Math.max(0, full - read)) / 2;
  return {
    force,
    value: (draw) => through('value', draw),
    slope: (draw) => (through('value', full) * shape.value.slope(share(draw))) / stroke,
    energy: { value, low: Math.min(value, ...energies) - past('low'), high: Math.max(value, ...energies) + past('high') },
  };
}

const shapes = (fullness: Band, stroke: number) => ({
  value: kindShape(fullness.value, stroke),
  low: kindShape(fullness.low, stroke),
  high: kindShape(fullness.high, stroke),
});
