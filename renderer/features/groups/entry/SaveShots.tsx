import type { ShotGroup } from '../../../../core/model/group.ts';
import { fileName } from '../../../../core/files.ts';
import { writeCsv } from '../../../export/csv.ts';
import { useBench, useBenchApi, useBundle, useUnits } from '../../../state/useBench.ts';
import { shelfText } from '../shelfText.ts';
import { shotsTable } from './shotsCsv.ts';

/** A group's shots as a file for a table program, which the bench reads back. */
export function SaveShots({ group, text }: { group: ShotGroup; text: string }) {
  const bench = useBenchApi();
  const units = useUnits();
  const setupName = useBundle()?.setup.name ?? '';
  const demo = useBench((state) => state.book) === 'demo' ? 'demo' : '';
  const save = () => {
    const name = fileName([demo, setupName, `shots, ${shelfText(group, units)}`], 'csv');
    void bench.getState().save({ name, kind: 'csv', data: writeCsv(shotsTable(group.shots, units)) });
  };
  return (
    <button type="button" className="link" disabled={group.shots.length === 0} onClick={save}>
      {text}
    </button>
  );
}
