import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ShotGroup } from '../../../core/model/index.ts';
import { groupQuestions, inOrder, type Question, type QuestionId, type QuestionInput } from '../../../core/questions/index.ts';
import { wrongIn, wrongSentence, wrongTitle } from '../plainText.ts';
import { groupOn, inputOf, roundShots } from './build.ts';

const ask = (input: QuestionInput, id: QuestionId): Question => {
  const found = groupQuestions(input).find((question) => question.id === id);
  if (found === undefined) throw new Error(`${id} was not asked`);
  return found;
};
/** Ten ends of six numbered arrows, each moved as it is told. */
const numbered = (seed: number, move: (arrow: number, end: number) => { x: number; y: number }, ends = 10): ShotGroup =>
  groupOn(
    90,
    roundShots(seed, ends * 6, 0.02).map((at, i) => {
      const [arrow, end] = [(i % 6) + 1, Math.floor(i / 6) + 1];
      const by = move(arrow, end);
      return { x: at.x + by.x, y: at.y + by.y, arrow, end };
    }),
  );
const still = { x: 0, y: 0 };

describe('the questions of a group', () => {
  it('find an arrow planted three spreads off, and no other', () => {
    const question = ask(inputOf(numbered(1, (arrow) => (arrow === 4 ? { x: 0.06, y: 0 } : still))), 'odd');
    expect(question.state).toBe('yes');
    expect(question.answer).toMatch(/arrow 4 strikes \d+ mm right of the others/);
    const [table] = question.page().tables;
    expect(table?.rows.filter(({ answer }) => answer).map(({ cells }) => cells[0])).toEqual(['4']);
  });

  it('say of good arrows how many more ends would show the farthest', () => {
    const question = ask(inputOf(numbered(2, () => still)), 'odd');
    expect(question.state).toBe('cannot tell');
    expect(question.tells).toMatch(/more ends? would show arrow \d/);
  });

  it('take shots without a number for no evidence, neither alone nor among numbered ones', () => {
    const group = numbered(1, (arrow) => (arrow === 4 ? { x: 0.06, y: 0 } : still));
    const bare = { ...group, shots: group.shots.map((shot) => ({ ...shot, arrow: null })) };
    expect(ask(inputOf(bare), 'odd').tells).toMatch(/^Write a number on each arrow/);
    const far = Array.from({ length: 10 }, (_, i) => ({
      ...group.shots[0]!,
      id: 100 + i,
      x: -0.3,
      y: 0.2,
      arrow: null,
      end: i + 1,
    }));
    const mixed = ask(inputOf({ ...group, shots: [...group.shots, ...far] }), 'odd');
    expect(mixed.answer).toBe(ask(inputOf(group), 'odd').answer);
    expect(mixed.page().notes).toContain('10 shots have no number: they say nothing here.');
    // A number without an end is none either, whatever the unnumbered shots have.
    const noEnds = { ...group, shots: [...group.shots.map((shot) => ({ ...shot, end: null })), ...far] };
    expect(ask(inputOf(noEnds), 'odd').tells).toMatch(/^Note which end each numbered shot belongs to/);
  });

  it('find a planted drift, and none where there is none', () => {
    const drifting = ask(inputOf(numbered(3, (_arrow, end) => ({ x: 0, y: -0.006 * end }))), 'drift');
    expect(drifting.answer).toMatch(/^Yes: the last of 10 ends lies \d+ mm lower than the first end, give or take \d+ mm\.$/);
    expect(ask(inputOf(numbered(4, () => still)), 'drift').state).not.toBe('yes');
  });

  it('say on the page when very many ends are taken together into fewer looks, and not of few', () => {
    const notes = (ends: number) =>
      ask(
        inputOf(
          numbered(5, () => still, ends),
          { beside: numbered(6, () => still, ends) },
        ),
        'stopping',
      ).page().notes;
    // 15 000 shots looked at in all, as stated of the looks: 2 × 720 shots leave 10 looks, so 12 of 120 ends to a look.
    expect(notes(120)).toContainEqual(expect.stringMatching(/^With very many shots fewer looks are taken, each after 12 ends\./));
    expect(notes(10).join(' ')).not.toContain('fewer looks');
  });

  it('judge a flyer by the archer’s history, where its own three shots hardly ever can', () => {
    const three = groupOn(90, [
      { x: 0, y: 0, arrow: 1 },
      { x: 0.03, y: -0.03, arrow: 2 },
      { x: 0.09, y: 0.07, arrow: 3 },
    ]);
    const others = Array.from({ length: 10 }, (_, i) => groupOn(i + 1, roundShots(50 + i, 12, 0.02)));
    const question = ask(inputOf(three, { others }), 'flyer');
    expect(question.answer).toMatch(/^Yes, .*arrow 3.*judged by 10 earlier groups\.$/);
    // The very shot that is named can be left out from here.
    expect(question.named).toContainEqual({ shot: 2, name: 'arrow 3' });
    expect(ask(inputOf(three), 'flyer').state).toBe('no');
  });

  it('call a leaning oval an oval that leans, a tall one taller, and few round shots round as far as can be told', () => {
    const oval = (degrees: number) =>
      groupOn(
        90,
        roundShots(21, 24, 0.02).map(({ x, y }) => {
          const by = (degrees * Math.PI) / 180;
          const [across, along] = [x, 4 * y];
          return { x: across * Math.cos(by) + along * Math.sin(by), y: along * Math.cos(by) - across * Math.sin(by) };
        }),
      );
    expect(ask(inputOf(oval(45)), 'shape').answer).toMatch(
      /^An oval that leans to the right by \d\d ± \d+ degrees from upright: \d\.\d times as long as wide \([2-3]\.\d to \d\.\d\)\. It is neither/,
    );
    expect(ask(inputOf(oval(-45)), 'shape').answer).toMatch(/^An oval that leans to the left by \d\d ± \d+ degrees/);
    expect(ask(inputOf(oval(0)), 'shape').answer).toMatch(
      /^Taller than wide: \d\.\d\d times as tall as wide \(\d\.\d\d to \d\.\d\d\)\.$/,
    );
    expect(ask(inputOf(oval(90)), 'shape').answer).toMatch(/^Wider than tall: \d\.\d\d times as wide as tall/);
    expect(ask(inputOf(groupOn(90, roundShots(22, 6, 0.02))), 'shape').answer).toMatch(/^Round, as far as can be told: /);
  });

  // Published: with 6 and 6 arrows a spread a fifth tighter is hardly ever found (statistics of ratios: 64 and 64 are needed; computed independently).
  it('say that six arrows cannot tell a spread a fifth tighter', () => {
    const old = roundShots(7, 6, 0.02);
    const group = groupOn(
      90,
      old.map(({ x, y }) => ({ x: 0.8 * x, y: 0.8 * y })),
    );
    const question = ask(inputOf(group, { beside: groupOn(89, old) }), 'tighter');
    expect(question.answer).toMatch(/^Cannot tell: 0\.80 times the spread of the group beside it/);
    expect(question.tells).toMatch(/^6 shots show only 0\.\d\d times or less\. About \d+ arrows in each group/);
  });

  it('name the group they hold this one against by its time, where two share a day, and by its day alone where not', () => {
    const day = groupOn(90, roundShots(11, 6, 0.02));
    const at = (id: string, hour: number): ShotGroup => ({
      ...day,
      id: `20000000-0000-4000-8000-0000000009${id}`,
      context: { ...day.context, shotAt: { at: `2026-03-20T${hour}:05:00Z`, offsetMinutes: 60 } },
    });
    const [morning, noon, evening] = [at('01', 10), at('02', 12), at('03', 18)];
    const answer = (others: readonly ShotGroup[], group = evening) => ask(inputOf(group, { others }), 'tighter').answer;
    expect(answer([morning, noon, evening])).toContain('the spread of the group of 20 Mar 2026, 13:05 (');
    expect(answer([morning], groupOn(95, roundShots(12, 6, 0.02)))).toContain('the spread of the group of 20 Mar 2026 (');
    const twin = { ...noon, id: '20000000-0000-4000-8000-000000000904' };
    expect(answer([noon, twin])).toContain('the group of 20 Mar 2026, 13:05 (no. 2 of that minute) (');
  });

  it('ask nothing of where a walk-back’s group lies, nor hold another group against its centre', () => {
    const group = groupOn(
      90,
      roundShots(13, 6, 0.02).map(({ x, y }) => ({ x, y: y - 0.25 })),
    );
    const before = groupOn(80, roundShots(14, 6, 0.02));
    const asked = (walkBack: readonly string[], of = group, others = [before]) =>
      groupQuestions(inputOf(of, { others, walkBack: new Set(walkBack) })).map(({ id, answer }) => ({ id, answer }));
    const ids = asked([group.id]).map(({ id }) => id);
    for (const id of ['aim', 'score', 'one centre']) expect(ids, id).not.toContain(id);
    for (const id of ['size', 'flyer', 'odd', 'drift', 'tighter', 'shape']) expect(ids, id).toContain(id);
    expect(asked([]).map(({ id }) => id)).toContain('aim');
    const later = groupOn(95, roundShots(15, 6, 0.02));
    const centre = (walkBack: readonly string[]) => asked(walkBack, later, [group]).find(({ id }) => id === 'one centre')?.answer;
    expect(centre([])).toMatch(/^No: 2 groups/);
    expect(centre([group.id])).toBe('Cannot tell yet.');
  });

  it('leave shots out of every figure, and show them with and without', () => {
    const shots = roundShots(8, 12, 0.02).map((at, i) => ({ ...at, arrow: i + 1 }));
    const far = { x: 0.2, y: 0.2, arrow: 13, leftOut: 'a gust' };
    const [with13, without] = [groupOn(90, [...shots, far]), groupOn(90, shots)];
    const answers = (group: ShotGroup) =>
      groupQuestions(inputOf(group))
        .filter(({ id }) => id !== 'left out')
        .map(({ id, answer }) => `${id}: ${answer}`);
    expect(answers(with13)).toEqual(answers(without));
    const question = ask(inputOf(with13), 'left out');
    expect(question.answer).toMatch(/^1 of 13 left out: mean radius of many \d+ mm without, \d+ mm with\.$/);
    expect(question.tells).toMatch(/^Left out for “a gust”\. If it was left out for that alone, the figures without it hold/);
    const flyer = groupOn(90, [...shots, { ...far, leftOut: 'a flyer' }]);
    expect(ask(inputOf(flyer), 'left out').tells).toMatch(/^Left out for “a flyer”\. .* reads too small\.$/);
    expect(question.page().tables[1]?.rows[0]?.cells).toEqual(['arrow 13', 'a gust', '283 mm']);
    expect(groupQuestions(inputOf(without)).some(({ id }) => id === 'left out')).toBe(false);
  });

  it('stop once two groups are plainly apart, and say how much more is needed while they are not', () => {
    const [here, there] = [roundShots(9, 12, 0.02), roundShots(10, 12, 0.02)];
    const apart = groupOn(
      89,
      there.map(({ x, y }) => ({ x: x + 0.1, y })),
      { fletching: 'bare' },
    );
    expect(ask(inputOf(groupOn(90, here), { beside: apart }), 'stopping').answer).toMatch(
      /^Stop: the two lie \d+ mm ± \d+ mm apart/,
    );
    const near = groupOn(89, there.map(({ x, y }) => ({ x: x + 0.01, y })).slice(0, 3), { fletching: 'bare' });
    const going = ask(inputOf(groupOn(90, here.slice(0, 3)), { beside: near }), 'stopping');
    expect(going.state).toBe('cannot tell');
    expect(going.tells).toMatch(/would settle it|More than a thousand/);
  });

  it('stand in the order of use: what asks for an act, figures, what is open, where nothing was found', () => {
    const questions = groupQuestions(inputOf(numbered(1, (arrow) => (arrow === 4 ? { x: 0.06, y: 0 } : still))));
    const standings = questions.map(({ standing }) => ['act', 'figure', 'open', 'clear'].indexOf(standing));
    expect(standings).toEqual([...standings].sort((a, b) => a - b));
    expect(inOrder([...questions].reverse()).map(({ standing }) => standing)).toEqual(questions.map(({ standing }) => standing));
  });

  it('answer in sound sentences whatever was shot, and each page opens', () => {
    const place = fc.double({ min: -0.4, max: 0.4, noNaN: true }).map((x) => Math.round(x * 1e4) / 1e4);
    const shot = fc.record({
      x: place,
      y: place,
      arrow: fc.option(fc.integer({ min: 1, max: 4 })),
      end: fc.option(fc.integer({ min: 1, max: 3 })),
      leftOut: fc.option(fc.constant('a gust'), { freq: 8 }),
    });
    const shots = fc.array(shot, { maxLength: 14 });
    fc.assert(
      fc.property(shots, shots, fc.array(shots, { maxLength: 5 }), fc.boolean(), (own, second, earlier, bare) => {
        const group = groupOn(90, own);
        const beside = groupOn(91, second, bare ? { fletching: 'bare' } : {});
        const others = earlier.map((list, i) => groupOn(i + 1, list));
        const questions = groupQuestions(inputOf(group, { beside, others: [...others, group, beside] }));
        expect(questions.length).toBeGreaterThanOrEqual(10);
        for (const { page, ...question } of questions) {
          expect(wrongIn({ ...question, ...page() }, question.id)).toEqual([]);
          expect(
            [question.answer, ...(question.tells === null ? [] : [question.tells]), ...page().notes].flatMap(wrongSentence),
          ).toEqual([]);
          expect(wrongTitle(question.ask)).toEqual([]);
        }
      }),
      { numRuns: 60 },
    );
  });
});
