import type { Finding } from '../../../core/findings/finding.ts';
import type { Problem } from '../../../core/model/problem.ts';

const waits = (id: string, title: string, detail: string, figure: string, word: string): Finding => ({
  id,
  level: 'waiting',
  title,
  detail,
  rule: null,
  short: { figure, word },
  why: null,
  action: null,
});

/** What will stand in the findings before anything is measured, and what each one waits for. */
export const waitingFindings: readonly Finding[] = [
  waits(
    'brace',
    'Brace height',
    'Waits for 1. It is held against the bow maker’s range, or against common practice until you enter that.',
    '1',
    'brace',
  ),
  waits('mass', 'Arrow mass for this weight', 'Waits for 2 and an arrow.', '2', 'gr / lb'),
  waits('ahead', 'Point ahead of the rest', 'Waits for 3 and the draw. A short arrow is a hard stop here.', '3', 'ahead'),
  waits('rest', 'Tiller, nocking point, centre shot', 'When you come to them.', 'later', 'the rest'),
];

/** A record in the notebook that this version cannot read: left as it is, and said. */
export const unreadableFinding = (problem: Problem, index: number): Finding => ({
  id: `unreadable${index}`,
  level: 'caution',
  title: 'A record cannot be read',
  detail: problem.sentence,
  rule: null,
  short: { figure: '1', word: 'unread' },
  why: null,
  action: null,
});
