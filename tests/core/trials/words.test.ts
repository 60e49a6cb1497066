import { describe, expect, it } from 'vitest';
import { defaultPreferences } from '../../../core/model/index.ts';
import { acrossText, chanceSentence, countText, plusMinusText, whereWords } from '../../../core/trials/index.ts';

const { units } = defaultPreferences;

describe('words for a shift', () => {
  it('says how often chance alone would do it, to two figures from a hundred on', () => {
    expect(chanceSentence(0.8)).toBe('Chance alone would do that more often than not.');
    expect(chanceSentence(0.25)).toBe('Chance alone would do that once in 4 tries.');
    expect(chanceSentence(1 / 123)).toBe('Chance alone would do that once in 120 tries.');
    expect(chanceSentence(1e-300)).toBe('Chance alone would do that less than once in 10,000 tries.');
  });

  it('rounds counts as people say them', () => {
    expect([9, 99.4, 99.6, 1234, 987654].map(countText)).toEqual(['9', '99', '100', '1,200', '990,000']);
  });

  it('tells a place on the face as coarsely as shots are placed, in the chosen unit', () => {
    expect(acrossText(0.0412, units)).toBe('41 mm');
    expect(acrossText(-0.0412, { ...units, setting: 'in' })).toBe('1.6 in');
    expect(acrossText(0.0412, { ...units, setting: 'cm' })).toBe('4.1 cm');
    expect(plusMinusText(-0.009, 0.029, units)).toBe('\u22129 \u00b1 29 mm');
  });

  it('names side before height, and only what counts', () => {
    expect(whereWords(0.041, 0.009, { x: true, y: false }, 'fletched', units)).toBe('41 mm right of fletched');
    expect(whereWords(-0.041, 0.033, { x: true, y: true }, 'fletched', units)).toBe('41 mm left of fletched and 33 mm higher');
    expect(whereWords(0, -0.033, { x: false, y: true }, 'fletched', units)).toBe('33 mm lower than fletched');
  });
});
