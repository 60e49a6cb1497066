import type { ShotGroup } from '../../../core/model/group.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import { textQuantity } from '../../../core/units/index.ts';

/** "18 m". */
export const distanceText = ({ context }: ShotGroup, units: UnitChoice): string =>
  textQuantity(context.distance, 'distance', units);

/** "Bare, 18 m". */
export const shelfText = (group: ShotGroup, units: UnitChoice): string =>
  `${group.fletching === 'bare' ? 'Bare' : 'Fletched'}, ${distanceText(group, units)}`;

/** "6 arrows". */
export const arrowsText = ({ shots }: ShotGroup): string => `${shots.length} ${shots.length === 1 ? 'arrow' : 'arrows'}`;
