import type { ShotGroup } from '../../../core/model/group.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import { textQuantity } from '../../../core/units/index.ts';

/** "Bare, 18 m". */
export const shelfText = (group: ShotGroup, units: UnitChoice): string =>
  `${group.fletching === 'bare' ? 'Bare' : 'Fletched'}, ${textQuantity(group.context.distance, 'distance', units)}`;

/** "6 arrows". */
export const arrowsText = ({ shots }: ShotGroup): string => `${shots.length} ${shots.length === 1 ? 'arrow' : 'arrows'}`;
