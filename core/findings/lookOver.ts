import type { Bundle } from '../model/bundle.ts';
import type { Stamp } from '../model/common.ts';
import { together } from '../model/sentence.ts';
import { bowCondition } from '../safety/index.ts';
import { dayText, hoursBetween } from './day.ts';
import type { Finding } from './finding.ts';
import { goTo, whyRule } from './parts.ts';

/** Equipment is looked over before each session: yesterday's look is no longer a look. */
const FRESH_HOURS = 24;

const words = {
  bow: {
    name: 'Bow',
    detail: 'The bench cannot see limbs, tips or string. Look, then note it.',
    text: 'Limbs, tips and bolts; string and serving, any cut strand; both loops home in their grooves. After a dry fire, a crack or a twisted limb: to a technician, not to the line.',
  },
  arrowSet: {
    name: 'Arrows',
    detail: 'Look and feel along every shaft; nocks seated, not cracked, not loose. Then note it.',
    text: 'Each arrow: shaft, nock, point, fletching. Carbon: flex it with eyes covered and bend away, roll, flex again; any click or creak, and it is destroyed. Wood: cracks, run-out, splinters, loose point. Bent aluminium is not shot.',
  },
} as const;

/**
 * Whether bow or arrows have been looked over today, and what was seen of the bow part by part.
 *
 * @equation a flaw in any part of the bow is a stop; else in range within 24 h before now with every part seen; otherwise unknown, and unknown is shown, never assumed sound
 * @param bundle - the set-up with its records [record]
 * @param what - the bow or the arrows [choice]
 * @param now - the present instant [record]
 * @returns the finding [record]
 * @validity a look-over noted for a time to come counts as unknown; a flaw stops however old the look-over is
 * @source common practice
 * @example lookOverFinding({ ...exampleBundle, bow: { ...exampleBundle.bow, lookedOver: null } }, 'bow', exampleNow).title // "Bow: no look-over on record"
 */
export function lookOverFinding(bundle: Bundle, what: 'bow' | 'arrowSet', now: Stamp): Finding {
  const { lookedOver } = bundle[what];
  const { name, detail, text } = words[what];
  const hours = lookedOver === null ? null : hoursBetween(lookedOver, now);
  const fresh = hours !== null && hours >= 0 && hours <= FRESH_HOURS;
  const day = lookedOver === null ? null : dayText(lookedOver);
  const { flaws, unseen } = what === 'bow' ? bowCondition(bundle.bow) : { flaws: [], unseen: [] };
  const by = what === 'bow' ? (bundle.bow.lookOver?.by ?? '') : '';
  const level = flaws.length > 0 ? 'stop' : fresh && unseen.length === 0 ? 'ok' : 'unknown';
  return {
    id: `lookOver.${what}`,
    level,
    title:
      level === 'stop'
        ? `${name}: a flaw in ${together(flaws)}`
        : day === null
          ? `${name}: no look-over on record`
          : level === 'ok'
            ? `${name} looked over ${day}`
            : fresh
              ? `${name}: ${together(unseen)} not looked at`
              : hours !== null && hours < 0
                ? `${name}: look-over noted for ${day}, still to come`
                : `${name} not looked over since ${day}`,
    detail:
      level === 'stop'
        ? `Seen ${day ?? 'once'}${by === '' ? '' : ` by ${by}`}. Shoot nothing from it until a technician has looked and it is mended.`
        : level === 'ok'
          ? `By eye and hand, before the session${by === '' ? '' : `, by ${by}`}.`
          : fresh
            ? `The rest was looked over ${day ?? ''}. A part that nobody looked at is unknown.`
            : detail,
    rule: null,
    short: {
      figure:
        level === 'stop'
          ? 'flaw'
          : level === 'ok'
            ? 'seen'
            : hours === null || hours < 0
              ? '\u2013'
              : `${Math.floor(hours / 24)} d`,
      word: what === 'bow' ? 'limbs' : 'arrows',
    },
    why: whyRule(
      `${name} looked over`,
      `${text} An item with no look-over on record is unknown, and unknown is not assumed sound.`,
      [
        ['', 'last look-over', day ?? 'none on record'],
        ...(flaws.length === 0 ? [] : [['', 'with a flaw', together(flaws)] as const]),
        ...(unseen.length === 0 ? [] : [['', 'not looked at', together(unseen)] as const]),
      ],
      'common practice',
    ),
    action:
      level === 'ok'
        ? null
        : what === 'bow'
          ? goTo('Look over', 'bow', 'bow.lookOver')
          : { kind: 'look over', label: 'Looked over now', what },
  };
}
