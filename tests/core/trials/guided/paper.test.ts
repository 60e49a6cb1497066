import { describe, expect, it } from 'vitest';
import type { Tear } from '../../../../core/model/index.ts';
import { readTrial } from '../../../../core/trials/index.ts';
import { setUp } from '../build.ts';
import { mirrored, read, trialOf } from './build.ts';

const tears = (across: number, up: number): Tear[] =>
  [2, 3, 4].flatMap((distance) =>
    [-1, 0, 1].map((k): Tear => ({ distance, across: (across + k) / 1000, up: (up + k) / 1000, fletching: 'fletched' })),
  );
const paper = (across: number, up: number) => trialOf('paper tear', [], { trial: { tears: tears(across, up) } });

describe('the paper tear', () => {
  it.each([
    ['nock high: lower the nocking point', [0, 25], ['read', 'change', 'Lower the nocking point 1.6 mm']],
    ['nock low: raise it', [0, -25], ['read', 'change', 'Raise the nocking point 1.6 mm']],
    ['less than a shaft is thick: nothing', [0, 3], ['nothing shown', 'leave', 'Leave it: nothing to change by paper']],
    [
      'to the side up to 2 in: nothing, right-handed or left',
      [45, 0],
      ['nothing shown', 'leave', 'Leave it: nothing to change by paper'],
    ],
    [
      'grossly right, right-handed: stiff, so bare shafts first',
      [80, 0],
      ['read', 'shoot', 'Shoot bare shafts before anything is turned to the side'],
    ],
    ['grossly left, right-handed: weak or touching, so clearance first', [-80, 0], ['read', 'change', 'Test the clearance']],
    ['height before side', [-80, 25], ['read', 'change', 'Lower the nocking point 1.6 mm']],
  ] as const)('%s (common practice; to the side from memory)', (_what, [across, up], wanted) => {
    expect(read(paper(across, up))).toEqual(wanted);
    expect(read(mirrored(paper(across, up)))).toEqual(wanted);
  });

  it('turns round when only the hand changes', () => {
    const left = setUp({ archer: { hand: 'left' }, bow: { hand: 'left' } });
    expect(read({ ...paper(-80, 0), bundle: left })[2]).toBe('Shoot bare shafts before anything is turned to the side');
  });

  it('never turns a button for a tear, however gross', () => {
    for (const across of [-250, -80, 80, 250]) {
      const { next, others } = readTrial(paper(across, 0));
      expect([next, ...others].some(({ patch }) => patch !== null && 'buttonTurns' in patch)).toBe(false);
    }
  });

  it('counts each distance as one tear when the height changes with it', () => {
    const turning = tears(0, 0).map((tear) => ({ ...tear, up: tear.up + (tear.distance - 3) * 0.03 }));
    const found = readTrial(trialOf('paper tear', [], { trial: { tears: turning } }));
    expect(found.verdict).toBe('nothing shown');
    expect(found.subline).toContain('each distance counts as one tear');
  });

  it('moves the nocking point once, and wants new tears after it', () => {
    const high = paper(0, 25);
    const moved = {
      ...high,
      trial: {
        ...high.trial,
        changes: [{ at: high.now, title: 'Lower the nocking point 1.6 mm', patch: { nockingPoint: 0.0044 } }],
      },
    };
    expect(read(moved)).toEqual(['read', 'again', 'Tear paper anew in a trial of its own']);
  });

  it('wants three tears of a kind', () => {
    expect(readTrial(trialOf('paper tear', [], { trial: { tears: tears(0, 25).slice(0, 2) } }))).toMatchObject({
      verdict: 'too few',
      more: { arrows: 1 },
    });
  });
});
