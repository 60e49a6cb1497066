import { describe, expect, it } from 'vitest';
import { defaultPreferences, type ShotGroup } from '../../../core/model/index.ts';
import { nextChange, readBareShaft, readTwoGroups } from '../../../core/trials/index.ts';
import { ring, setUp } from './build.ts';

const { units } = defaultPreferences;
/** With two wild shots more, that somebody left out with a reason. */
const withWild = (group: ShotGroup): ShotGroup => ({
  ...group,
  shots: [
    ...group.shots,
    { id: 90, x: 0.5, y: -0.4, arrow: null, end: null, leftOut: 'the nock burst' },
    { id: 91, x: -0.6, y: 0.7, arrow: null, end: null, leftOut: 'called before it struck' },
  ],
});
const fletched = ring('fletched', 8, [0, 0], 20);
const bare = ring('bare', 6, [60, 0], 20);

describe('a shot that was left out', () => {
  it('changes no bare-shaft reading, no cause and no next change', () => {
    const wild = readBareShaft(setUp(), withWild(fletched), withWild(bare), units);
    expect(wild.shift?.n).toEqual([8, 6]);
    expect(wild).toEqual(readBareShaft(setUp(), fletched, bare, units));
  });

  it('changes nothing between two groups of a kind', () => {
    const second = ring('fletched', 6, [44, 0], 20);
    expect(readTwoGroups(withWild(fletched), withWild(second), units)).toEqual(readTwoGroups(fletched, second, units));
  });

  it('is not among the arrows to shoot again', () => {
    const evidence = {
      bundle: setUp(),
      units,
      problem: null,
      shift: null,
      lateral: null,
      vertical: null,
      erratic: false,
      fletchedRadius: null,
      fletchedFarthest: null,
    };
    expect(nextChange({ ...evidence, fletched: withWild(fletched), bare: withWild(bare) }).next.title).toBe(
      'Shoot 8 fletched and 6 bare',
    );
  });

  it('does not make a group of shots that were all left out', () => {
    const gone = { ...withWild(bare), shots: withWild(bare).shots.slice(-2) };
    expect(readBareShaft(setUp(), fletched, gone, units).problem?.code).toBe('no-shots');
  });
});
