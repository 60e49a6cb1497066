interface Point {
  readonly x: number;
  readonly y: number;
}

/** A straight part of a path that is painted. */
export interface Line {
  readonly from: Point;
  readonly to: Point;
  readonly painted: 'stroke' | 'fill';
}

type Matrix = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

const through = ([a, b, c, d, e, f]: Matrix, { x, y }: Point): Point => ({ x: a * x + c * y + e, y: b * x + d * y + f });

/** The first matrix, then the second: ISO 32000-1, 8.3.4. */
const times = (one: Matrix, [a, b, c, d, e, f]: Matrix): Matrix => [
  one[0] * a + one[1] * c,
  one[0] * b + one[1] * d,
  one[2] * a + one[3] * c,
  one[2] * b + one[3] * d,
  one[4] * a + one[5] * c + e,
  one[4] * b + one[5] * d + f,
];

const tokens = /\((?:\\.|[^\\)])*\)|<[0-9a-fA-F\s]*>|\[|\]|\/[^\s/[\]<>()]+|[-+]?[\d.]+|[A-Za-z'"*]+\d?\*?/g;

/** The straight lines that a content stream paints, in the page's own units: ISO 32000-1, 8.4 and 8.5. */
export function linesOf(content: string): readonly Line[] {
  const painted: Line[] = [];
  const saved: Matrix[] = [];
  let matrix: Matrix = [1, 0, 0, 1, 0, 0];
  let path: [Point, Point][] = [];
  let [start, at]: [Point, Point] = [
    { x: 0, y: 0 },
    { x: 0, y: 0 },
  ];
  let given: number[] = [];
  const lineTo = (x: number, y: number) => {
    const next = through(matrix, { x, y });
    path.push([at, next]);
    at = next;
  };
  const moveTo = (x: number, y: number) => {
    at = through(matrix, { x, y });
    start = at;
  };
  const close = () => {
    if (at.x !== start.x || at.y !== start.y) path.push([at, start]);
    at = start;
  };
  const paint = (how: readonly Line['painted'][]) => {
    for (const one of how) painted.push(...path.map(([from, to]) => ({ from, to, painted: one })));
    path = [];
  };
  for (const [token] of content.matchAll(tokens)) {
    if (/^[-+]?[\d.]+$/.test(token)) {
      given.push(Number(token));
      continue;
    }
    const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = given;
    if (token === 'q') saved.push(matrix);
    else if (token === 'Q') matrix = saved.pop() ?? matrix;
    else if (token === 'cm') matrix = times([a, b, c, d, e, f], matrix);
    else if (token === 'm') moveTo(a, b);
    else if (token === 'l') lineTo(a, b);
    else if (token === 'c') at = through(matrix, { x: e, y: f });
    else if (token === 'v' || token === 'y') at = through(matrix, { x: c, y: d });
    else if (token === 'h') close();
    else if (token === 're') {
      moveTo(a, b);
      lineTo(a + c, b);
      lineTo(a + c, b + d);
      lineTo(a, b + d);
      close();
    } else if (token === 'S') paint(['stroke']);
    else if (token === 's') {
      close();
      paint(['stroke']);
    } else if (['f', 'F', 'f*'].includes(token)) paint(['fill']);
    else if (['B', 'B*', 'b', 'b*'].includes(token)) {
      if (token.startsWith('b')) close();
      paint(['fill', 'stroke']);
    } else if (token === 'n') paint([]);
    given = [];
  }
  return painted;
}
