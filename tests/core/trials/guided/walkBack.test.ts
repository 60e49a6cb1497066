import { describe, expect, it } from 'vitest';
import { readTrial } from '../../../../core/trials/index.ts';
import { setUp } from '../build.ts';
import { fletched, mirrored, read, trialOf } from './build.ts';

/** Offsets from the plumb line in mm per metre and per square metre, three arrows a distance, evenly either side. */
const walk = (slope: number, bend: number) =>
  trialOf(
    'walk-back',
    [5, 10, 15, 20, 25, 30].map((distance) => {
      const middle = slope * distance + bend * distance ** 2;
      const group = fletched(3, [0, 0], 0);
      return {
        distance,
        first: {
          ...group,
          shots: group.shots.map((shot, i) => ({ ...shot, x: (middle + (i - 1) * 0.4 * distance) / 1000, y: -distance / 100 })),
        },
      };
    }),
  );

describe('the walk-back', () => {
  it.each([
    [
      'slanting left: outward for the right hand',
      [-4, 0],
      'The button way: soften the button',
      'The rest way: bring the centre shot in 0.5 mm',
    ],
    ['slanting right: inward', [4, 0], 'The button way: firm the button', 'The rest way: bring the centre shot out 0.5 mm'],
  ] as const)(
    '%s: sight and cant first, then the button way and the rest way, shown as disputed (from memory)',
    (_what, [slope, bend], button, rest) => {
      for (const input of [walk(slope, bend), mirrored(walk(slope, bend))]) {
        const found = readTrial(input);
        expect([found.verdict, found.next.kind, found.next.title]).toEqual([
          'read',
          'measure',
          'Check the sight and the cant first',
        ]);
        expect(found.others.map(({ title }) => title)).toEqual([expect.stringContaining(button), rest]);
        expect(found.disputed[0]).toMatch(/^The button way .* the rest way /);
        const checked = {
          ...input,
          trial: { ...input.trial, changes: [{ at: input.now, title: found.next.title, patch: null }] },
        };
        expect(readTrial(checked).next.title).toContain(button);
      }
    },
  );

  it('bulging left: the centre shot is out for the right hand, 0.5 mm in; to the right it is in (from memory)', () => {
    for (const input of [walk(-8, 0.3), mirrored(walk(-8, 0.3))])
      expect(read(input)).toEqual(['read', 'change', 'Bring the centre shot in 0.5 mm']);
    expect(readTrial(walk(-8, 0.3)).headline).toMatch(/^The line bends: it bulges \d+ mm to the left$/);
    expect(read(walk(8, -0.3))[2]).toBe('Bring the centre shot out 0.5 mm');
  });

  it('upright: nothing to turn', () => {
    expect(read(walk(0, 0))).toEqual(['nothing shown', 'leave', 'Leave it: the line stands upright']);
  });

  it('runs through the places by weights 1/z\u00b2, so that a slant of 4 mm a metre is 120 mm at 30 m (closed form)', () => {
    expect(readTrial(walk(-4, 0)).headline).toBe('The line slants to the left: 120 mm at 30 m');
  });

  it('wants three distances, and says how many more', () => {
    const { distances } = walk(0, 0).trial.plan;
    const near = walk(0, 0);
    expect(distances.length).toBeGreaterThan(2);
    const two = { ...near, trial: { ...near.trial, groups: near.trial.groups.slice(0, 2) } };
    expect(readTrial(two)).toMatchObject({ verdict: 'too few', more: { arrows: 9 } });
  });

  it('gives a compound its line and no change', () => {
    const found = readTrial({ ...walk(-4, 0), bundle: setUp({ bow: { bowKind: 'compound' } }) });
    expect([found.verdict, found.next.kind, found.figures.length > 2]).toEqual(['void', 'leave', true]);
  });
});
