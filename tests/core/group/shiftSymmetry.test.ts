import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shiftOfGroups, type Point } from '../../../core/group/index.ts';
import { angle, factor, group, mirrored, moved, place300, scaled, turned } from './arbitraries.ts';
import { valueOf } from './shots.ts';

describe('a shift does not depend on how it is looked at', () => {
  const expectSame = (a: readonly number[], b: readonly number[]): void =>
    a.forEach((value, i) => expect(b[i]).toBeCloseTo(value, 8));
  const judged = (a: readonly Point[], b: readonly Point[]): number[] => {
    const { f, p, df, shape, size, radius, spread } = valueOf(shiftOfGroups(a, b));
    return [Math.sqrt(f), p, ...df, shape, size, radius, spread];
  };

  it('stays when both groups are moved, turned or mirrored together', () => {
    fc.assert(
      fc.property(group(), group(), place300, angle, (a, b, by, turn) => {
        expectSame(judged(moved(a, by), moved(b, by)), judged(a, b));
        expectSame(judged(turned(a, turn), turned(b, turn)), judged(a, b));
        expectSame(judged(mirrored(a), mirrored(b)), judged(a, b));
      }),
    );
  });

  it('turns with the groups, and a mirror changes the sign of the lateral shift only', () => {
    fc.assert(
      fc.property(group(), group(), angle, (a, b, turn) => {
        const [plain, round, mirror] = [
          shiftOfGroups(a, b),
          shiftOfGroups(turned(a, turn), turned(b, turn)),
          shiftOfGroups(mirrored(a), mirrored(b)),
        ].map(valueOf);
        if (plain === undefined || round === undefined || mirror === undefined) throw new Error('Three shifts were expected.');
        expect(round.dx).toBeCloseTo(plain.dx * Math.cos(turn) - plain.dy * Math.sin(turn), 10);
        expect(round.dy).toBeCloseTo(plain.dx * Math.sin(turn) + plain.dy * Math.cos(turn), 10);
        expect(mirror.dx).toBeCloseTo(-plain.dx, 12);
        expect([mirror.dy, mirror.half.x, mirror.half.y]).toEqual(
          [plain.dy, plain.half.x, plain.half.y].map((v) => expect.closeTo(v, 12)),
        );
        expect(mirror.axisReal).toEqual(plain.axisReal);
        if (plain.size > 1e-9) {
          expect(Math.cos(plain.direction)).toBeCloseTo(plain.dx / plain.size, 9);
          expect(Math.sin(plain.direction)).toBeCloseTo(plain.dy / plain.size, 9);
        }
      }),
    );
  });

  it('scales with the groups, so that the verdict is the same in any unit', () => {
    fc.assert(
      fc.property(group(), group(), factor, (a, b, by) => {
        const [before, after] = [valueOf(shiftOfGroups(a, b)), valueOf(shiftOfGroups(scaled(a, by), scaled(b, by)))];
        expectSame(
          [after.size / by, after.radius / by, after.half.x / by, after.half.y / by],
          [before.size, before.radius, before.half.x, before.half.y],
        );
        expectSame([after.p, after.shape, ...after.df], [before.p, before.shape, ...before.df]);
      }),
    );
  });

  it('stays when the shots are put in another order, and only turns round when the groups are exchanged', () => {
    fc.assert(
      fc.property(group(), group(), (a, b) => {
        expectSame(judged(a.toReversed(), b.toReversed()), judged(a, b));
        expectSame(judged(b, a), judged(a, b));
        expect(valueOf(shiftOfGroups(b, a)).dx).toBeCloseTo(-valueOf(shiftOfGroups(a, b)).dx, 12);
      }),
    );
  });

  it('keeps the T2 of Hotelling beside it under any turn and stretch of both groups', () => {
    fc.assert(
      fc.property(group(6), group(6), angle, factor, (a, b, turn, by) => {
        const plain = valueOf(shiftOfGroups(a, b)).hotelling;
        const other = valueOf(shiftOfGroups(scaled(turned(a, turn), by), scaled(turned(b, turn), by))).hotelling;
        if (plain === null || other === null || plain.t2 > 1e4) return;
        expect(other.t2).toBeCloseTo(plain.t2, 5);
        expect(other.p).toBeCloseTo(plain.p, 7);
      }),
    );
  });
});
