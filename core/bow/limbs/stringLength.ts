import type { Bow, Settings } from '../../model/index.ts';
import { inch } from '../../units/exact.ts';

/** By the standard of bow lengths a string is 3 in shorter than the bow it is for. */
const SHORTER = 3 * inch;

/**
 * Length of a string, loop to loop under load: as it was measured, else by the bow's length.
 *
 * @equation L = L_measured, or L_bow − 3 in
 * @param bow - length, AMO [m] [record]
 * @param settings - stringLength [m] [record]
 * @returns L [m]; null when neither is known [-]
 * @validity bows marked with their AMO length; an old bow's mark may mean its stave
 * @source ata-bow-105
 * @example stringLengthOf({ length: 1.6764 }, { stringLength: null }) // 1.6002
 */
export function stringLengthOf(bow: Pick<Bow, 'length'>, settings: Pick<Settings, 'stringLength'>): number | null {
  return settings.stringLength ?? (bow.length === null ? null : bow.length - SHORTER);
}
