import fs from 'node:fs';
import path from 'node:path';
import sqlite from 'node-sqlite3-wasm';
import { describe, expect, it } from 'vitest';
import { type Bow, NOTEBOOK_VERSION } from '../../core/model/index.ts';
import { type Migration, migrations } from '../../electron/notebook/migrations.ts';
import { keepCopy } from '../../electron/notebook/copies.ts';
import { openSql } from '../../electron/notebook/sql.ts';
import {
  aBow,
  change,
  opened,
  openedToClose,
  problemOf,
  redone,
  refusalOf,
  tempNotebook,
  undone,
  valueOf,
  wordsOf,
} from './support.ts';

const folder = path.join(import.meta.dirname, '../../fixtures/notebooks');
const oldNotebooks = fs.readdirSync(folder).filter((name) => name.endsWith('.sql'));

/** A notebook file made from a fixture's SQL, by the plain driver and not by the code under test. */
function notebookFrom(fixture: string): string {
  const file = tempNotebook();
  const db = new sqlite.Database(file);
  db.exec(fs.readFileSync(path.join(folder, fixture), 'utf8'));
  db.close();
  return file;
}

describe('A notebook of an older version', () => {
  it('is among the fixtures, one for each version there has been', () => {
    expect(oldNotebooks).toEqual(Array.from({ length: NOTEBOOK_VERSION }, (_, i) => `version-${i + 1}.sql`));
    expect(migrations.map(({ to }) => to)).toEqual(Array.from({ length: NOTEBOOK_VERSION }, (_, i) => i + 1));
  });

  it.each(oldNotebooks)('%s opens with its records, its undo history and its preferences', async (fixture) => {
    const notebook = await opened(notebookFrom(fixture));
    const { records, state, problems } = notebook.load();
    expect(problems).toEqual([]);
    expect(records).toMatchObject([
      { kind: 'archer', name: 'Wren Alder', hand: 'left', revision: 3 },
      { kind: 'bow', name: 'Loan bow 4', revision: 0 },
    ]);
    expect(wordsOf(state)).toEqual({ undo: 'Rename Wren', redo: 'Enter Hazel' });
    expect(notebook.preferences()).toMatchObject({ theme: 'dark', units: { length: 'cm', weight: 'kg' } });
    expect(valueOf(redone(notebook)).records).toMatchObject([{ record: { name: 'Hazel', revision: 2 } }]);
    valueOf(undone(notebook));
    expect(valueOf(undone(notebook)).records).toMatchObject([{ record: { name: 'Wren', revision: 4 } }]);
  });
});

/** Made up for this test: what a later version might do to every record. */
const renameBows: Migration = {
  to: NOTEBOOK_VERSION + 1,
  rewritesRecords: true,
  run: (sql) => sql.run("UPDATE record SET json = replace(json, 'Loan bow', 'Club bow') WHERE kind = 'bow'"),
};

describe('The step to a newer version', () => {
  it('is made once, with a copy of the older notebook kept beside it', async () => {
    const file = notebookFrom('version-1.sql');
    const first = await openedToClose(file, { migrations: [...migrations, renameBows] });
    expect(first.notebook.load().records).toMatchObject([{ name: 'Wren Alder' }, { name: 'Club bow 4' }]);
    await first.close();
    expect((await opened(`${file}.version-1`)).load().records).toMatchObject([{ name: 'Wren Alder' }, { name: 'Loan bow 4' }]);
    let ran = 0;
    const counted = { ...renameBows, run: () => void ran++ };
    await opened(file, { migrations: [...migrations, counted] });
    expect(ran).toBe(0);
  });

  it('that rewrites records seals the journal: what was before can be read, not undone; what comes after can', async () => {
    const file = notebookFrom('version-1.sql');
    const rows = () => {
      const sql = openSql(file);
      const labels = sql.all('SELECT label FROM journal ORDER BY seq').map(({ label }) => String(label));
      sql.close();
      return labels;
    };
    const older = rows();
    const first = await openedToClose(file, { migrations: [...migrations, renameBows] });
    expect(first.notebook.state).toEqual({ undo: null, redo: null });
    expect(problemOf(undone(first.notebook)).code).toBe('nothing-to-undo');
    const bow = first.notebook.load().records.find(({ kind }) => kind === 'bow') as Bow;
    valueOf(first.notebook.apply(change(bow, { ...bow, name: 'Spare bow' }, 'Rename')));
    await first.close();
    expect(rows()).toEqual([...older, 'The notebook moved to version 2', 'Rename']);

    const again = await opened(file, { migrations: [...migrations, renameBows] });
    expect(wordsOf(again.state)).toEqual({ undo: 'Rename', redo: null });
    expect(valueOf(undone(again)).records).toMatchObject([{ record: { name: 'Club bow 4' } }]);
    expect(wordsOf(again.state)).toEqual({ undo: null, redo: 'Rename' });
    valueOf(redone(again));
  });

  it('that leaves the records as they are leaves undo and redo too', async () => {
    const addTable: Migration = {
      to: NOTEBOOK_VERSION + 1,
      rewritesRecords: false,
      run: (sql) => sql.exec('CREATE TABLE later(id TEXT) STRICT'),
    };
    const notebook = await opened(notebookFrom('version-1.sql'), { migrations: [...migrations, addTable] });
    expect(wordsOf(notebook.state)).toEqual({ undo: 'Rename Wren', redo: 'Enter Hazel' });
    expect(valueOf(undone(notebook)).records).toMatchObject([{ record: { name: 'Wren' } }]);
  });

  it('never writes over an earlier copy, and leaves no half one', async () => {
    const file = notebookFrom('version-1.sql');
    fs.writeFileSync(`${file}.version-1`, 'an earlier copy');
    fs.writeFileSync(`${file}.version-1-2`, 'another');
    const notebook = await opened(file, { migrations: [...migrations, renameBows] });
    expect(notebook.load().records).toHaveLength(2);
    expect(fs.readFileSync(`${file}.version-1`, 'utf8')).toBe('an earlier copy');
    expect(fs.readFileSync(`${file}.version-1-2`, 'utf8')).toBe('another');
    expect((await opened(`${file}.version-1-3`)).load().records).toMatchObject([{ name: 'Wren Alder' }, { name: 'Loan bow 4' }]);
    expect(fs.readdirSync(path.dirname(file)).filter((name) => name.endsWith('.tmp'))).toEqual([]);
  });

  it('waits until the log is folded in before the copy is made', () => {
    const file = notebookFrom('version-1.sql');
    const sql = openSql(file);
    const busy: typeof sql = {
      ...sql,
      get: (statement, ...values) => (statement.includes('checkpoint') ? { busy: 1 } : sql.get(statement, ...values)),
    };
    expect(() => keepCopy(busy, file, 1)).toThrow('the log could not be folded in');
    sql.close();
    expect(fs.existsSync(`${file}.version-1`)).toBe(false);
  });

  it('that fails leaves the notebook at the version it had', async () => {
    const file = notebookFrom('version-1.sql');
    const broken: Migration = {
      to: NOTEBOOK_VERSION + 1,
      rewritesRecords: true,
      run: (sql) => {
        sql.exec('DELETE FROM record');
        throw new Error('the step broke off');
      },
    };
    const problem = await refusalOf(file, { migrations: [...migrations, broken] });
    expect(problem.sentence).toContain('the step broke off');
    expect((await opened(file)).load().records).toHaveLength(2);
  });

  it('taken by a newer Fistmele is recognised by an older one, which leaves the file alone', async () => {
    const file = tempNotebook();
    const newer = await openedToClose(file, { migrations: [...migrations, renameBows] });
    valueOf(newer.notebook.apply(change(null, aBow(1))));
    await newer.close();
    const bytes = fs.readFileSync(file);
    const problem = await refusalOf(file);
    expect(problem.code).toBe('notebook-newer');
    expect(problem.sentence).toMatch(/newer Fistmele \(notebook version 2; this one knows 1\)/);
    expect(fs.readFileSync(file).equals(bytes)).toBe(true);
  });
});
