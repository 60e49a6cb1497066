import type { Measure } from '../model/limits.ts';

interface AnyColumn {
  /** As people call it: "draw". It is looked for in the heads and named in the sentences. */
  readonly name: string;
  /** Other words for it in a head, lower case. */
  readonly also?: readonly string[];
  /** A line without it is taken all the same. */
  readonly optional?: boolean;
}

interface FigureColumn extends AnyColumn {
  readonly measure: Measure;
  /** The unit of its bare numbers when neither head nor cell says one; without it the person's own. */
  readonly unit?: string;
}

/** Numbers that something bears: arrows, ends, targets. */
interface WholeColumn extends AnyColumn {
  readonly whole: readonly [least: number, most: number];
}

/** One of a few words; the value is which of the lists the word stands in. */
interface WordColumn extends AnyColumn {
  readonly words: readonly (readonly string[])[];
}

/** Anything at all; its value is 1 where there is something, and the text stands among the line's cells. */
interface TextColumn extends AnyColumn {
  readonly anyText: true;
}

/** What a column of a pasted table is taken for. */
export type TableColumn = FigureColumn | WholeColumn | WordColumn | TextColumn;

/** What became of one line, blank lines apart. */
export interface TableRow {
  /** Counted from 1, blank lines too: as an editor counts them. */
  readonly line: number;
  readonly text: string;
  /** As the line was cut; none where it was too long to be a line of a table. */
  readonly cells: readonly string[];
  readonly fate: 'taken' | 'header' | 'left out';
  /** Why it was left out, or what of a taken line was not read; else null. */
  readonly why: string | null;
  /** SI, one for each column that was asked for; null where the line has none, and all of them unless the line was taken. */
  readonly values: readonly (number | null)[];
}

export interface TableRead {
  readonly rows: readonly TableRow[];
  /** Where each column was found last, counted from 0, and the unit that its head gave. */
  readonly columns: readonly { readonly place: number | null; readonly unit: string | null }[];
  /** Heads that name nothing that was asked for: their columns are not read. */
  readonly unread: readonly { readonly place: number; readonly head: string }[];
  /** What a head may say, for whoever wrote another word. */
  readonly known: readonly string[];
  readonly taken: number;
  readonly leftOut: number;
  /** When there were more lines than anybody reads: a sentence that says how many were not read. */
  readonly tooMany: string | null;
}
