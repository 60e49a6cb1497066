import type { NumberedArrow } from '../model/numberedArrow.ts';
import type { UnitChoice } from '../model/preferences.ts';
import type { FlightSpeed, ForceReading, SpeedReading } from '../model/readings.ts';
import { showQuantity, textQuantity, type Use } from '../units/index.ts';

/** A list in a record, in words: all of it in a few, and each entry as it reads, so that two lists can be held side by side. */
export interface Listed {
  readonly text: string;
  readonly entries: readonly string[];
}

const counted = (count: number, one: string, more: string): string =>
  count === 0 ? `no ${more}` : `${count} ${count === 1 ? one : more}`;

function span(figures: readonly number[], use: Use, units: UnitChoice): string {
  if (figures.length === 0) return '';
  const ends = [Math.min(...figures), Math.max(...figures)].map((figure) => textQuantity(figure, use, units));
  const [low = '', high = ''] = ends;
  return low === high ? `, ${low}` : `, ${showQuantity(Math.min(...figures), use, units).figure} to ${high}`;
}

/**
 * The readings off a bow scale, in words.
 *
 * @equation how many while drawing, how many while letting down, and from which draw to which
 * @param readings - pairs of draw and force [list]
 * @param units - the person's choice of units [record]
 * @returns the words, and each reading as it reads [record]
 * @validity any list, an empty one too
 * @source own derivation
 * @example readingsListed([{ draw: 0.254, force: 40, way: 'draw' }, { draw: 0.7112, force: 150, way: 'draw' }], defaultPreferences.units).text // "2 readings, 10 to 28 in"
 */
export function readingsListed(readings: readonly ForceReading[], units: UnitChoice): Listed {
  const down = readings.filter(({ way }) => way === 'let-down').length;
  const up = counted(readings.length - down, 'reading', 'readings');
  const reach = span(
    readings.map(({ draw }) => draw),
    'length',
    units,
  );
  return {
    text: `${up}${down === 0 ? '' : ` and ${down} let down`}${reach}`,
    entries: readings.map(
      ({ draw, force, way }) => `${textQuantity(draw, 'length', units)}, ${textQuantity(force, 'weight', units)}, ${way}`,
    ),
  };
}

/**
 * Arrows shot over a chronograph, in words.
 *
 * @equation how many, and from which mass to which
 * @param speeds - pairs of mass and speed [list]
 * @param units - the person's choice of units [record]
 * @returns the words, and each arrow as it reads [record]
 * @validity any list, an empty one too
 * @source own derivation
 * @example speedsListed([], defaultPreferences.units).text // "no arrows timed"
 */
export function speedsListed(speeds: readonly SpeedReading[], units: UnitChoice): Listed {
  const masses = span(
    speeds.map(({ mass }) => mass),
    'mass',
    units,
  );
  return {
    text: `${counted(speeds.length, 'arrow timed', 'arrows timed')}${masses}`,
    entries: speeds.map(({ mass, speed }) => `${textQuantity(mass, 'mass', units)}, ${textQuantity(speed, 'speed', units)}`),
  };
}

/**
 * The speeds of one arrow along its flight, in words.
 *
 * @equation how many, and from which distance to which
 * @param speeds - pairs of distance and speed [list]
 * @param units - the person's choice of units [record]
 * @returns the words, and each pair as it reads [record]
 * @validity any list, an empty one too
 * @source own derivation
 * @example flightSpeedsListed([{ distance: 0, speed: 55 }, { distance: 50, speed: 50 }], defaultPreferences.units).text // "2 speeds, 0 to 50 m"
 */
export function flightSpeedsListed(speeds: readonly FlightSpeed[], units: UnitChoice): Listed {
  const reach = span(
    speeds.map(({ distance }) => distance),
    'distance',
    units,
  );
  return {
    text: `${counted(speeds.length, 'speed', 'speeds')}${reach}`,
    entries: speeds.map(
      ({ distance, speed }) => `${textQuantity(distance, 'distance', units)}, ${textQuantity(speed, 'speed', units)}`,
    ),
  };
}

/**
 * The numbered arrows of a set, in words. What was seen on them on a day is left out.
 *
 * @equation how many, and how many of them are set aside
 * @param arrows - the numbered arrows [list]
 * @param units - the person's choice of units [record]
 * @returns the words, and each arrow as it reads [record]
 * @validity any list, an empty one too
 * @source own derivation
 * @example arrowsListed([], defaultPreferences.units).text // "no numbered arrows"
 */
export function arrowsListed(arrows: readonly NumberedArrow[], units: UnitChoice): Listed {
  const aside = arrows.filter(({ setAside }) => setAside).length;
  const figure = (value: number | null, use: Use) => (value === null ? '-' : textQuantity(value, use, units));
  return {
    text: `${counted(arrows.length, 'numbered arrow', 'numbered arrows')}${aside === 0 ? '' : `, ${aside} set aside`}`,
    entries: arrows.map(({ number, mass, spines, straightness, setAside, note }) =>
      [
        number,
        figure(mass, 'mass'),
        ...spines.map((spine) => figure(spine, 'deflection')),
        figure(straightness, 'deflection'),
        setAside ? 'set aside' : '',
        note,
      ].join(', '),
    ),
  };
}
