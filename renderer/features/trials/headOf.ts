import type { Trial } from '../../../core/model/trial.ts';
import { shotText } from './derive.ts';
import type { TrialBrief, TrialReading, TrialSheet } from '../../../core/trials/index.ts';

/** The one headline: what was found; until there is a finding, what is to be shot next; before that, what is planned. */
export function headOf(
  trial: Trial,
  told: TrialBrief,
  { rows, next }: TrialSheet,
  reading: TrialReading,
): { readonly headline: string; readonly subline: string } {
  if (reading.verdict === 'stopped') return { headline: reading.headline, subline: told.purpose };
  if (trial.cautionsRead === null) return { headline: `${told.title}: ${told.arrows} arrows planned`, subline: told.purpose };
  const row = rows.find(({ key }) => key === next);
  if (reading.verdict === 'too few' && row !== undefined)
    return {
      headline: `Next: ${inOneLine(row.text)}`,
      subline: `${told.title}, ${shotText({ rows, next })}.${trial.between === '' ? '' : ` ${sentence(trial.between)}`}`,
    };
  return { headline: reading.headline, subline: reading.subline };
}

/** What is on trial, as people typed it. */
const sentence = (text: string): string => (/[.!?]$/.test(text) ? text : `${text}.`);

/** "10 m, end 1 of 4: 3 fletched" behind a colon of its own. */
const inOneLine = (text: string): string => `${text.charAt(0).toLowerCase()}${text.slice(1).replace(': ', ', ')}`;
