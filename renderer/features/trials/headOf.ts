import type { Trial } from '../../../core/model/trial.ts';
import type { TrialBrief, TrialReading, TrialRow, TrialSheet } from '../../../core/trials/index.ts';
import { wasChanged } from './changed.ts';
import { shotText } from './derive.ts';
import { arrowsLeft, soFar, standsEarly } from './standing.ts';

/** The one headline: what was found; until there is a finding, what is to be shot next; before that, what is planned. */
export function headOf(
  trial: Trial,
  told: TrialBrief,
  { rows, next }: TrialSheet,
  reading: TrialReading,
): { readonly headline: string; readonly subline: string } {
  if (reading.verdict === 'stopped') return { headline: reading.headline, subline: reading.subline };
  if (trial.cautionsRead === null) return { headline: `${told.title}: ${told.arrows} arrows planned`, subline: told.purpose };
  const sheet = { rows, next };
  const change = wasChanged(trial, reading) ? trial.changes.at(-1) : undefined;
  if (change !== undefined && trial.ended === null)
    return {
      headline: reading.verdict === 'too few' ? `Noted: ${change.title}` : reading.headline,
      subline: `${reading.verdict === 'too few' ? '' : `${reading.subline} Noted: ${change.title}. `}Shooting it again, as a trial of its own, tells what that did.`,
    };
  const row = rows.find(({ key }) => key === next);
  if (row !== undefined && (reading.verdict === 'too few' || soFar(trial, sheet, reading)))
    return {
      headline: `Next: ${inOneLine(row)}`,
      subline: `${told.title}, ${shotText(sheet)}.${trial.between === '' ? '' : ` ${sentence(trial.between)}`}`,
    };
  if (standsEarly(trial, sheet, reading))
    return {
      headline: reading.headline,
      subline: `${reading.subline} It stands already: the ${arrowsLeft(sheet)} arrows left of the plan need not be shot.`,
    };
  return { headline: reading.headline, subline: reading.subline };
}

/** What is on trial, as people typed it. */
const sentence = (text: string): string => (/[.!?]$/.test(text) ? text : `${text}.`);

/** "10 m, end 1 of 4: 3 fletched" behind a colon of its own; of an end that was broken off, what is left of it. */
function inOneLine({ text, arrows, shot }: TrialRow): string {
  const line = `${text.charAt(0).toLowerCase()}${text.slice(1)}`;
  if (shot === 0 || shot >= arrows) return line.replace(': ', ', ');
  const [where = line, what = ''] = line.split(': ');
  const kind = what.replace(/^\d+ /, '');
  const left = arrows - shot;
  return `${where}, ${left} ${kind === 'arrows' && left === 1 ? 'arrow' : kind} left`;
}
