import { describe, expect, it } from 'vitest';
import { allFindings, braceHeightFinding, dependentsStopped, shootingStops, stopsOf } from '../../../core/findings/index.ts';
import { defaultPreferences, exampleNow } from '../../../core/model/index.ts';
import { setUp } from '../trials/build.ts';

const { units } = defaultPreferences;
const inch = 0.0254;
const list = (bundle = setUp()) => allFindings(bundle, { units, now: exampleNow });

describe('brace height (the maker\u2019s range governs, else common practice)', () => {
  const at = (braceIn: number | null, bow = {}) =>
    braceHeightFinding(setUp({ bow, settings: { braceHeight: braceIn === null ? null : braceIn * inch } }), units);

  it('carries its number, its word and the maker\u2019s range as a rule in one unit', () => {
    const low = at(8.125);
    expect([low?.level, low?.title, low?.detail]).toEqual([
      'stop',
      'Brace height 8 1/8 in, low',
      'Outside the maker\u2019s range: mend it before anything is shot.',
    ]);
    expect(low?.rule).toMatchObject({ low: 8.25, high: 9.25, lowText: '8.25', highText: '9.25 in' });
    expect(low?.rule?.value).toBeCloseTo(8.125, 9);
    expect(low?.short).toEqual({ figure: '8 1/8 in', word: 'brace' });
    expect(low?.action).toMatchObject({ kind: 'go', field: 'settings.braceHeight' });
  });

  it('stands on its limits without a caution, also when they were typed in millimetres', () => {
    expect([at(8.25)?.level, at(9.25)?.level, at(9.3)?.level]).toEqual(['ok', 'ok', 'stop']);
    const typed = braceHeightFinding(
      setUp({ bow: { braceLow: 0.21, braceHigh: 0.235 }, settings: { braceHeight: 0.21 } }),
      units,
    );
    expect(typed?.level).toBe('ok');
  });

  // Common practice: outside the maker's own range is a hard block; outside the general ranges authorities differ.
  it('stops outside the maker\u2019s own range, on either side, and never outside common practice', () => {
    expect([7.5, 8.2, 9.3, 10].map((braceIn) => at(braceIn)?.level)).toEqual(['stop', 'stop', 'stop', 'stop']);
    const none = { braceLow: null, braceHigh: null };
    expect([7.5, 7.9, 9.1, 10].map((braceIn) => at(braceIn, none)?.level)).toEqual(Array(4).fill('caution'));
  });

  it('takes a millimetre for the tape, asks to measure again, and does not clear it', () => {
    const just = at(8.25 - 0.0009 / inch);
    expect([just?.level, just?.detail]).toEqual([
      'caution',
      'Outside the maker\u2019s range by no more than a tape can tell: measure it again.',
    ]);
    expect(at(8.25 - 0.0011 / inch)?.level).toBe('stop');
  });

  it('stops the shooting, but not the reading whose next change mends it', () => {
    const outside = setUp({ settings: { braceHeight: 8.125 * inch } });
    expect(shootingStops(outside, units).map(({ id }) => id)).toEqual(['braceHeight']);
    expect(stopsOf(outside, units)).toEqual([]);
    expect(dependentsStopped(list(outside))).toBe(false);
    expect(list(outside)[0]?.id).toBe('braceHeight');
    const short = setUp({ settings: { braceHeight: 8.125 * inch, pointAhead: 0 } });
    expect(shootingStops(short, units).map(({ id }) => id)).toEqual(['pointAhead', 'braceHeight']);
  });

  it('says what it waits for', () => {
    const waiting = at(null);
    expect([waiting?.level, waiting?.title]).toEqual(['waiting', 'Brace height not measured']);
    expect(waiting?.detail).toContain('Waits for the brace height');
  });

  it('names the bows of common practice, and has no range for a compound without its maker\u2019s', () => {
    expect(at(8.5, { braceLow: null, braceHigh: null })?.detail).toBe('Common practice for recurves of 66 to 68 in.');
    expect(at(8.5, { braceLow: null, braceHigh: null, bowKind: 'compound' })).toBeNull();
  });
});
