import { describe, expect, it } from 'vitest';
import { exampleBare, exampleFletched } from '../../core/model/example.ts';
import type { ShotGroup } from '../../core/model/group.ts';
import { unmeasured } from '../../core/model/unmeasured.ts';
import { defaultPreferences } from '../../core/model/preferences.ts';
import type { TrialKind } from '../../core/model/trial.ts';
import { brief, exampleTrial, exampleTrialInput, readTrial, sheet, type TrialInput } from '../../core/trials/index.ts';
import { actNow } from '../../renderer/features/trials/actNow.ts';
import { againOf } from '../../renderer/features/trials/again.ts';
import { onlyChecked, wasChanged } from '../../renderer/features/trials/changed.ts';
import { besideRow, rowAfter, rowInHand, shotText, stateText } from '../../renderer/features/trials/derive.ts';
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
    const ends = exampleFletched.shots.map((shot, i) => ({ ...shot, end: i < 2 ? 1 : 2 }));
    const groups = new Map([
      [exampleFletched.id, { ...exampleFletched, shots: ends }],
      [exampleBare.id, exampleBare],
    ]);
    expect(sheet({ ...exampleTrialInput, groups }).rows[0]?.shot).toBe(2);
    expect(sheet(exampleTrialInput).rows[0]?.shot).toBe(3);
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
    expect(shotText(rows)).toBe('nothing shot yet');
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
    const of = (kind: typeof read.next.kind) => actNow(trial, { next: step(kind), others: [], verdict: 'read' }, none);
    expect(['change', 'measure', 'leave', 'stop', 'shoot', 'again'].map((kind) => of(kind as typeof read.next.kind))).toEqual([
      'note',
      'note',
      'end',
      null,
      'plan',
      'again',
    ]);
    expect(actNow(trial, { next: step('shoot'), others: [], verdict: 'read' }, { ...rows, next: 'any' })).toBe('shoot');
  });

  it('is to shoot again after a change, but not after a check that turned nothing', () => {
    const change = { next: step('change', 'Soften the button'), others: [], verdict: 'read' as const };
    const turned = { ...trial, changes: [{ at: trial.born, title: 'Soften the button', patch: null }] };
    expect(actNow(turned, change, none)).toBe('again');
    const checked = { ...change, others: [step('measure')] };
    expect(onlyChecked(noted, checked)).toBe(true);
    expect(actNow(noted, checked, none)).toBe('note');
    expect(actNow({ ...noted, ended: trial.born }, checked, none)).toBeNull();
  });
});

/** A brace-height sweep of which so many arrows of each row, in order, were shot. */
function sweep(counts: readonly number[], changes: TrialInput['trial']['changes'] = []): TrialInput {
  const input = inputOf('brace height');
  const rows = sheet(input).rows.filter(({ which }) => which === 'first');
  const groups = new Map<string, ShotGroup>();
  const places = input.trial.plan.steps.map((step, i) => ({
    distance: 18,
    step,
    first: `60000000-0000-4000-8000-00000000000${i}`,
    second: null,
    speeds: [],
  }));
  for (const { step, first } of places) {
    const shots = rows.flatMap((row, k) =>
      row.place?.step === step
        ? Array.from({ length: counts[k] ?? 0 }, (_, i) => ({
            ...unmeasured.shot,
            id: 10 * k + i + 1,
            x: 0.01 * Math.cos(i + k),
            y: 0.01 * Math.sin(2 * i + k),
            end: row.end,
          }))
        : [],
    );
    if (shots.length > 0) groups.set(first, { ...exampleFletched, id: first, shots });
  }
  return { ...input, groups, trial: { ...input.trial, groups: places, changes } };
}
const headOfInput = (input: TrialInput) => headOf(input.trial, brief(input), sheet(input), readTrial(input));

describe('a trial that was left half shot', () => {
  it('stands at the end that was broken off, and says how many arrows of it are left', () => {
    const input = sweep([6, 2]);
    const rows = sheet(input);
    const row = rows.rows.find(({ key }) => key === rows.next);
    expect([row?.shot, row?.arrows, row?.end]).toEqual([2, 6, 1]);
    expect(headOfInput(input).headline).toBe('Next: brace height 8 3/8 in, end 1 of 2, 4 arrows left');
    expect(shotText(rows)).toBe('1 of 10 ends shot');
  });

  it('goes on to the next row once the broken one was passed over', () => {
    const rows = sheet(sweep([6, 2, 1]));
    expect(rows.rows.find(({ key }) => key === rows.next)?.place?.step).toBeCloseTo(0.2159, 6);
  });

  it('gives no verdict of a sweep in its headline while heights are unshot, and asks for the arrows instead', () => {
    const input = sweep([6, 6, 6]);
    const reading = readTrial(input);
    expect(['read', 'nothing shown']).toContain(reading.verdict);
    expect(headOfInput(input).headline).toBe('Next: brace height 8 5/8 in, end 1 of 2, 6 arrows');
    expect(actNow(input.trial, reading, sheet(input))).toBe('shoot');
    const whole = sweep(Array.from({ length: 10 }, () => 6));
    expect(headOfInput(whole).headline).toBe(readTrial(whole).headline);
  });
});

describe('a trial on which a change was noted', () => {
  const changes = [{ at: exampleTrialInput.now, title: 'Firm the button half a turn', patch: { buttonTurns: 3.5 } }];

  it('asks to be shot again, whatever of its plan is left', () => {
    const input = sweep([6, 6, 6], changes);
    const reading = readTrial(input);
    expect(wasChanged(input.trial, reading)).toBe(true);
    expect(actNow(input.trial, reading, sheet(input))).toBe('again');
    expect(headOfInput(input).headline).not.toMatch(/^Next/);
    expect(headOfInput(input).subline).toContain('Noted: Firm the button half a turn.');
  });

  it('is none of those on which something was only measured', () => {
    const measured = [{ at: exampleTrialInput.now, title: 'Measure the brace height first', patch: null }];
    expect(wasChanged({ ...exampleTrialInput.trial, changes: measured }, { others: [] })).toBe(false);
  });
});

describe('bare shafts whose verdict stands before all ends are shot', () => {
  const trial = { ...exampleTrialInput.trial, plan: { ...exampleTrialInput.trial.plan, distances: [18, 30] } };
  const input = { ...exampleTrialInput, trial };
  const rows = sheet(input);

  it('are read, and need no more arrows', () => {
    expect(rows.next).not.toBeNull();
    const head = headOfInput(input);
    expect(head.headline).toBe(readTrial(exampleTrialInput).headline);
    expect(head.subline).toContain('the 10 arrows left of the plan need not be shot');
  });

  it('are no verdict yet with fewer than six and four at a distance (common practice)', () => {
    const few = new Map(
      [exampleFletched, exampleBare].map((group) => [
        group.id,
        {
          ...group,
          shots: group.shots.slice(0, 3).map((shot) => ({ ...shot, x: shot.x + (group.fletching === 'bare' ? 0.3 : 0), end: 1 })),
        },
      ]),
    );
    const part = { ...input, groups: few };
    expect(readTrial(part).verdict).toBe('read');
    expect(headOfInput(part).headline).toMatch(/^Next: 18 m, end 2 of 2/);
  });

  it('are shot again where they were shot and as many, as the advice says', () => {
    const again = againOf(input, rows);
    expect(again.words).toBe('Shoot it again at 18 m: 6 and 4');
    expect(again.plan).toMatchObject({ distances: [18], ends: 2, arrows: 3, others: 2 });
    expect(readTrial(input).next.then).toContain('6 fletched and 4 bare again at 18 m');
    expect(againOf(exampleTrialInput, sheet(exampleTrialInput))).toEqual({
      plan: exampleTrialInput.trial.plan,
      words: 'Shoot it again',
    });
  });
});
