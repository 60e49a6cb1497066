import type { UnitChoice } from '../model/preferences.ts';
import { readTable } from './readTable.ts';
import type { TableColumn } from './table.ts';

/** The orders in which people write shots down, where no heads say it. */
export const shotLayouts = ['x y', 'arrow x y', 'arrow x y end', 'arrow end x y'] as const;
export type ShotLayout = (typeof shotLayouts)[number];

/** Lines that settle the order of the columns. */
const SAMPLE = 200;

/** Heads for the two figures, in English and in the plain words of some neighbours. */
const across = ['across', 'right', 'horizontal', 'waagerecht', 'rechts', 'droite', 'destra', 'derecha'];
const up = [
  'up',
  'height',
  'vertical',
  'down',
  'senkrecht',
  'vertikal',
  'höhe',
  'hoch',
  'hauteur',
  'altezza',
  'altura',
  'hoogte',
];

const columnsIn = (layout: ShotLayout, unit: string): readonly TableColumn[] => {
  const figure = (name: string, also: readonly string[]): TableColumn => ({
    name,
    also,
    measure: 'shotOffset',
    ...(unit === '' ? {} : { unit }),
  });
  const known: Readonly<Record<string, TableColumn>> = {
    x: figure('x', across),
    y: figure('y', up),
    arrow: {
      name: 'arrow',
      also: ['no', 'nr', 'number', 'arrow number', 'arrow no', 'pfeil', 'flèche', 'freccia', 'flecha', 'pijl'],
      whole: [1, 999],
      optional: true,
    },
    end: {
      name: 'end',
      also: ['end number', 'end no', 'passe', 'volée', 'volée no', 'serie', 'ronda'],
      whole: [1, 9999],
      optional: true,
    },
  };
  const ordered = layout.split(' ').flatMap((name) => known[name] ?? []);
  return ordered;
};

/** What only heads can name: no table without them has such columns. */
const rest: readonly TableColumn[] = [
  {
    name: 'left out',
    also: ['leftout', 'excluded'],
    words: [
      ['no', 'counts', '0'],
      ['yes', 'left out', '1'],
    ],
    optional: true,
  },
  { name: 'reason', also: ['why'], anyText: true, optional: true },
];
const headed = (unit: string): readonly TableColumn[] => [...columnsIn('arrow end x y', unit), ...rest];

/**
 * How a table of shots is to be read: by its heads where they name both figures, else in the order that takes the most lines.
 *
 * @equation of the orders, the first that takes the most of the first 200 lines; heads that name x and y go before all of them
 * @param text - what was pasted [text]
 * @param asked - the order that was chosen, null to find it, and the unit of bare numbers [record]
 * @param units - the person's choice of units [record]
 * @returns the order, null where heads say it, and the columns to ask for [record]
 * @validity any text
 * @source own derivation
 * @example layoutOf('1;12;-8\n2;4;6', { layout: null, unit: '' }, defaultPreferences.units).layout // "arrow x y"
 */
export function layoutOf(
  text: string,
  asked: { readonly layout: ShotLayout | null; readonly unit: string },
  units: UnitChoice,
): { readonly layout: ShotLayout | null; readonly columns: readonly TableColumn[] } {
  const sample = text.split(/\r\n|\r|\n/, 2 * SAMPLE).join('\n');
  const withHeads = headed(asked.unit);
  const found = readTable(sample, withHeads, units, SAMPLE);
  const named = found.rows.some(({ fate, cells }) => fate === 'header' && namesBoth(cells));
  if (named) return { layout: null, columns: withHeads };
  if (asked.layout !== null) return { layout: asked.layout, columns: columnsIn(asked.layout, asked.unit) };
  const tried = shotLayouts.map((layout) => {
    const columns = columnsIn(layout, asked.unit);
    return { layout, columns, taken: readTable(sample, columns, units, SAMPLE).taken };
  });
  return tried.reduce((best, one) => (one.taken > best.taken ? one : best));
}

/** A line of units alone is a line of heads too, but it orders nothing. */
const namesBoth = (cells: readonly string[]): boolean => {
  const words = cells.map((cell) => ` ${cell.toLowerCase().replace(/[^\p{L}\d-]+/gu, ' ')} `);
  const has = (...names: string[]) => words.some((word) => names.some((name) => word.includes(` ${name} `)));
  return has('x', ...across) && has('y', ...up);
};
