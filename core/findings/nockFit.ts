import type { Bundle } from '../model/bundle.ts';
import type { Finding } from './finding.ts';
import { goTo, whyRule } from './parts.ts';
import { waitingFor } from './waiting.ts';

/**
 * How the nock sits on the string.
 *
 * @equation a light tap frees it: in range; tight or loose: caution
 * @param bundle - the set-up with its records [record]
 * @returns the finding; null for a compound [record]
 * @validity finger release
 * @source common practice
 * @example nockFitFinding(exampleBundle).title // "Nock fit not tried"
 */
export function nockFitFinding({ bow, setup }: Bundle): Finding | null {
  if (bow.bowKind === 'compound') return null;
  const { nockFit } = setup.settings;
  if (nockFit === null)
    return waitingFor(
      'nockFit',
      'Nock fit not tried',
      'Hang an arrow on the string: a light tap on the string frees it.',
      'fit',
      'bow',
      'settings.nockFit',
    );
  const right = nockFit === 'a light tap frees it';
  const loose = nockFit === 'loose';
  return {
    id: 'nockFit',
    level: right ? 'ok' : 'caution',
    title: right ? 'Nock fit: a light tap frees it' : `Nock fit: ${nockFit}`,
    detail: right
      ? 'The arrow hangs on the string and comes off with one light tap.'
      : loose
        ? 'An arrow that falls off the string is loosed at nothing, like a dry fire: a thicker serving or other nocks.'
        : 'Too tight a nock makes a shaft read stiffer and disturbs the loose: a thinner serving or other nocks.',
    rule: null,
    short: { figure: right ? 'tap' : nockFit, word: 'fit' },
    why: whyRule(
      'Nock fit',
      'The nock holds the arrow\u2019s weight on the string and lets go at a light tap. It is tried before the nocking point is moved, since a tight nock reads stiffer on bare shafts.',
      [['', 'as tried', nockFit]],
      'common practice',
    ),
    action: right ? null : goTo('Fix', 'bow', 'settings.nockFit'),
  };
}
