import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyPatch, inverse, patchBetween } from '../../electron/notebook/patch.ts';
import { uuid } from './support.ts';

const text = fc.oneof(
  fc.constant(null),
  fc.string({ unit: 'binary', maxLength: 20 }),
  fc.constantFrom('[1,2,3]', '[1,3]', '[1,2,2,3]', ''),
);
const patch = (before: string | null, after: string | null) => patchBetween(uuid(1), 'archer', before, after);

describe('A patch', () => {
  it('turns the text before into the text after, and its inverse turns it back', () => {
    fc.assert(
      fc.property(text, text, (before, after) => {
        fc.pre(before !== null || after !== null);
        const made = patch(before, after);
        expect(applyPatch(before, made)).toBe(after);
        expect(applyPatch(after, inverse(made))).toBe(before);
      }),
      { numRuns: 2000 },
    );
  });

  it('holds no more than what changed', () => {
    expect(patch('[10,20,30]', '[10,25,30]')).toMatchObject({ at: 5, out: '0', put: '5' });
    expect(patch('[10,20]', '[10,20,30]')).toMatchObject({ at: 6, out: '', put: ',30' });
  });

  it('survives being written as JSON even where it parts a character of two units', () => {
    const made = patch('a😀', 'a😁');
    expect(applyPatch('a😀', JSON.parse(JSON.stringify(made)) as typeof made)).toBe('a😁');
  });

  it('does not fit a text that it was not made for', () => {
    expect(applyPatch('[11,21,31]', patch('[10,20,30]', '[10,25,30]'))).toBeUndefined();
    expect(applyPatch(null, patch('[10]', '[11]'))).toBeUndefined();
    expect(applyPatch('[10]', patch(null, '[10]'))).toBeUndefined();
    expect(applyPatch('[10,1]', patch('[10]', null))).toBeUndefined();
  });
});
