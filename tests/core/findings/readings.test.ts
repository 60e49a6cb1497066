import { describe, expect, it } from 'vitest';
import { allFindings, forceReadingsFinding, speedsFinding } from '../../../core/findings/index.ts';
import { defaultPreferences, exampleNow, type ForceReading, type SpeedReading } from '../../../core/model/index.ts';
import { setUp } from '../trials/build.ts';

const { units } = defaultPreferences;
const inch = 0.0254;
const pound = 4.4482216152605;
const grain = 6.479891e-5;

/** A bow that gains the same with every inch from its brace height (8 1/2 in, 10 1/4 as a draw) to 33 lb at 27 1/2 in. */
const lbAt = (drawIn: number) => (33 * (drawIn - 10.25)) / 17.25;
const read = (drawIn: number, lb = lbAt(drawIn), way: ForceReading['way'] = 'draw'): ForceReading => ({
  draw: drawIn * inch,
  force: lb * pound,
  way,
});
const straight = [12, 14, 16, 18, 20, 22, 24, 26, 27.5].map((drawIn) => read(drawIn));
const force = (forceDraw: readonly ForceReading[], over: Parameters<typeof setUp>[0] = {}) =>
  forceReadingsFinding(setUp({ ...over, bow: { forceDraw: [...forceDraw], forceDrawBrace: 8.5 * inch, ...over.bow } }), units);

describe('readings off the bow scale', () => {
  it('are said to be in order, or there is nothing to say', () => {
    expect(force(straight)).toMatchObject({ level: 'ok', title: '9 force readings, none odd' });
    expect(force([])).toBeNull();
  });

  it('are flagged where more draw reads less force, with the row', () => {
    const slip = straight.map((reading, index) => (index === 4 ? read(20, 9) : reading));
    const found = force(slip);
    expect(found?.level).toBe('caution');
    expect(found?.title).toMatch(/^\d of 9 force readings do(es)? not fit$/);
    expect(found?.detail).toMatch(/^Row \d: /);
    expect(found?.action).toMatchObject({ field: 'bow.forceDraw' });
  });

  it('are flagged below the brace height', () => {
    expect(force([read(9, 2), ...straight])?.title).toBe('1 of 10 force readings does not fit');
  });

  it('contradict the weight on the fingers, and then the arrow is judged by the heavier', () => {
    const over = { settings: { weightOnFingers: 27 * pound } };
    expect(force(straight, over)).toMatchObject({ level: 'caution', title: '27 lb on the fingers, 33 lb in the table' });
    const set = setUp({ ...over, bow: { forceDraw: straight, forceDrawBrace: 8.5 * inch, markedWeight: null } });
    const mass = allFindings(set, { units, now: exampleNow }).find(({ id }) => id === 'arrowMass');
    // 326 gr on 33 lb are 9.9 gr/lb; on 27 they would be 12.1.
    expect(mass?.title).toBe('Arrow mass 9.9 gr per lb');
    expect(mass?.detail).toContain('Judged by the 33 lb in the table of readings');
  });

  it('belong to the brace height that they were read at', () => {
    expect(force(straight, { bow: { forceDrawBrace: 8 * inch } })).toMatchObject({
      level: 'caution',
      title: 'Force readings are from a brace of 8 in',
      detail: 'It is 8 1/2 in now: read the bow again.',
    });
  });
});

describe('readings of a bow that no archer was measured for', () => {
  it('ask for the draw length, not for other readings', () => {
    const found = force(straight, { archer: { drawLength: null } });
    expect([found?.level, found?.title]).toEqual(['unknown', '9 force readings, and no draw length']);
    expect(found?.action).toMatchObject({ field: 'archer.drawLength' });
  });
});

describe('speeds over the chronograph', () => {
  const speeds = (chronograph: readonly SpeedReading[]) => {
    const bundle = setUp();
    const setup = { ...bundle.setup, chronograph: [...chronograph], chronographBrace: 8.5 * inch, chronographDraw: 27.5 * inch };
    return speedsFinding({ ...bundle, setup }, units);
  };
  // Two published speeds ask for a virtual mass of 138 g, which no bow has.
  it('are flagged and not used where they ask for what no bow has', () => {
    const found = speeds([
      { mass: 0.0567, speed: 62.2 },
      { mass: 0.0425, speed: 64.6 },
    ]);
    expect([found?.level, found?.title]).toEqual(['caution', '2 speeds: flagged, not used']);
    expect(found?.detail).toMatch(/^[A-Z].*\.$/);
    expect(found?.action).toMatchObject({ field: 'setup.chronograph' });
  });

  it('are told without a figure where heavier arrows were no slower, since no mass would do that', () => {
    const found = speeds([
      { mass: 0.02, speed: 55 },
      { mass: 0.025, speed: 55 },
    ]);
    expect(found?.level).toBe('caution');
    expect(JSON.stringify(found)).not.toMatch(/NaN|Infinity|null g/);
  });

  it('tell the virtual mass where it can be believed', () => {
    // (m + 6 g) v\u00b2/2 = 40 J (computed independently).
    const found = speeds(
      [300, 350, 400, 450, 500].map((gr) => ({ mass: gr * grain, speed: Math.sqrt(80 / (gr * grain + 0.006)) })),
    );
    // 6 g are 92.6 gr.
    expect([found?.level, found?.title]).toEqual(['ok', 'Virtual mass 92.6 gr from 5 speeds']);
    expect(speeds([])).toBeNull();
  });
});
