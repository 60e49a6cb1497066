import { describe, expect, it } from 'vitest';
import { spreadFromRegions, type RegionCount, type RegionPart } from '../../core/group/index.ts';
import published from '../../fixtures/published/dartThrows.json';
import { valueOf } from '../core/group/shots.ts';

const { innerBull, bull, tripleFrom, tripleTo, doubleFrom, doubleTo } = published.radiiMm;

const part = (inner: number, outer: number, share: number): RegionPart => ({ inner: inner / 1000, outer: outer / 1000, share });

/** Where on the board a score may lie: twenty equal sectors, of which it does not matter which. */
function partsOf(score: number): RegionPart[] {
  if (score === 50) return [part(0, innerBull, 1)];
  if (score === 25) return [part(innerBull, bull, 1)];
  const sector = 1 / 20;
  const single = score <= 20 ? [part(bull, tripleFrom, sector), part(tripleTo, doubleFrom, sector)] : [];
  const triple = score % 3 === 0 && score <= 60 ? [part(tripleFrom, tripleTo, sector)] : [];
  const double = score % 2 === 0 && score <= 40 ? [part(doubleFrom, doubleTo, sector)] : [];
  return [...single, ...triple, ...double];
}

const counts = published.counts.map(([score = NaN, count = NaN]) => ({ score, count }));

describe('a hundred throws at the centre of a dart board (counts of the R package darts, spread computed independently)', () => {
  it('are a hundred', () => expect(counts.reduce((sum, { count }) => sum + count, 0)).toBe(100));

  it('by every score: 28.2671 mm, 22.510 to 36.207', () => {
    const { spread, interval } = valueOf(spreadFromRegions(counts.map(({ score, count }) => ({ count, parts: partsOf(score) }))));
    expect(spread * 1000).toBeCloseTo(published.fullMm.spread, 4);
    expect(interval[0] * 1000).toBeCloseTo(published.fullMm.low, 3);
    expect(interval[1] * 1000).toBeCloseTo(published.fullMm.high, 3);
  });

  it('by the rings of the two bulls and all beyond them: 28.8252 mm', () => {
    const of = (wanted: (score: number) => boolean): number =>
      counts.filter(({ score }) => wanted(score)).reduce((sum, { count }) => sum + count, 0);
    const rings: RegionCount[] = [
      { count: of((score) => score === 50), parts: [part(0, innerBull, 1)] },
      { count: of((score) => score === 25), parts: [part(innerBull, bull, 1)] },
      { count: of((score) => score < 25), parts: [part(bull, Infinity, 1)] },
    ];
    expect(rings.map(({ count }) => count)).toEqual([4, 10, 86]);
    expect(valueOf(spreadFromRegions(rings)).spread * 1000).toBeCloseTo(published.ringsOnlyMm, 4);
  });
});
