import { carriedWith } from '../../../core/bow/index.ts';
import type { Band } from '../../../core/model/band.ts';
import { together } from '../../../core/model/sentence.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import { readsNought, showQuantity, textQuantity, unitOf, type Use } from '../../../core/units/index.ts';
import type { FlightReading } from '../../plots/flight/data.ts';
import type { AimPicture } from './derive.ts';
import { figuresAt } from './flightData.ts';

/** "38 to 47", or one figure where both ends read alike. */
export function rangeText({ low, high }: Pick<Band, 'low' | 'high'>, use: Use, units: UnitChoice, digits?: number): string {
  const options = digits === undefined ? {} : { digits };
  const [from, to] = [showQuantity(low, use, units, options).figure, showQuantity(high, use, units, options).figure];
  return from === to ? from : `${from} to ${to}`;
}

/** A band of heights by its size, nearer end first: how far over or under is said in words. */
export function depthRange(band: Band, units: UnitChoice): string {
  const [a, b] = [Math.abs(band.low), Math.abs(band.high)];
  return rangeText({ low: Math.min(a, b), high: Math.max(a, b) }, 'drop', units);
}

const straddles = ({ low, high }: Band): boolean => low < 0 && high > 0;

/** A distance as people say it: whole ones without decimals. */
const far = (distance: number, units: UnitChoice): string => textQuantity(distance, 'distance', units);

/** Nought as the screen shows it. */
export const isNought = (height: number, units: UnitChoice): boolean =>
  readsNought(showQuantity(height, 'drop', units, { digits: 0 }).figure);

/** The headline: the finding with its number. */
export function headline(picture: AimPicture, without: boolean, units: UnitChoice): string {
  const { pointOn } = picture.withoutSight;
  if (without && pointOn.ok)
    return `Point on at ${textQuantity(pointOn.value.value, 'distance', units, { digits: 0 })}, ${rangeText(pointOn.value, 'distance', units, 0)}`;
  return `Set for ${far(picture.setFor, units)} it rises ${textQuantity(picture.plan.apex.height.value, 'drop', units)} above the line of sight`;
}

const CHRONOGRAPH = ' A chronograph narrows it.';

/** The headline's band, what it rests on, and what would narrow it. */
export function basis(picture: AimPicture, without: boolean, units: UnitChoice): string {
  const { speed, diameter, eyeHeight } = picture.basis;
  const { height } = picture.plan.apex;
  const band = without && picture.withoutSight.pointOn.ok ? 'The' : `${depthRange(height, units)} ${unitOf('drop', units)}: the`;
  const assumed = [eyeHeight.measured ? null : 'the eye height', diameter.measured ? null : 'the shaft’s diameter'].filter(
    (one) => one !== null,
  );
  const narrows = { measured: '', carried: ' Measure it again.', fitted: CHRONOGRAPH, estimated: CHRONOGRAPH }[speed.from];
  return (
    `${band} band rests on ${speedText(speed, units)}, and ${dragText(picture.basis)}.${narrows}` +
    (assumed.length === 0 ? '' : ` Assumed until measured: ${together(assumed)}.`)
  );
}

function speedText(speed: AimPicture['basis']['speed'], units: UnitChoice): string {
  const text = (si: number) => textQuantity(si, 'speed', units);
  const range = `${rangeText(speed, 'speed', units)} ${unitOf('speed', units)}`;
  const { carried } = speed;
  if (carried !== null)
    return `a speed of ${range} ${carriedWith(carried, 'now', units)}, carried over from ${text(carried.speed)} measured ${carriedWith(carried, 'then', units)}`;
  if (speed.from === 'measured') return `a measured speed of ${text(speed.value)}, give or take 1 %`;
  return `a speed ${speed.from === 'fitted' ? 'fitted to other arrows over the chronograph' : 'estimated from the bow'}, ${range}`;
}

/** "a drag coefficient of 1.5 to 2.6", or the speeds that the drag was read off. */
function dragText({ dragFrom, coefficient: { low, high } }: AimPicture['basis']): string {
  if (dragFrom === 'speeds') return 'a drag read off speeds along the flight';
  return `a drag coefficient of ${Number(low.toFixed(2))} to ${Number(high.toFixed(2))}`;
}

/** What the whole plot says, for those who hear it. */
export function flightSentence(picture: AimPicture, units: UnitChoice): string {
  const { apex } = picture.plan;
  const down =
    picture.down === null
      ? ''
      : ` It comes down to the ground at about ${textQuantity(picture.down, 'distance', units, { digits: 0 })}.`;
  return (
    `Flight of the arrow set for ${far(picture.setFor, units)}: at most ${textQuantity(apex.height.value, 'drop', units)} above the line of sight, ` +
    `${depthRange(apex.height, units)}, ${textQuantity(apex.x.value, 'distance', units, { digits: 0 })} out.${down}`
  );
}

/** "64 cm over the line (61 to 67)". */
export function overLine(height: Band, units: UnitChoice): string {
  if (isNought(height.value, units)) return 'on the line of sight';
  const side = height.value > 0 ? 'over' : 'under';
  return `${textQuantity(Math.abs(height.value), 'drop', units)} ${side} the line (${depthRange(height, units)})`;
}

export function readingAt(picture: AimPicture, distance: number, units: UnitChoice): FlightReading | null {
  const row = figuresAt(picture, distance);
  if (row === null) return null;
  const where = `At ${far(distance, units)}`;
  if (picture.down !== null && distance > picture.down)
    return {
      distance,
      height: row.height,
      where,
      figures: `down before: it meets the ground at about ${textQuantity(picture.down, 'distance', units, { digits: 0 })}`,
    };
  const speed = `${textQuantity(row.speed.value, 'speed', units)} left (${rangeText(row.speed, 'speed', units)})`;
  const time = `${textQuantity(row.time.value, 'time', units, { digits: 2 })} (${rangeText(row.time, 'time', units, 2)})`;
  return { distance, height: row.height, where, figures: `${overLine(row.height, units)}, ${time}, ${speed}` };
}

/** "At 30 m hold the tip 86 cm below the centre (80 to 92)". */
export function holdSentence(distance: number, hold: Band, units: UnitChoice): string {
  const at = `At ${far(distance, units)} hold the tip`;
  if (straddles(hold) && isNought(hold.value, units)) return `${at} on the centre`;
  const side = hold.value > 0 ? 'above' : 'below';
  const size = textQuantity(Math.abs(hold.value), 'drop', units);
  if (!straddles(hold)) return `${at} ${size} ${side} the centre (${depthRange(hold, units)})`;
  const end = (height: number) => `${textQuantity(Math.abs(height), 'drop', units)} ${height > 0 ? 'above' : 'below'}`;
  return `${at} ${size} ${side} the centre (${end(hold.low)} to ${end(hold.high)})`;
}
