import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pointAheadCheck, pointAheadOfRest, type ReachInput } from '../../../core/safety/index.ts';

const inch = 0.0254;
const learner = { experience: 'learner', clicker: false } as const;
const learnerWithClicker = { experience: 'learner', clicker: true } as const;
const settled = { experience: 'settled', clicker: false } as const;
const clicker = { experience: 'settled', clicker: true } as const;
const notNoted = { experience: null, clicker: true } as const;
const everybody = [notNoted, learner, learnerWithClicker, settled, clicker];

/** A 27 in AMO draw and a shaft so much longer. */
const beyond = (moreIn: number, measured: number | null = null): ReachInput => ({
  arrowLength: (27 + moreIn) * inch,
  drawLength: 27 * inch,
  measured,
});

describe('shaft ahead of the rest', () => {
  it('is the arrow less the draw to the pivot point: 29 in at 28 in AMO is 2 3/4 in ahead [AMO: draw is 1 3/4 in more]', () => {
    const ahead = pointAheadOfRest({ arrowLength: 29 * inch, drawLength: 28 * inch, measured: null });
    expect(ahead.ok && ahead.value.value / inch).toBeCloseTo(2.75, 9);
    expect(ahead.ok && ahead.value.from).toBe('reckoned');
  });

  it('is the measured figure when there is one', () => {
    expect(pointAheadOfRest(beyond(1, 0.031))).toEqual({ ok: true, value: { value: 0.031, from: 'measured' } });
  });

  it('names what is missing', () => {
    const none = pointAheadOfRest({ arrowLength: null, drawLength: null, measured: null });
    expect(none.ok ? '' : none.problem.sentence).toContain('an arrow length and a draw length');
  });
});

describe('arrow length check [common practice]', () => {
  it('stops a learner and anyone without a clicker below AMO draw + 1 in', () => {
    for (const archer of [learner, learnerWithClicker, settled, notNoted]) {
      expect(pointAheadCheck(archer, beyond(0.9))).toMatchObject({ level: 'stop', rule: 'too short for the draw' });
      expect(pointAheadCheck(archer, beyond(1)).level).not.toBe('stop');
    }
  });

  it('cautions a learner below AMO draw + 2 in, and nobody else', () => {
    expect(pointAheadCheck(learner, beyond(1.9))).toMatchObject({ level: 'caution', rule: 'short for a learner' });
    expect(pointAheadCheck(learner, beyond(2)).level).toBe('in range');
    // While nobody noted the experience the wider margin holds, clicker or not.
    expect(pointAheadCheck(notNoted, beyond(1.9))).toMatchObject({ level: 'caution', rule: 'short for a learner' });
    expect(pointAheadCheck(settled, beyond(1.1)).level).toBe('in range');
  });

  it('lets a clicker archer shoot a shaft shorter than the AMO draw, down to 5 mm ahead of the rest', () => {
    expect(pointAheadCheck(clicker, beyond(-1)).level).toBe('in range');
    expect(pointAheadCheck(clicker, beyond(-1.6))).toMatchObject({ level: 'stop', rule: 'barely ahead of the rest' });
    expect(pointAheadCheck(clicker, beyond(-1.75 + 0.005 / inch)).level).toBe('in range');
    expect(pointAheadCheck(clicker, beyond(-2))).toMatchObject({ level: 'stop', rule: 'behind the rest' });
  });

  it('stops everybody on a measured figure of nothing or less, however long the arrow', () => {
    for (const archer of everybody)
      for (const measured of [0, -0.004]) expect(pointAheadCheck(archer, beyond(4, measured)).level).toBe('stop');
  });

  it('cautions without a clicker when the measured reach at the deepest draw is under 1 in, 2.5 cm', () => {
    expect(pointAheadCheck(settled, beyond(2, 0.02))).toMatchObject({
      level: 'caution',
      rule: 'little ahead at the deepest draw',
    });
    expect(pointAheadCheck(clicker, beyond(2, 0.02)).level).toBe('in range');
  });

  it('does not let a generous measured reach clear a shaft that is too short for the draw', () => {
    expect(pointAheadCheck(learner, beyond(0.5, 0.08)).level).toBe('stop');
  });

  it('does not let a reach that was measured before the arrows were cut hide that they end behind the rest', () => {
    // AMO draw - 1 3/4 in to the rest: a shaft 2 in shorter than the draw ends 1/4 in behind it, whatever was measured once.
    const cut = pointAheadCheck(clicker, beyond(-2, 0.05));
    expect(cut).toMatchObject({ level: 'caution', rule: 'measured against reckoned' });
    expect(pointAheadCheck(clicker, beyond(-1.5, 0.05)).level).toBe('in range');
    expect(pointAheadCheck(learner, beyond(-2, 0.05)).level).toBe('stop');
  });

  it('is unknown, never in range, when the figures are missing, and says what to enter', () => {
    for (const archer of everybody) {
      const none = pointAheadCheck(archer, { arrowLength: 28 * inch, drawLength: null, measured: null });
      expect(none.level).toBe('unknown');
      expect(none.why).toContain('draw length');
    }
    const measuredOnly = { arrowLength: null, drawLength: null, measured: 0.08 };
    expect(pointAheadCheck(learner, measuredOnly).level).toBe('unknown');
    expect(pointAheadCheck(clicker, measuredOnly).level).toBe('in range');
    expect(pointAheadCheck(learner, { ...measuredOnly, measured: -0.01 }).level).toBe('stop');
  });

  it('is unknown for figures that cannot be', () => {
    for (const bad of [Number.NaN, 0, -1, 50]) {
      expect(pointAheadCheck(learner, { arrowLength: bad, drawLength: 0.7, measured: null }).level).toBe('unknown');
      if (bad !== 0) expect(pointAheadCheck(clicker, beyond(2, bad)).level).toBe('unknown');
    }
  });

  it('never grows milder as the shaft grows shorter, nor for a learner against a settled archer', () => {
    const rank = { 'in range': 0, unknown: 1, caution: 2, stop: 3 };
    const measured = fc.option(fc.double({ min: -0.05, max: 0.3, noNaN: true }));
    fc.assert(
      fc.property(fc.constantFrom(...everybody), fc.double({ min: -5, max: 5, noNaN: true }), measured, (archer, more, read) => {
        const here = rank[pointAheadCheck(archer, beyond(more, read)).level];
        expect(rank[pointAheadCheck(archer, beyond(more - 0.5, read)).level]).toBeGreaterThanOrEqual(here);
        expect(rank[pointAheadCheck(learner, beyond(more, read)).level]).toBeGreaterThanOrEqual(here);
      }),
    );
  });
});
