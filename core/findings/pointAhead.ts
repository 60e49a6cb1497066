import { AMO_ADDS } from '../bow/index.ts';
import type { Archer } from '../model/archer.ts';
import type { Bundle } from '../model/bundle.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { judgedAsLearner, pointAheadCheck, pointAheadLimits, type PointAheadCheck } from '../safety/index.ts';
import { textQuantity } from '../units/index.ts';
import { fieldOf } from './fieldOf.ts';
import type { Finding } from './finding.ts';
import { capital, goTo, ruleOf, whyRule } from './parts.ts';
import { waitingFor } from './waiting.ts';

const STOPPED = 'Do not shoot these arrows at this draw: one can slip behind the rest and break into the hand.';
/** The point may stand well ahead of the rest today: what the margin is for has to be said. */
const marginFor = (archer: Archer, margin: string): string =>
  `${STOPPED} ${judgedAsLearner(archer) ? grows(archer) : 'Without a clicker a draw deepens now and then'}: ${margin} beyond the draw is the margin for that.`;

const grows = ({ experience }: Archer): string =>
  experience === null ? 'Experience is not noted, and a learner\u2019s draw still grows' : 'A learner\u2019s draw still grows';

/**
 * Whether the arrow is long enough for this archer, as one line in the column of checks.
 *
 * @equation as pointAheadCheck of the safety room
 * @param bundle - the set-up with its records [record]
 * @param units - the person's choice of units [record]
 * @returns the finding [record]
 * @validity as pointAheadCheck
 * @source common practice
 * @example pointAheadFinding(exampleBundle, defaultPreferences.units).title // "Point 2 in ahead of the rest"
 */
export function pointAheadFinding(bundle: Bundle, units: UnitChoice): Finding {
  const { archer, arrowSet, setup } = bundle;
  const reach = {
    arrowLength: arrowSet.length,
    drawLength: archer.drawLength,
    measured: setup.settings.pointAhead,
  };
  const check = pointAheadCheck(archer, reach);
  if (check.ahead === null || check.level === 'unknown')
    return waitingFor(
      'pointAhead',
      check.ahead === null ? 'Point ahead of the rest: not known' : 'Arrow against the draw: not known',
      capital(check.why ?? 'The arrow\u2019s length and the draw are needed.'),
      'point',
      ...fieldOf(arrowSet.length === null ? 'arrowLength' : 'drawLength', ['arrow', 'arrowSet.length']),
    );
  const text = (si: number) => textQuantity(Math.abs(si), 'length', units);
  const byDraw = check.limit?.of === 'beyond the draw' && check.beyondDraw !== null;
  const value = byDraw ? (check.beyondDraw ?? 0) : check.ahead.value;
  return {
    id: 'pointAhead',
    level: check.level === 'in range' ? 'ok' : check.level,
    title: titleOf(check, text),
    detail: detailOf(check, text, archer),
    rule: ruleOf(value, check.limit?.value ?? pointAheadLimits.aheadOfRest, null, 'length', units, false),
    short: { figure: textQuantity(value, 'length', units), word: 'point' },
    why: whyRule(
      'Is the arrow long enough?',
      'An arrow drawn off its rest can lodge behind it and break into the hand. Every archer: the end of the shaft at least 5 mm ahead of the rest at the deepest draw. Learners, and anyone without a clicker: the shaft at least 1 in longer than the AMO draw, 2 in for a learner and while experience is not noted, however far ahead the point stands today: a learner\u2019s draw grows, and without a clicker a draw deepens now and then. At full draw the nock stands 1 3/4 in nearer to the rest than the AMO draw says.',
      [
        ['L', 'arrow, nock throat to end of shaft', arrowSet.length === null ? 'not on record' : text(arrowSet.length)],
        ['D', 'AMO draw length', archer.drawLength === null ? 'not on record' : text(archer.drawLength)],
        ['a', `end of shaft ahead of the rest, ${check.ahead.from}`, textQuantity(check.ahead.value, 'length', units)],
      ],
      'common practice',
    ),
    action:
      check.level === 'in range'
        ? null
        : check.rule === 'short for a learner' && archer.experience === null
          ? goTo('Note', 'bow', 'archer.experience')
          : goTo('Arrow', 'arrow', 'arrowSet.length'),
  };
}

function detailOf({ level, rule, ahead, limit }: PointAheadCheck, text: (si: number) => string, archer: Archer): string {
  if (rule === 'too short for the draw') return marginFor(archer, text(limit?.value ?? 0));
  if (level === 'stop') return STOPPED;
  if (rule === 'measured against reckoned')
    return 'Ahead of the rest or behind it: have a helper measure it again, at the deepest draw and with these arrows.';
  if (rule === 'short for a learner')
    return `${grows(archer)}: ${text(limit?.value ?? 0)} longer than the draw is the least here.`;
  const least = limit === null ? '' : ` ${text(limit.value)} is the least for a learner or without a clicker.`;
  return ahead?.from === 'measured'
    ? `Measured at the deepest draw.${least}`
    : 'Reckoned from arrow and draw: have a helper measure it at the deepest draw.';
}

function titleOf(check: PointAheadCheck, text: (si: number) => string): string {
  const ahead = check.ahead?.value ?? 0;
  const level = !/[1-9]/.test(text(ahead));
  const beyond = check.beyondDraw ?? 0;
  const equal = !/[1-9]/.test(text(beyond));
  const length = equal ? 'no longer than the draw' : `${text(beyond)} ${beyond < 0 ? 'shorter' : 'longer'} than the draw`;
  const reckoned = beyond + AMO_ADDS;
  switch (check.rule) {
    case 'behind the rest':
    case 'barely ahead of the rest':
      return `Arrow too short: its end is ${level ? 'level with' : `${text(ahead)} ${ahead < 0 ? 'behind' : 'ahead of'}`} the rest`;
    case 'too short for the draw':
      return `Arrow too short: ${equal || beyond < 0 ? '' : 'only '}${length}`;
    case 'measured against reckoned':
      return `Point measured ${text(ahead)} ahead, reckoned ${text(reckoned)} ${reckoned > 0 ? 'ahead' : 'behind'}`;
    case 'little ahead at the deepest draw':
      return `Point ${text(ahead)} ahead of the rest: little`;
    case 'short for a learner':
      return `Arrow ${length}: short for a learner`;
    case null:
      return `Point ${text(ahead)} ahead of the rest`;
  }
}
