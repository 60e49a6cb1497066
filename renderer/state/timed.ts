import { arrowMass } from '../../core/arrow/index.ts';
import type { ArrowSet } from '../../core/model/arrowSet.ts';
import type { Settings, Setup } from '../../core/model/setup.ts';
import { grain } from '../../core/units/exact.ts';
import { edited } from './bench.ts';
import type { Records } from './selectors.ts';

/** A measured speed, with the whole arrow and the brace height that it was measured with: it holds for no other. */
export const timedWith = (
  arrowSpeed: number | null,
  arrowSet: ArrowSet | undefined,
  { braceHeight }: Pick<Settings, 'braceHeight'>,
): Pick<Settings, 'arrowSpeed' | 'speedMass' | 'speedBrace'> => {
  if (arrowSpeed === null) return { arrowSpeed, speedMass: null, speedBrace: null };
  const mass = arrowSet === undefined ? null : arrowMass(arrowSet);
  return { arrowSpeed, speedMass: mass?.ok === true ? mass.value.mass : null, speedBrace: braceHeight };
};

/** A speed that is typed keeps what it was measured with; a brace height that is noted for the first time is the one that it was measured at. */
export function settingsWith({ settings, arrowSetId }: Setup, patch: Partial<Settings>, records: Records): Settings {
  const next = { ...settings, ...patch };
  if (patch.arrowSpeed !== undefined) {
    const arrowSet = records.get(arrowSetId);
    return { ...next, ...timedWith(patch.arrowSpeed, arrowSet?.kind === 'arrowSet' ? arrowSet : undefined, next) };
  }
  const first = settings.braceHeight === null && settings.arrowSpeed !== null && settings.speedBrace === null;
  return first ? { ...next, speedBrace: next.braceHeight } : next;
}

/** A figure that was blank and is noted makes the arrow better known, not another one: the speeds that were measured with it go along. */
export function timedAnew(before: ArrowSet, patch: Partial<ArrowSet>, setups: readonly Setup[]) {
  const blank = (Object.keys(patch) as (keyof ArrowSet)[]).every((key) => before[key] === null);
  const [was, is] = [arrowMass(before), arrowMass({ ...before, ...patch })];
  if (!blank || !is.ok) return [];
  const { mass } = is.value;
  const itsSpeed = ({ arrowSpeed, speedMass }: Settings) =>
    arrowSpeed !== null && (speedMass === null ? !was.ok : was.ok && Math.abs(speedMass - was.value.mass) <= grain);
  return setups
    .filter(({ arrowSetId, settings }) => arrowSetId === before.id && itsSpeed(settings) && settings.speedMass !== mass)
    .map((setup) => edited(setup, { settings: { ...setup.settings, speedMass: mass } }));
}
