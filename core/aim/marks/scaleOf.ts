import type { Settings } from '../../model/setup.ts';
import type { SightScale } from './types.ts';

/** What a scale has on it when nobody has said: from memory, millimetres that grow as the pin moves down. */
const usualUnit = 0.001;
const usualGrows = 'down';

/** The scale of a sight, and what of it nobody has given. */
export interface ToldScale {
  readonly scale: SightScale;
  readonly assumed: { readonly unit: boolean; readonly grows: boolean };
}

/**
 * The scale on the sight of a set-up, as far as somebody has given it.
 *
 * @equation unit and direction as given, else 1 mm and downward; the ends of the bar only where they are given
 * @param settings - sightUnit [m], sightGrows, sightLowest and sightHighest in the scale's numbers [record]
 * @returns the scale, and whether unit and direction are assumed [record]
 * @validity any settings
 * @source from memory
 * @example scaleOf(exampleBundle.setup.settings).scale // {"unit":0.001,"grows":"down"}
 */
export function scaleOf(settings: Pick<Settings, 'sightUnit' | 'sightGrows' | 'sightLowest' | 'sightHighest'>): ToldScale {
  const { sightUnit, sightGrows, sightLowest, sightHighest } = settings;
  return {
    scale: {
      unit: sightUnit ?? usualUnit,
      grows: sightGrows ?? usualGrows,
      ...(sightLowest === null ? {} : { lowest: sightLowest }),
      ...(sightHighest === null ? {} : { highest: sightHighest }),
    },
    assumed: { unit: sightUnit === null, grows: sightGrows === null },
  };
}
