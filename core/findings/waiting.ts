import type { Finding, Screen } from './finding.ts';
import { goTo } from './parts.ts';

/**
 * A check whose figure is not there yet.
 *
 * @equation level `waiting`; the detail says what it waits for and how to get it
 * @param id - the finding's id [text]
 * @param title - what is not known [text]
 * @param detail - what it waits for [text]
 * @param word - one word for the narrow strip [text]
 * @param screen - where the missing field stands [choice]
 * @param field - the missing field as record.field [text]
 * @returns the finding [record]
 * @validity any texts
 * @source own derivation
 * @example waitingFor('tiller', 'Tiller not measured', 'Waits for the tiller.', 'tiller', 'bow', 'settings.tiller').level // "waiting"
 */
export function waitingFor(id: string, title: string, detail: string, word: string, screen: Screen, field: string): Finding {
  return {
    id,
    level: 'waiting',
    title,
    detail,
    rule: null,
    short: { figure: '\u2013', word },
    why: null,
    action: goTo('Enter', screen, field),
  };
}
