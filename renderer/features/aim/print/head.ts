import type { Bundle } from '../../../../core/model/bundle.ts';
import { wallTime, type Stamp } from '../../../../core/model/common.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { textQuantity, unitOf } from '../../../../core/units/index.ts';
import type { PaperHead, StripPaper } from '../../../print/index.ts';

const day = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' });

/** What a name says already is not said again. */
const listed = (...parts: readonly (string | null)[]): string =>
  parts.reduce<string>((said, part) => {
    if (part === null || part === '' || ` ${said}`.includes(` ${part}`)) return said;
    return said === '' ? part : `${said}, ${part}`;
  }, '');

/** "metres; scale of 1 mm, growing downwards". */
export const scaleText = ({ unit, grows }: Pick<StripPaper, 'unit' | 'grows'>, units: UnitChoice): string =>
  `${distancesIn(units)}; scale of ${textQuantity(unit, 'setting', units)}, growing ${grows}wards`;

export const distancesIn = (units: UnitChoice): string => (units.distance === 'm' ? 'metres' : 'yards');

/** Who, with what and how: all that the figures of a paper hold for. */
export function paperHead(bundle: Bundle, units: UnitChoice, today: Stamp, unitsText: string): PaperHead {
  const { archer, bow, arrowSet, setup } = bundle;
  const { form, settings } = setup;
  const text = (si: number | null, use: Parameters<typeof textQuantity>[1], after = '') =>
    si === null ? null : `${textQuantity(si, use, units)}${after}`;
  return {
    archer: `${archer.name}, ${archer.hand} hand`,
    bow: listed(bow.name, text(settings.weightOnFingers, 'weight', ' on the fingers')),
    arrows: listed(arrowSet.name, text(arrowSet.length, 'length'), text(arrowSet.pointMass, 'mass', ' point')),
    form: listed(
      form.anchor === null ? 'anchor not noted' : form.anchor,
      form.hook,
      text(form.eyeHeight, 'setting', ' from arrow to eye'),
    ),
    date: day.format(new Date(wallTime(today))),
    units: unitsText,
  };
}

/** "holds in cm". */
export const holdsIn = (units: UnitChoice): string => `${distancesIn(units)}; holds in ${unitOf('drop', units)}`;
