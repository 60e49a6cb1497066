import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stopsOf } from '../../core/findings/index.ts';
import { BenchRecord, TrialKind } from '../../core/model/index.ts';
import { brief, readTrial, sheet, type TrialInput, type TrialReading } from '../../core/trials/index.ts';
import { anyTrial } from './anyTrial.ts';
import { everyText, wrongIn, wrongSentence, wrongTitle } from './plainText.ts';
import { mirroredBundle, mirroredGroup } from './trials/build.ts';

const titles = (...texts: readonly string[]) => expect(texts.flatMap(wrongTitle)).toEqual([]);
const sentences = (...texts: readonly string[]) => expect(texts.flatMap(wrongSentence)).toEqual([]);

function expectSound(input: TrialInput, reading: TrialReading): void {
  expect(wrongIn(reading, 'reading')).toEqual([]);
  // What a worker or a file would carry is what is read.
  expect(structuredClone(reading)).toEqual(reading);
  titles(reading.headline, reading.next.title, reading.why.title, ...reading.causes.map(({ cause }) => cause));
  sentences(reading.subline, reading.ifNot, reading.waste, reading.why.text, ...reading.disputed);
  sentences(...reading.causes.flatMap(({ evidenceFor, evidenceAgainst }) => [...evidenceFor, ...evidenceAgainst]));
  for (const step of [reading.next, ...reading.others]) {
    titles(step.title);
    sentences(step.text, step.why.text, ...[step.then, step.caution ?? ''].filter((text) => text !== ''));
  }
  if (reading.more !== null) {
    sentences(reading.more.text);
    expect(reading.more.arrows).toBeGreaterThan(0);
  }
  // Too few arrows give no verdict, and say how many more.
  if (reading.verdict === 'too few') expect(reading.more, `${input.trial.trial}: ${reading.headline}`).not.toBeNull();
  if (stopsOf(input.bundle, input.units).length > 0) expect(reading.verdict).toBe('stopped');
  expect(reading.predicted).toBeNull();
}

describe('any trial at any stage', () => {
  it('is a record that the notebook takes, and between them they come to every verdict', () => {
    const seen = new Map<string, number>();
    fc.assert(
      fc.property(anyTrial, (input) => {
        expect(BenchRecord.parse(input.trial)).toEqual(input.trial);
        for (const group of input.groups.values()) expect(BenchRecord.parse(group)).toEqual(group);
        const { verdict } = readTrial(input);
        const key = `${input.trial.trial}: ${verdict}`;
        seen.set(key, (seen.get(key) ?? 0) + 1);
      }),
      { numRuns: 500 },
    );
    const times = (verdict: string) =>
      [...seen].reduce((sum, [key, count]) => sum + (key.endsWith(`: ${verdict}`) ? count : 0), 0);
    for (const verdict of ['read', 'nothing shown', 'too few', 'void', 'stopped'])
      expect(times(verdict), verdict).toBeGreaterThan(10);
    for (const kind of TrialKind.options)
      expect([...seen.keys()].filter((key) => key.startsWith(`${kind}: `)).length, kind).toBeGreaterThan(2);
  });

  it('is planned, laid out and read without a throw, a number that is none, or a sentence that is none', () => {
    fc.assert(
      fc.property(anyTrial, (input) => {
        expectSound(input, readTrial(input));
        const before = brief(input);
        expect(wrongIn(before, 'brief')).toEqual([]);
        titles(before.title);
        sentences(
          before.purpose,
          ...before.steps,
          ...before.cautions,
          ...before.canShow,
          ...before.cannotShow,
          ...before.disputed,
        );
        expect(before.canShow.length + before.cannotShow.length).toBeGreaterThan(0);
        const { rows, next } = sheet(input);
        expect(wrongIn(rows, 'sheet')).toEqual([]);
        titles(...rows.map(({ text }) => text));
        expect(new Set(rows.map(({ key }) => key)).size).toBe(rows.length);
        expect(next === null || rows.some(({ key, done }) => key === next && !done)).toBe(true);
      }),
      { numRuns: 300 },
    );
  });

  it('reads in a mirror as the mirror image: hands and sides change, and nothing else', () => {
    const swap = (text: string) =>
      text.replace(
        /\b(left|right)\b/gi,
        (side) => ({ left: 'right', right: 'left', Left: 'Right', Right: 'Left' })[side] ?? side,
      );
    fc.assert(
      fc.property(anyTrial, (input) => {
        const one = readTrial(input);
        const other = readTrial(mirrored(input));
        expect([other.verdict, other.next.kind, swap(other.next.title), other.next.patch]).toEqual([
          one.verdict,
          one.next.kind,
          one.next.title,
          one.next.patch,
        ]);
        expect(everyText([other.headline, other.subline, other.causes]).map(swap)).toEqual(
          everyText([one.headline, one.subline, one.causes]),
        );
      }),
      { numRuns: 300 },
    );
  });
});

function mirrored(input: TrialInput): TrialInput {
  return {
    ...input,
    bundle: { ...input.bundle, ...mirroredBundle(input.bundle) },
    trial: { ...input.trial, tears: input.trial.tears.map((tear) => ({ ...tear, across: 0 - tear.across })) },
    groups: new Map([...input.groups].map(([id, group]) => [id, mirroredGroup(group)])),
  };
}
