import { BenchRecord, type Problem, type Result } from '../../core/model/index.ts';
import type { Row, Sql } from './sql.ts';

/** A record's row: its text holds everything but the revision, which counts on even while the record is gone (text null). */
export interface RecordRow {
  readonly id: string;
  readonly kind: string;
  readonly revision: number;
  readonly text: string | null;
}

/** The columns are those of a STRICT table, so SQLite itself vouches for their types. */
const asRow = (row: Row): RecordRow => ({
  id: row['id'] as string,
  kind: row['kind'] as string,
  revision: Number(row['revision']),
  text: row['json'] as string | null,
});

export function readRow(sql: Sql, id: string): RecordRow | null {
  const row = sql.get('SELECT id, kind, revision, json FROM record WHERE id = ?', id);
  return row === null ? null : asRow(row);
}

export function liveRows(sql: Sql): RecordRow[] {
  return sql.all('SELECT id, kind, revision, json FROM record WHERE json IS NOT NULL ORDER BY rowid').map(asRow);
}

export function writeRow(sql: Sql, row: RecordRow): void {
  sql.run(
    `INSERT INTO record(id, kind, revision, json) VALUES (?, ?, ?, ?)
     ON CONFLICT(id) DO UPDATE SET kind = excluded.kind, revision = excluded.revision, json = excluded.json`,
    row.id,
    row.kind,
    row.revision,
    row.text,
  );
}

export function textOf(record: BenchRecord): string {
  const { revision: _counted, ...rest } = record;
  return JSON.stringify(rest);
}

/** What a row says, or why it cannot be read; the row itself stays as it is. */
export function recordOf(row: RecordRow): Result<BenchRecord> {
  const record = BenchRecord.safeParse(withRevision(row));
  if (record.success && record.data.id === row.id && record.data.kind === row.kind) return { ok: true, value: record.data };
  return { ok: false, problem: unreadable(row) };
}

function withRevision(row: RecordRow): unknown {
  try {
    const written: unknown = JSON.parse(row.text ?? 'null');
    return typeof written === 'object' && written !== null ? { ...written, revision: row.revision } : null;
  } catch {
    return null;
  }
}

const kindInWords: Readonly<Record<string, string>> = {
  archer: 'archer',
  bow: 'bow',
  arrowSet: 'arrow set',
  setup: 'set-up',
  group: 'group of shots',
  snapshot: 'snapshot',
  trial: 'trial',
  picture: 'picture of a target',
  scoreSheet: 'score sheet',
  sightMark: 'sight mark',
};

const unreadable = (row: RecordRow): Problem => ({
  code: 'record-unreadable',
  sentence: `One ${kindInWords[row.kind] ?? 'record'} in the notebook cannot be read by this version. It was left in the file as it is; the rest is here. (${row.id})`,
});

/** How a sentence names a record. */
export function nameOf(record: BenchRecord): string {
  return 'name' in record ? `"${record.name}"` : `this ${kindInWords[record.kind] ?? 'record'}`;
}
