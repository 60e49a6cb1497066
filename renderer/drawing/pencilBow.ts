type Point = readonly [number, number];

/** A smooth path through points (Catmull-Rom as cubic Béziers). */
export function curveThrough(points: readonly Point[]): string {
  const at = (i: number): Point => points[Math.max(0, Math.min(points.length - 1, i))] as Point;
  let path = `M${at(0)
    .map((v) => v.toFixed(1))
    .join(' ')}`;
  for (let i = 0; i < points.length - 1; i++) {
    const [p0, p1, p2, p3] = [at(i - 1), at(i), at(i + 1), at(i + 2)];
    const controls = [
      p1[0] + (p2[0] - p0[0]) / 6,
      p1[1] + (p2[1] - p0[1]) / 6,
      p2[0] - (p3[0] - p1[0]) / 6,
      p2[1] - (p3[1] - p1[1]) / 6,
      ...p2,
    ];
    path += `C${controls.map((v) => v.toFixed(1)).join(' ')}`;
  }
  return path;
}

/** Inches from the string toward the target, and inches up from square. A shape for the eye; nothing is computed from it. */
const brace = 8.5;
const tip = 31.6;

const belly: readonly Point[] = [
  [7.4, 12.1],
  [6.6, 16],
  [4.9, 20.5],
  [2.6, 24.6],
  [0.6, 27.6],
  [0.1, 29.4],
  [0.3, 30.8],
  [1, tip],
];

const limb = (name: string, up: 1 | -1) => ({
  name,
  belly: belly.map(([x, y]): Point => [x, up * y]),
  back: belly.map(([x, y], i): Point => [x + 0.4 - 0.02 * i, up * (y + 0.02 * i)]),
});

const riser: readonly Point[] = [
  [7.4, 12.1],
  [7, 10.9],
  [7.9, 8],
  [8.9, 5.6],
  [9.6, 2.3],
  [9.1, 0],
  [brace, -1.6],
  [brace + 0.1, -2.4],
  [8.1, -4.4],
  [8.7, -6],
  [7.7, -8.3],
  [7, -10.9],
  [7.4, -12.1],
  [8.2, -9.6],
  [9.7, -6.4],
  [10.7, -2.4],
  [10.8, 0.6],
  [10.3, 4.6],
  [9, 8.2],
  [7.8, 11],
];

const grip: readonly Point[] = [
  [9.1, -0.3],
  [brace, -1.6],
  [brace + 0.1, -2.4],
  [8.1, -4.4],
  [8.8, -5.4],
  [9.7, -3.6],
  [9.8, -1.6],
];

export const pencilBow = { brace, tip, limbs: [limb('upper', 1), limb('lower', -1)], riser, grip } as const;
