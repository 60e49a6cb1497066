/** How a wind is known without a meter. */
export interface WindSign {
  /** Of the scale of Beaufort [-]. */
  readonly force: number;
  readonly name: string;
  /** What it does on land. */
  readonly sign: string;
}

/** From this wind on [m/s], highest first. */
const scale: readonly (WindSign & { readonly from: number })[] = [
  { from: 17.2, force: 8, name: 'gale', sign: 'twigs break off trees' },
  { from: 13.9, force: 7, name: 'near gale', sign: 'whole trees move' },
  { from: 10.8, force: 6, name: 'strong breeze', sign: 'large branches move, wires whistle' },
  { from: 8, force: 5, name: 'fresh breeze', sign: 'small trees in leaf sway' },
  { from: 5.5, force: 4, name: 'moderate breeze', sign: 'dust and loose paper rise, small branches move' },
  { from: 3.4, force: 3, name: 'gentle breeze', sign: 'leaves and twigs move all the time' },
  { from: 1.6, force: 2, name: 'light breeze', sign: 'felt on the face, leaves rustle' },
  { from: 0.3, force: 1, name: 'light air', sign: 'smoke drifts' },
];
const calm: WindSign = { force: 0, name: 'calm', sign: 'smoke rises straight up' };

/** From the first wind of force 6 on: branches come down, and butts blow over. */
const cautionFrom = 10;

/**
 * What a wind looks like on land.
 *
 * @equation Beaufort's scale: force 1 from 0.3, 2 from 1.6, 3 from 3.4, 4 from 5.5, 5 from 8.0, 6 from 10.8, 7 from 13.9, 8 from 17.2 m/s
 * @param speed - at 10 m over open ground [m/s]
 * @returns force, name and sign [record]
 * @validity up to force 8, which holds for all above; between two butts the wind is less than at 10 m
 * @source wmo-beaufort
 * @example windSign(4).name // "gentle breeze"
 */
export function windSign(speed: number): WindSign {
  const { force, name, sign } = scale.find(({ from }) => speed >= from) ?? calm;
  return { force, name, sign };
}

/**
 * What must be said of shooting in a wind.
 *
 * @equation from 10 m/s on a caution; below it nothing
 * @param speed - of the wind [m/s]
 * @returns a sentence, or null [text]
 * @validity any wind that fairWind lets pass; it never says that a lesser one is harmless
 * @source common practice
 * @example windCaution(6) // null
 */
export function windCaution(speed: number): string | null {
  if (!(speed >= cautionFrom)) return null;
  return 'Better not shot in: butts blow over, an arrow may leave the line it was meant for, and a bow is harder to hold. The range officer decides.';
}
