import { useMemo } from 'react';
import type { Archer, Form } from '../../core/model/archer.ts';
import type { ArrowSet } from '../../core/model/arrowSet.ts';
import type { Bow } from '../../core/model/bow.ts';
import type { BenchRecord, RecordEdit } from '../../core/model/records.ts';
import type { Settings, Setup } from '../../core/model/setup.ts';
import { allAlong } from './allAlong.ts';
import { edited, type Bench } from './bench.ts';
import { useBenchApi } from './useBench.ts';
import { bundleOf, setupsOf, type Records } from './selectors.ts';
import { settingsWith, timedAnew } from './timed.ts';

/** Writers for the set-up on the bench, the same ones for as long as the bench stands. */
export function useEdits() {
  const bench = useBenchApi();
  return useMemo(() => editsOf(bench), [bench]);
}

/** Each lays its patch over the record as it stands when the write's turn comes. */
export function editsOf(bench: Pick<Bench, 'getState'>) {
  const here = () => bundleOf(bench.getState().records, bench.getState().setupId);
  const change = (label: string, edits: (records: Records) => readonly RecordEdit[]) =>
    bench.getState().change(label, (records) => allAlong(records, edits(records)));

  const lay = <R extends BenchRecord>(which: 'archer' | 'bow' | 'arrowSet' | 'setup', label: string, patch: Partial<R>) => {
    const id = here()?.[which].id;
    if (id === undefined) return Promise.resolve(false);
    return change(label, (records) => {
      const record = records.get(id);
      return record === undefined ? [] : [edited(record as R, patch)];
    });
  };

  return {
    archer: (label: string, patch: Partial<Archer>) => lay<Archer>('archer', label, patch),
    /** A set-up that still bears its archer's name goes by the new one. */
    archerName(name: string) {
      const id = here()?.archer.id;
      return change('Name of the archer', (records) => {
        const archer = id === undefined ? undefined : records.get(id);
        if (archer?.kind !== 'archer') return [];
        const named = setupsOf(records).filter((setup) => setup.archerId === id && setup.name === archer.name);
        return [edited(archer, { name }), ...named.map((setup) => edited(setup, { name }))];
      });
    },
    /** The first draw on record is the one that the weight was read at; a later one is not, and the reading says so itself. */
    drawLength(drawLength: number | null) {
      const id = here()?.archer.id;
      return change('Draw length', (records) => {
        const archer = id === undefined ? undefined : records.get(id);
        if (archer?.kind !== 'archer') return [];
        const read = archer.drawLength !== null ? [] : setupsOf(records).filter((setup) => setup.archerId === id);
        const undrawn = read.filter(({ settings }) => settings.weightOnFingers !== null && settings.weightDraw === null);
        return [
          edited(archer, { drawLength }),
          ...undrawn.map((setup) => edited(setup, { settings: { ...setup.settings, weightDraw: drawLength } })),
        ];
      });
    },
    bow: (label: string, patch: Partial<Bow>) => lay<Bow>('bow', label, patch),
    arrowSet(label: string, patch: Partial<ArrowSet>) {
      const id = here()?.arrowSet.id;
      return change(label, (records) => {
        const before = id === undefined ? undefined : records.get(id);
        if (before?.kind !== 'arrowSet') return [];
        return [edited(before, patch), ...timedAnew(before, patch, setupsOf(records))];
      });
    },
    setup: (label: string, patch: Partial<Setup>) => lay<Setup>('setup', label, patch),
    settings(label: string, patch: Partial<Settings>) {
      const id = here()?.setup.id;
      return change(label, (records) => {
        const setup = id === undefined ? undefined : records.get(id);
        return setup?.kind === 'setup' ? [edited(setup, { settings: settingsWith(setup, patch, records) })] : [];
      });
    },
    /** The set-up's form, and with it the form this archer's next set-up starts from. */
    form(label: string, patch: Partial<Form>) {
      const id = here()?.setup.id;
      return change(label, (records) => {
        const setup = id === undefined ? undefined : records.get(id);
        if (setup?.kind !== 'setup') return [];
        const form = { ...setup.form, ...patch };
        const archer = records.get(setup.archerId);
        return [edited(setup, { form }), ...(archer?.kind === 'archer' ? [edited(archer, { form })] : [])];
      });
    },
  };
}
