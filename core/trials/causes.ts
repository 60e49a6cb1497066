import { centreShotPractice } from '../findings/centreShot.ts';
import { nockingPractice } from '../findings/nockingPoint.ts';
import { HAIR, rangeText, standing } from '../findings/parts.ts';
import type { Bundle } from '../model/bundle.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { suitability } from '../suitability/index.ts';
import { textQuantity } from '../units/index.ts';
import type { Cause, Reading } from './reading.ts';

/**
 * What may lie behind a reading, each with what speaks for and against it on record.
 *
 * @equation height: nocking point, then rest or nock; side: shaft, button, centre shot, nock fit, form; erratic: clearance, release
 * @param bundle - the set-up with its records [record]
 * @param reading - lateral, vertical and erratic [record]
 * @param units - the person's choice of units [record]
 * @returns the causes in the order in which the trade looks at them [list]
 * @validity a cause without evidence either way is listed with none
 * @source common practice
 * @example causesOf(exampleBundle, { lateral: 'weak', vertical: null, erratic: false }, defaultPreferences.units)[0].cause // "The shaft is too weak for this draw"
 */
export function causesOf(
  bundle: Bundle,
  reading: Pick<Reading, 'lateral' | 'vertical' | 'erratic'>,
  units: UnitChoice,
): readonly Cause[] {
  const { lateral, vertical, erratic } = reading;
  if (erratic)
    return [
      cause('Fletching or shaft touches the bow', [], []),
      cause('The release or the bow arm varies from shot to shot', [], []),
    ];
  const height = vertical === null ? [] : heightCauses(bundle, vertical, units);
  const side = lateral === null ? [] : sideCauses(bundle, lateral, units);
  const told = new Set(height.map((found) => found.cause));
  // One and the same cause of either reading is listed once.
  return [...height, ...side.filter((found) => !told.has(found.cause))];
}

const cause = (text: string, evidenceFor: readonly string[], evidenceAgainst: readonly string[]): Cause => ({
  cause: text,
  evidenceFor,
  evidenceAgainst,
});

function tightNock({ setup }: Bundle): Cause {
  const fit = setup.settings.nockFit;
  const words = fit === null ? [] : [`The nock fit is on record as ${fit}.`];
  return cause('The nock is too tight on the string', fit === 'tight' ? words : [], fit === 'tight' ? [] : words);
}

function heightCauses(bundle: Bundle, vertical: NonNullable<Reading['vertical']>, units: UnitChoice): Cause[] {
  const high = vertical === 'nocking point high';
  const practice = nockingPractice(bundle);
  const place = bundle.setup.settings.nockingPoint;
  const stands = practice === null || place === null ? null : standing(place, practice.low, practice.high, HAIR);
  const words =
    place === null || practice === null
      ? ''
      : `It stands at ${textQuantity(place, 'setting', units)}; common practice starts at ${practice.high === null ? `${textQuantity(practice.low, 'setting', units)} or more` : rangeText(practice.low, practice.high, 'setting', units, false)}.`;
  const first = cause(
    `The nocking point is ${high ? 'high' : 'low'}`,
    stands === (high ? 'high' : 'low') ? [words] : [],
    stands !== null && stands === (high ? 'low' : 'high') ? [words] : [],
  );
  return high ? [first, tightNock(bundle)] : [first, cause('The shaft bounces off the rest', [], [])];
}

function sideCauses(bundle: Bundle, lateral: 'stiff' | 'weak', units: UnitChoice): Cause[] {
  const stiff = lateral === 'stiff';
  const { settings } = bundle.setup;
  const button = bundle.bow.arrowPass === 'rest and button';
  return [
    shaftCause(bundle, lateral, units),
    button ? cause(`The button is too ${stiff ? 'firm' : 'soft'}`, [], []) : null,
    button && settings.centreShot !== null ? centreShotCause(bundle, stiff, units) : null,
    stiff ? tightNock(bundle) : null,
    cause(
      stiff ? 'The draw is shorter or lighter than on record' : 'The draw is longer or heavier than on record',
      settings.weightOnFingers === null ? ['The weight on the fingers was not measured.'] : [],
      settings.weightOnFingers === null
        ? []
        : [`${textQuantity(settings.weightOnFingers, 'weight', units)} was read on a scale.`],
    ),
  ].filter((found) => found !== null);
}

function shaftCause(bundle: Bundle, lateral: 'stiff' | 'weak', units: UnitChoice): Cause {
  const text = `The shaft is too ${lateral} for this draw`;
  const { archer, bow, arrowSet, setup } = bundle;
  const answer = suitability({ archer, bow, arrowSet, settings: setup.settings });
  if (!answer.ok || answer.value.verdict === 'cannot tell') return cause(text, [], []);
  const { margin, verdict } = answer.value;
  const needed = rangeText(margin.needed.low, margin.needed.high, 'deflection', units, false);
  const words = `The load on the shaft reads ${verdict}: ${textQuantity(margin.measured, 'deflection', units)} against ${needed} (not checked against a source).`;
  return verdict === lateral ? cause(text, [words], []) : cause(text, [], [words]);
}

function centreShotCause(bundle: Bundle, stiff: boolean, units: UnitChoice): Cause {
  const { centreShot, centreShotDatum } = bundle.setup.settings;
  const { low, high } = centreShotPractice[centreShotDatum];
  const stands = standing(centreShot ?? low, low, high, HAIR);
  const words = `It is ${textQuantity(centreShot ?? low, 'setting', units)} at the ${centreShotDatum}; common practice is ${rangeText(low, high, 'setting', units, false)}.`;
  const text = `The centre shot is too far ${stiff ? 'out' : 'in'}`;
  return stands === (stiff ? 'high' : 'low') ? cause(text, [words], []) : cause(text, [], [words]);
}
