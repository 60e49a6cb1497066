import fs from 'node:fs';
import path from 'node:path';
import sqlite from 'node-sqlite3-wasm';
import { describe, expect, it } from 'vitest';
import { type Archer, type Bow, NOTEBOOK_VERSION } from '../../core/model/index.ts';
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
  stamp,
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

  it.each(oldNotebooks)('%s opens with its records, its preferences and nothing that cannot be read', async (fixture) => {
    const notebook = await opened(notebookFrom(fixture));
    const { records, problems } = notebook.load();
    expect(problems).toEqual([]);
    expect(records.slice(0, 2)).toMatchObject([
      { kind: 'archer', name: 'Wren Alder', hand: 'left', revision: 3 },
      { kind: 'bow', name: 'Loan bow 4' },
    ]);
    expect(notebook.preferences()).toMatchObject({ theme: 'dark', units: { length: 'cm', weight: 'kg' } });
  });

  it('of version 1 opens with blanks for all that came later, and its undo history works', async () => {
    const notebook = await opened(notebookFrom('version-1.sql'));
    const { records, state } = notebook.load();
    expect(records).toMatchObject([
      { kind: 'archer', experience: 'settled', ageGroup: null, holdTime: null },
      { kind: 'bow', revision: 0, lookOver: null, dryFired: null, forceDraw: [], forceDrawBrace: null, strandsLow: null },
    ]);
    expect(wordsOf(state)).toEqual({ undo: 'Rename Wren', redo: 'Enter Hazel' });
    expect(valueOf(redone(notebook)).records).toMatchObject([{ record: { name: 'Hazel', revision: 2 } }]);
    valueOf(undone(notebook));
    expect(valueOf(undone(notebook)).records).toMatchObject([{ record: { name: 'Wren', revision: 4 } }]);
  });

  it('of version 1 takes what came later, and undo reaches back beyond it', async () => {
    const notebook = await opened(notebookFrom('version-1.sql'));
    const bow = notebook.load().records.find((record): record is Bow => record.kind === 'bow');
    if (bow === undefined) throw new Error('a bow was expected');
    const forceDraw: Bow['forceDraw'] = [{ draw: 0.6, force: 110, way: 'draw' }];
    valueOf(notebook.apply(change(bow, { ...bow, forceDraw, dryFired: stamp }, 'Readings')));
    expect(valueOf(undone(notebook)).records).toMatchObject([{ record: { name: 'Loan bow 4', forceDraw: [], dryFired: null } }]);
    expect(valueOf(undone(notebook)).records).toMatchObject([{ record: { name: 'Wren' } }]);
    valueOf(redone(notebook));
    expect(valueOf(redone(notebook)).records).toMatchObject([{ record: { forceDraw, dryFired: stamp } }]);
  });

  it('keeps the experience that was noted, and takes that it is not noted', async () => {
    const notebook = await opened(notebookFrom('version-1.sql'));
    const archer = notebook.load().records.find((record): record is Archer => record.kind === 'archer');
    if (archer === undefined) throw new Error('an archer was expected');
    expect(archer.experience).toBe('settled');
    valueOf(notebook.apply(change(archer, { ...archer, experience: null }, 'Experience')));
    expect(notebook.load()).toMatchObject({ problems: [], records: [{ experience: null }, {}] });
    expect(valueOf(undone(notebook)).records).toMatchObject([{ record: { experience: 'settled' } }]);
  });

  it('of version 2 opens with its readings, its numbered arrows and its string, and undo reaches back into version 1', async () => {
    const notebook = await opened(notebookFrom('version-2.sql'));
    const { records, state } = notebook.load();
    expect(records.slice(1)).toMatchObject([
      {
        kind: 'bow',
        lookOver: { by: 'Maud Thorne', string: 'flaw', serving: 'not looked at' },
        dryFired: { at: '2026-10-03T15:20:00Z' },
        forceDraw: { length: 8, 0: { draw: 0.254, way: 'draw' }, 7: { way: 'let-down' } },
        lowStretch: 'not allowed',
      },
      { kind: 'arrowSet', vaneCount: 3, arrows: [{ number: 1, spines: { length: 4 } }, { number: 2 }, { setAside: false }] },
      { kind: 'setup', settings: { stringMaterial: 'polyester', strands: 16 }, chronograph: [{ speed: 47.9 }, { speed: 43.6 }] },
    ]);
    expect(wordsOf(state)).toEqual({ undo: 'Begin Wren Alder', redo: 'Set arrow 3 aside' });
    expect(valueOf(redone(notebook)).records).toMatchObject([{ record: { arrows: { 2: { number: 3, setAside: true } } } }]);
    for (let i = 0; i < 3; i++) valueOf(undone(notebook));
    expect(notebook.load().records).toMatchObject([{ name: 'Wren Alder' }, { name: 'Loan bow 4', forceDraw: [] }]);
    expect(valueOf(undone(notebook)).records).toMatchObject([{ record: { name: 'Wren' } }]);
  });

  it('of version 3 opens with its trial, its picture, its score sheet and the shot left out, and undo puts the shot back', async () => {
    const notebook = await opened(notebookFrom('version-3.sql'));
    const { records, state } = notebook.load();
    const fletched = '30000000-0000-4000-8000-000000000006';
    expect(records.slice(4)).toMatchObject([
      { id: fletched, kind: 'group', shots: { length: 6, 3: { end: 2, leftOut: null }, 5: { leftOut: 'the nock burst' } } },
      { kind: 'group', fletching: 'bare', shots: { length: 4 } },
      {
        kind: 'trial',
        trial: 'bare shaft',
        groups: [{ distance: 18, step: null, first: fletched }],
        clearance: [{ touched: ['fletching', 'rest'] }, { touched: [], nockTurn: 0.03125 }],
        changes: [{ patch: { buttonTurns: 2.75 } }],
        ended: null,
      },
      { kind: 'picture', groupId: fletched, homography: { length: 9 }, residual: 0.0017 },
      {
        kind: 'scoreSheet',
        ends: [
          ['X', 9, 8],
          [10, 7, 0],
        ],
      },
    ]);
    expect(wordsOf(state)).toEqual({ undo: 'Leave a shot out', redo: 'End the trial' });
    expect(valueOf(redone(notebook)).records).toMatchObject([{ record: { ended: { at: '2027-03-06T11:30:00Z' } } }]);
    valueOf(undone(notebook));
    expect(valueOf(undone(notebook)).records).toMatchObject([
      { record: { id: fletched, shots: { 5: { end: 2, leftOut: null } } } },
    ]);
    for (let i = 0; i < 5; i++) valueOf(undone(notebook));
    expect(notebook.load().records).toMatchObject([{ name: 'Wren Alder' }, { name: 'Loan bow 4' }]);
  });

  it('of version 4 opens with its sight marks, the sight’s scale and the check line, and undo reaches back into version 3', async () => {
    const notebook = await opened(notebookFrom('version-4.sql'));
    const { records, state } = notebook.load();
    expect(records.filter(({ kind }) => kind === 'setup' || kind === 'sightMark')).toMatchObject([
      {
        settings: { sightUnit: 0.0015875, sightGrows: 'up', sightLowest: 0, sightHighest: 60, sightRadius: 0.81 },
        flightSpeeds: [
          { distance: 1, speed: 47.9 },
          { distance: 18, speed: 46.6 },
        ],
      },
      { distance: 18, reading: 41.5, shots: 6, leftOut: null, archivedAt: null, context: { weather: 'still' } },
      { distance: 27.432, reading: 37, shots: null, leftOut: 'gusty', context: { settings: { sightGrows: 'up' } } },
    ]);
    expect(notebook.preferences()).toMatchObject({ theme: 'dark', checkLine: 0.0495 });
    expect(wordsOf(state)).toEqual({ undo: 'Leave the mark for 30 yd out', redo: 'Put the mark for 18 m away' });
    expect(valueOf(undone(notebook)).records).toMatchObject([{ record: { distance: 27.432, leftOut: null } }]);
    for (let i = 0; i < 3; i++) valueOf(undone(notebook));
    const setup = notebook.load().records.find(({ kind }) => kind === 'setup');
    expect(setup).toMatchObject({ settings: { sightUnit: null, sightGrows: null }, flightSpeeds: [] });
    expect(valueOf(undone(notebook)).records).toMatchObject([{ record: { shots: { 5: { leftOut: null } } } }]);
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
    expect(rows()).toEqual([...older, `The notebook moved to version ${NOTEBOOK_VERSION + 1}`, 'Rename']);

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
    expect(problem.sentence).toContain(
      `newer Fistmele (notebook version ${NOTEBOOK_VERSION + 1}; this one knows ${NOTEBOOK_VERSION})`,
    );
    expect(fs.readFileSync(file).equals(bytes)).toBe(true);
  });
});
