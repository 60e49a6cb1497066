import { describe, expect, it } from 'vitest';
import { exampleBare, exampleFletched } from '../../core/model/example.ts';
import { defaultPreferences } from '../../core/model/preferences.ts';
import type { TrialKind } from '../../core/model/trial.ts';
import { brief, exampleTrial, exampleTrialInput, readTrial, sheet, type TrialInput } from '../../core/trials/index.ts';
import { actNow, onlyChecked } from '../../renderer/features/trials/actNow.ts';
import { besideRow, countOf, rowAfter, rowInHand, shotText, stateText } from '../../renderer/features/trials/derive.ts';
import { listText, readList } from '../../renderer/features/trials/figureList.ts';
import { headOf } from '../../renderer/features/trials/headOf.ts';
import { kindsInOrder } from '../../renderer/features/trials/kinds.ts';
import { planText } from '../../renderer/features/trials/planText.ts';
import { linesOf } from '../../renderer/features/trials/sheetLines.ts';
import { drawsNothing } from '../../renderer/features/trials/pictureWords.ts';
import { tearText, withUnit } from '../../renderer/features/trials/words.ts';

const { units } = defaultPreferences;

describe('several figures in one field', () => {
  it('are read lowest first and each once, the unit behind the last holding for all', () => {
    const read = readList('18, 10 and 18 m', 'shootingDistance', units, 12);
    expect(read.ok && read.value).toEqual([10, 18]);
  });

  it('may each have a unit of their own', () => {
    const read = readList('8 1/2 in, 220 mm', 'braceHeight', units, 20);
    expect(read.ok && read.value.map((value) => Math.round(value * 1e4))).toEqual([2159, 2200]);
  });

  it('read a decimal comma inside a figure where a blank parts them', () => {
    const read = readList('4,5; 6 mm', 'nockingPoint', units, 20);
    expect(read.ok && read.value).toEqual([0.0045, 0.006]);
  });

  it('are refused with a sentence when there are none, or one that cannot be', () => {
    expect(readList('', 'shootingDistance', units, 12).ok).toBe(false);
    const far = readList('10, 400 m', 'shootingDistance', units, 12);
    expect(far.ok ? '' : far.problem.sentence).toMatch(/between 1 and 120 m/);
  });

  it('are written with the unit once', () => {
    expect(listText([10, 18], 'shootingDistance', units)).toBe('10, 18 m');
  });
});

const inputOf = (kind: TrialKind): TrialInput => exampleTrial(kind);

describe('the sheet of a trial', () => {
  it('has every row of every kind once, in its line and under its head', () => {
    expect(kindsInOrder).toHaveLength(7);
    for (const kind of kindsInOrder) {
      const rows = sheet(inputOf(kind));
      const { heads, lines } = linesOf(rows, kind, units);
      const boxes = lines.flatMap((line) => line.boxes).filter((row) => row !== null);
      expect(boxes.map(({ key }) => key).sort(), kind).toEqual(rows.rows.map(({ key }) => key).sort());
      for (const line of lines) expect(line.boxes, kind).toHaveLength(heads.length);
    }
  });

  it('puts the fletched line above the bare one, nearest first', () => {
    const { lines } = linesOf(sheet(inputOf('bare shaft')), 'bare shaft', units);
    expect(lines.map(({ name }) => name)).toEqual(['10 m fletched', '10 m bare', '18 m fletched', '18 m bare']);
  });

  it('goes on to the next row that is wanted, round to one that was passed over', () => {
    const rows = sheet(exampleTrialInput);
    const [first, second] = rows.rows;
    expect(rowInHand(rows, null)?.key).toBe(rows.next ?? rows.rows.at(-1)?.key);
    const open = { ...rows, rows: rows.rows.map((row, i) => ({ ...row, done: i !== 0 })) };
    expect(rowAfter(open, second?.key ?? '')?.key).toBe(first?.key);
    expect(rowAfter({ ...rows, rows: rows.rows.map((row) => ({ ...row, done: true })) }, first?.key ?? '')).toBeNull();
  });

  it('offers the speeds beside the first end of a height, goes to them by itself once some are noted, and back to an end that was passed over', () => {
    const empty = sheet(inputOf('brace height'));
    const [end, speeds, next] = empty.rows;
    expect([end?.which, speeds?.which, next?.which]).toEqual(['first', 'speeds', 'first']);
    const key = end?.key ?? '';
    expect(besideRow(empty, key)?.key).toBe(speeds?.key);
    expect(rowAfter(empty, key)?.key).toBe(next?.key);
    expect(rowAfter(empty, speeds?.key ?? '')?.key).toBe(key);
    const timed = { ...empty, rows: empty.rows.map((row, i) => ({ ...row, done: i < 2 })) };
    expect(rowAfter(timed, next?.key ?? '')?.which).toBe('speeds');
    expect(besideRow(timed, key)).toBeNull();
    expect(rowAfter(timed, speeds?.key ?? '')?.key).toBe(next?.key);
  });

  it('counts the shots of a row’s own end, and of a group without ends what is left for it', () => {
    const [row] = sheet(exampleTrialInput).rows;
    if (row === undefined) throw new Error('no row');
    const ends = exampleFletched.shots.map((shot, i) => ({ ...shot, end: i < 2 ? 1 : 2 }));
    const groups = new Map([
      [exampleFletched.id, { ...exampleFletched, shots: ends }],
      [exampleBare.id, exampleBare],
    ]);
    expect(countOf(row, { ...exampleTrialInput, groups })).toBe(2);
    expect(countOf(row, exampleTrialInput)).toBe(3);
  });
});

describe('what is said of a trial', () => {
  it('goes from planned by way of what is next to what was found', () => {
    const input = inputOf('bare shaft');
    const said = (trial: TrialInput['trial']) => {
      const given = { ...input, trial };
      return headOf(trial, brief(given), sheet(given), readTrial(given)).headline;
    };
    expect(said({ ...input.trial, cautionsRead: null })).toBe('Bare shaft: 40 arrows planned');
    expect(said(input.trial)).toBe('Next: 10 m, end 1 of 4, 3 fletched');
    const read = readTrial(exampleTrialInput);
    const shot = headOf(exampleTrialInput.trial, brief(exampleTrialInput), sheet(exampleTrialInput), read);
    expect(shot.headline).toBe(read.headline);
  });

  it('is one word or two on the shelf', () => {
    const rows = sheet(inputOf('clearance'));
    const { trial } = inputOf('clearance');
    expect(shotText(rows)).toBe('not begun');
    expect(stateText({ ...trial, cautionsRead: null }, rows)).toBe('planned');
    expect(stateText({ ...trial, ended: trial.born }, rows)).toBe('ended');
  });

  it('says of ends and of single shots how many there are', () => {
    const shotOf = (kind: TrialKind, count: number) => {
      const { rows, next } = sheet(inputOf(kind));
      return shotText({ next, rows: rows.map((row, i) => ({ ...row, done: i < count })) });
    };
    expect(shotOf('bare shaft', 3)).toBe('3 of 16 ends shot');
    expect(shotOf('clearance', 1)).toBe('1 of 3 shot');
    expect(shotOf('clearance', 3)).toBe('all shot');
  });

  it('has nothing to draw before the first arrow, in any trial', () => {
    const plots = kindsInOrder.flatMap((kind) => readTrial(inputOf(kind)).plot ?? []);
    expect(plots.length).toBeGreaterThan(4);
    expect(plots.filter((plot) => !drawsNothing(plot))).toEqual([]);
    const { plot } = readTrial(exampleTrialInput);
    expect(plot !== null && drawsNothing(plot)).toBe(false);
  });

  it('keeps a figure with its unit on one line, and nothing else', () => {
    expect(withUnit('At 18 m, 12 fletched show 31 mm, 4 ends')).toBe('At 18\u00a0m, 12 fletched show 31\u00a0mm, 4 ends');
  });

  it('has the plan in a line and a tear in words', () => {
    expect(planText(inputOf('bare shaft').trial, units)).toBe('10 and 18 m, 4 ends of 3 and 2');
    expect(planText(inputOf('walk-back').trial, units)).toBe('5, 10, 15, 20, 25 and 30 m, 3 at each');
    expect(tearText({ across: 0.012, up: -0.008 }, units)).toBe('12 mm right, 8 mm down');
    expect(tearText({ across: 0, up: 0 }, units)).toBe('no tear, a clean hole');
  });
});

describe('what is done now', () => {
  const read = readTrial(exampleTrialInput);
  const rows = sheet(exampleTrialInput);
  const { trial } = exampleTrialInput;
  const step = (kind: typeof read.next.kind, title = 'Check the sight') => ({ ...read.next, kind, title });
  const noted = { ...trial, changes: [{ at: trial.born, title: 'Check the sight', patch: null }] };
  const none = { ...rows, next: null };

  it('is to note a change or a check, to end what is left, and nothing where a stop stands', () => {
    const of = (kind: typeof read.next.kind) => actNow(trial, { next: step(kind), others: [] }, none);
    expect(['change', 'measure', 'leave', 'stop', 'shoot', 'again'].map((kind) => of(kind as typeof read.next.kind))).toEqual([
      'note',
      'note',
      'end',
      null,
      'plan',
      'again',
    ]);
    expect(actNow(trial, { next: step('shoot'), others: [] }, { ...rows, next: 'any' })).toBe('shoot');
  });

  it('is to shoot again after a change, but not after a check that turned nothing', () => {
    const change = { next: step('change', 'Soften the button'), others: [] };
    expect(actNow(noted, change, none)).toBe('again');
    const checked = { ...change, others: [step('measure')] };
    expect(onlyChecked(noted, checked)).toBe(true);
    expect(actNow(noted, checked, none)).toBe('note');
    expect(actNow({ ...noted, ended: trial.born }, checked, none)).toBeNull();
  });
});
