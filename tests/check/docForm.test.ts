import fs from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import * as core from '../../core/index.ts';
import * as example from '../../core/model/example.ts';
import { docFaults } from './docForm.ts';

const folder = path.resolve(import.meta.dirname, '../../core');
const rooms = [
  'units',
  'tables',
  'bow',
  'arrow',
  'suitability',
  'flight',
  'aim',
  'group',
  'trials',
  'questions',
  'compare',
  'safety',
  'findings',
  'dozen',
  'photo',
];
const sources = Object.keys(core.sources);
const filesOf = (room: string) =>
  fs
    .readdirSync(path.join(folder, room), { encoding: 'utf8', recursive: true })
    .filter((name) => name.endsWith('.ts') && !/(^|[\\/])index\.ts$/.test(name));

describe('Every exported function of', () => {
  it.each(rooms)('core/%s says equation, units, range and source, and its example is true', async (room) => {
    const files = filesOf(room);
    expect(files.length).toBeGreaterThan(0);
    const faults: string[] = [];
    let functions = 0;
    const modules = await Promise.all(
      files.map((name) => import(path.join(folder, room, name)) as Promise<Record<string, unknown>>),
    );
    // A file's example may use what stands in a file beside it, though no door opens on it.
    const own = Object.assign({}, ...modules) as Record<string, unknown>;
    for (const name of files) {
      const text = fs.readFileSync(path.join(folder, room, name), 'utf8');
      const looked = docFaults(text, { ...core, ...example, ...own }, sources);
      functions += looked.functions.length;
      faults.push(...looked.faults.map((fault) => `${room}/${name} ${fault}`));
    }
    expect(faults).toEqual([]);
    expect(functions).toBeGreaterThan(0);
  });

  it('there are rooms enough: every folder of core but the records is one', () => {
    const folders = fs.readdirSync(folder, { withFileTypes: true }).filter((entry) => entry.isDirectory());
    expect(folders.map(({ name }) => name).sort()).toEqual([...rooms, 'model'].sort());
  });
});

const drag = (density: number, speed: number) => 0.5 * density * speed * speed;
const good = `
/**
 * Pressure of a stream at rest against a wall.
 *
 * @equation q = ½ ρ v²
 * @param density - ρ, fluid density [kg/m³]
 * @param speed - v, speed [m/s]
 * @returns q, pressure [Pa]
 * @validity any speed well below that of sound
 * @source from memory
 * @example drag(2, 10) // 100
 */
export function drag(density: number, speed: number): number {
  return 0.5 * density * speed * speed;
}`;

/** Each of these must be caught: the checker is only as good as what it refuses. */
const canaries: readonly [what: string, text: string, fault: RegExp][] = [
  ['a parameter without a unit', good.replace(' [m/s]', ''), /@param speed does not end in a \[unit\]/],
  ['a misspelt unit', good.replace('[m/s]', '[ms]'), /@param speed does not end in a \[unit\]/],
  ['a result without a unit', good.replace(' [Pa]', ''), /@returns does not end in a \[unit\]/],
  ['a wrong example', good.replace('// 100', '// 101'), /example gives 100, the comment says 101/],
  ['an example that is off in the eighth figure', good.replace('// 100', '// 100.00001'), /example gives 100/],
  ['an example that does not run', good.replace('drag(2, 10) //', 'drags(2, 10) //'), /example does not run/],
  ['an example without a value', good.replace(' // 100', ''), /not one line of/],
  [
    'names in another order',
    good.replace('function drag(density: number, speed', 'function drag(speed: number, density'),
    /takes \(speed, density\) but documents \(density, speed\)/,
  ],
  [
    'a name that is not documented',
    good.replace('speed: number)', 'speed: number, angle: number)'),
    /takes \(density, speed, angle\)/,
  ],
  [
    'a parameter that is taken apart and not documented',
    good.replace('density: number, speed: number', '{ density }: Air, speed: number, { angle }: Shot'),
    /documents \(density, speed\)/,
  ],
  ['no equation', good.replace(/.*@equation.*\n/, ''), /has no @equation/],
  ['no range', good.replace(/.*@validity.*\n/, ''), /has no @validity/],
  ['no source', good.replace(/.*@source.*\n/, ''), /has no @source/],
  ['a source that is nowhere listed', good.replace('from memory', 'a-book-1900'), /cites "a-book-1900"/],
  ['no example', good.replace(/.*@example.*\n/, ''), /has no @example/],
  ['no opening sentence', good.replace(/.*Pressure of.*\n/, ''), /no opening sentence/],
  ['tags in another order', good.replace(/( \* @validity.*\n)( \* @source.*\n)/, '$2$1'), /tags in another order/],
  ['no comment at all', good.slice(good.indexOf('export')), /has no @equation/],
  ['a constant that is a function, without a comment', 'export const drag = (density: number) => density;', /has no @equation/],
];

describe('The check of the comments', () => {
  it('passes a good one, and sees the function in it', () => {
    expect(docFaults(good, { drag }, sources)).toEqual({ functions: ['drag'], faults: [] });
  });

  it.each(canaries)('catches %s', (_what, text, fault) => {
    expect(text).not.toBe(good);
    const { faults } = docFaults(text, { drag }, sources);
    expect(faults.join('\n')).toMatch(fault);
  });
});
