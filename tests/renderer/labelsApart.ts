import { expect } from 'vitest';
import { touches, type Box } from '../../renderer/plots/boxes.ts';
import type { Label } from '../../renderer/plots/labels.ts';
import type { Tick } from '../../renderer/plots/ticks.ts';

export const textsOf = (ticks: readonly Tick[]): Label[] => ticks.flatMap(({ label }) => (label === null ? [] : [label]));

/** No text leaves the plot, and no two touch. */
export function expectApart(labels: readonly Label[], width: number, height: number, about: string): void {
  const inside = ({ left, right, top, bottom }: Box) => left >= -0.01 && right <= width + 0.01 && top >= 0 && bottom <= height;
  expect(
    labels.filter(({ box }) => !inside(box)).map(({ text }) => text),
    `${about}: outside`,
  ).toEqual([]);
  const pairs = labels.flatMap((a, i) => labels.slice(i + 1).map((b) => [a, b] as const));
  expect(
    pairs.filter(([a, b]) => touches(a.box, b.box)).map(([a, b]) => `${a.text} on ${b.text}`),
    `${about}: touching`,
  ).toEqual([]);
}
