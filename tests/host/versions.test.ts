import fs from 'node:fs';
import path from 'node:path';
import sqlite from 'node-sqlite3-wasm';
import { describe, expect, it } from 'vitest';
import { NOTEBOOK_VERSION } from '../../core/model/index.ts';
import { type Migration, migrations } from '../../electron/notebook/migrations.ts';
import { aBow, change, opened, openedToClose, redone, refusalOf, tempNotebook, undone, valueOf, wordsOf } from './support.ts';

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

  it('that fails leaves the notebook at the version it had', async () => {
    const file = notebookFrom('version-1.sql');
    const broken: Migration = {
      to: NOTEBOOK_VERSION + 1,
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
