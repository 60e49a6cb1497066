import { tillerOf } from '../bow/index.ts';
import { formFields, settingFields, type Field } from '../compare/fields.ts';
import { dayText } from '../findings/day.ts';
import { capital } from '../findings/parts.ts';
import { face, sameDistance } from '../group/index.ts';
import type { ShotGroup } from '../model/group.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { textQuantity } from '../units/index.ts';

/** Something that was not the same while two groups were shot. */
export interface ContextDifference {
  readonly key: string;
  readonly sentence: string;
  /** No verdict may rest on these two groups. */
  readonly voids: boolean;
  /** It is part of the equipment, so between two groups of a kind it may be the very thing on trial. */
  readonly equipment: boolean;
  /** False when one side was never noted, so that it may or may not differ. */
  readonly known: boolean;
}

const NOT_ALONE = 'The difference is not the equipment\u2019s alone.';
const NOT_FLETCHING = 'The shift is not the missing fletching\u2019s alone.';

/**
 * What was not the same while two groups were shot.
 *
 * @equation field by field: distance, form, settings, arrows, face, day, weather, light, kit; measured figures differ beyond what can be read again, distances beyond 1 %
 * @param a - the first group; the fletched one when one of them is bare [record]
 * @param b - the second group [record]
 * @param units - the person's choice of units, for the sentences [record]
 * @returns what differs, that which voids a verdict first [list]
 * @validity distance voids every verdict, form and set-up void that of bare against fletched; an answer missing in both groups is no difference
 * @source common practice
 * @example contextDifferences(exampleFletched, { ...exampleBare, context: { ...exampleBare.context, distance: 30 } }, defaultPreferences.units)[0].sentence // "Fletched shot at 18 m, bare at 30 m: one distance was expected."
 */
export function contextDifferences(a: ShotGroup, b: ShotGroup, units: UnitChoice): readonly ContextDifference[] {
  const bareTrial = a.fletching !== b.fletching;
  const [first, second] = bareTrial ? ([a.fletching, b.fletching] as const) : (['the first', 'the second'] as const);
  const pair = (what: string, one: string, other: string) => `${what}: ${one} for ${first}; ${other} for ${second}.`;
  const found: ContextDifference[] = [];
  const tell = (key: string, sentence: string, voids = false, equipment = false, known = true) =>
    found.push({ key, sentence, voids, equipment, known });

  if (!sameDistance(a, b)) {
    const [near, far] = [a, b].map((group) => textQuantity(group.context.distance, 'distance', units));
    tell('distance', `${capital(first)} shot at ${near}, ${second} at ${far}: one distance was expected.`, true);
  }
  if (bareTrial && a.setupId !== b.setupId)
    tell('setup', 'Bare and fletched belong to two set-ups: one archer, one bow and one dozen were expected.', true, true);
  for (const { field, one, other, known } of differing(formFields, a.context.form, b.context.form, units)) {
    const voids = bareTrial && known;
    const ending = !known ? 'Note it for both.' : voids ? 'One form was expected.' : NOT_ALONE;
    tell(`form.${field.key}`, `${pair(field.name, one, other)} ${ending}`, voids, false, known);
  }
  // Between groups of a kind the equipment may be the very thing on trial; bare against fletched nothing but the fletching may differ.
  const ending = bareTrial ? ` ${NOT_FLETCHING}` : '';
  const noCentreShot = a.context.settings.centreShot === null || b.context.settings.centreShot === null;
  // At which draw a bow was weighed, and what a speed was read with, is no setting: a weight or a speed that differs says so itself.
  const settable = settingFields.filter(({ key }) => !['weightDraw', 'speedMass', 'speedBrace'].includes(key));
  for (const { field, one, other, known } of differing(settable, read(a), read(b), units))
    if (field.key === 'centreShotDatum') {
      const where = `Centre shot: read at the ${one} for ${first}, at the ${other} for ${second}.`;
      if (!noCentreShot) tell(`settings.${field.key}`, where + ending, false, true);
    } else if (known) tell(`settings.${field.key}`, pair(field.name, one, other) + ending, false, true);
  if (a.context.arrowSetId !== b.context.arrowSetId) tell('arrowSet', `Two sets of arrows were shot.${ending}`, false, true);
  if (a.context.face !== b.context.face) tell('face', `${pair('Face', faceText(a), faceText(b))} ${NOT_ALONE}`);
  const [dayOne, dayOther] = [dayText(a.context.shotAt), dayText(b.context.shotAt)];
  if (dayOne !== dayOther) tell('day', `Shot on ${dayOne} and on ${dayOther}. ${NOT_ALONE}`);
  for (const key of ['weather', 'light', 'kit'] as const) {
    const [one, other] = [a.context[key].trim(), b.context[key].trim()];
    if (one.toLowerCase() === other.toLowerCase()) continue;
    tell(key, `${pair(capital(key), quoted(one), quoted(other))} ${NOT_ALONE}`);
  }
  return found.sort((x, y) => Number(y.voids) - Number(x.voids));
}

const read = ({ context }: ShotGroup) => ({ ...context.settings, tiller: tillerOf(context.settings) });

/** Its rings in brackets: a comma would run into the sentence. */
const faceText = (group: ShotGroup): string => face(group.context.face).name.replace(/, (\d+ to \d+)$/, ' ($1)');

const quoted = (text: string): string => (text === '' ? 'not noted' : `"${text}"`);

interface Differing {
  readonly field: Field;
  readonly one: string;
  readonly other: string;
  /** False when one side was never noted, so that it may or may not differ. */
  readonly known: boolean;
}

function differing<K extends string>(
  fields: readonly Field<K>[],
  a: Readonly<Record<K, number | string | null>>,
  b: Readonly<Record<K, number | string | null>>,
  units: UnitChoice,
): Differing[] {
  const text = (field: Field, value: number | string | null): string =>
    value === null
      ? 'not noted'
      : typeof value === 'number' && field.use !== null
        ? textQuantity(value, field.use, units)
        : value === 'bare'
          ? 'bare fingers'
          : String(value);
  return fields
    .filter(({ key, resolution }) => {
      const [one, other] = [a[key], b[key]];
      return typeof one === 'number' && typeof other === 'number' ? Math.abs(one - other) > resolution : one !== other;
    })
    .map((field) => {
      const [one, other] = [a[field.key], b[field.key]];
      return { field, one: text(field, one), other: text(field, other), known: one !== null && other !== null };
    });
}
