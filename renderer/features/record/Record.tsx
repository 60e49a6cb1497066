import { useMemo, useState } from 'react';
import { Fraction } from '../../design/index.ts';
import { Exportable } from '../../export/index.ts';
import { Timeline } from '../../plots/timeline/Timeline.tsx';
import { timelineTable } from '../../plots/timeline/table.ts';
import { shotBundleOf, snapshotsOf, trialsOf } from '../../state/selectors.ts';
import { useBench, useUnits } from '../../state/useBench.ts';
import { Diff } from './Diff.tsx';
import { diffOf } from './diff.ts';
import { EmptyRecord } from './EmptyRecord.tsx';
import { comparedOf } from './selectors.ts';
import { SnapshotsAway } from './SnapshotsAway.tsx';
import { useRecordChoice } from './store.ts';
import { TakeSnapshot } from './TakeSnapshot.tsx';
import { historyOf } from './timelineData.ts';
import { Tried } from './Tried.tsx';
import { recordHeadline } from './words.ts';
import './record.css';

/** The story of one bow: how it moved, what differs from a snapshot, and the way back. */
export function Record() {
  const records = useBench((state) => state.records);
  const setupId = useBench((state) => state.setupId);
  const units = useUnits();
  const version = useBench((state) => state.info?.version ?? '');
  const choice = useRecordChoice(setupId);
  const [taking, setTaking] = useState(false);
  const bundle = shotBundleOf(records, setupId);
  const bowId = bundle?.bow.id ?? '';
  const snapshots = snapshotsOf(records, bowId);
  const trials = trialsOf(records, setupId, false);
  const trialsAway = trialsOf(records, setupId, true);
  const compared = useMemo(() => (bundle === null ? null : comparedOf(records, bundle, choice)), [records, bundle, choice]);
  const diff = useMemo(() => (compared === null ? null : diffOf(compared, version, units)), [compared, version, units]);
  const history = useMemo(
    () => (bundle === null ? null : historyOf(bundle, bundle.groups, snapshots, compared, units, trials, trialsAway)),
    [bundle, snapshots, compared, units, trials, trialsAway],
  );
  if (bundle === null || history === null) return <div className="body" />;
  const { data } = history;

  return (
    <>
      <div className="head record-head">
        <div>
          <h1>
            <Fraction>
              {compared === null || diff === null ? 'No snapshot of this bow yet' : recordHeadline(compared, diff.differ)}
            </Fraction>
          </h1>
          <p>
            <Fraction>
              {compared === null
                ? 'A snapshot keeps everything as it stands today, so that it can be found again and put back.'
                : history.note}
            </Fraction>
          </p>
        </div>
        <button type="button" className="btn go" data-field="record.take" onClick={() => setTaking(true)}>
          Take a snapshot
        </button>
      </div>
      <div className="body record">
        {data !== null && (
          <Exportable
            of="time line"
            title={`How ${bundle.bow.name} moved`}
            note={history.note}
            sentence={history.sentence}
            table={() => timelineTable(data)}
            {...(compared === null
              ? {
                  beneath: (
                    <p className="note faint">
                      <Fraction>{history.note}</Fraction>
                    </p>
                  ),
                }
              : {})}
          >
            <Timeline data={data} sentence={history.sentence} />
          </Exportable>
        )}
        {compared === null && <EmptyRecord drawn={data === null} />}
        {compared !== null && diff !== null && (
          <Diff setupId={bundle.setup.id} compared={compared} diff={diff} snapshots={snapshots} />
        )}
        <Tried bundle={bundle} trials={trials} />
        <SnapshotsAway bowId={bowId} />
      </div>
      {taking && <TakeSnapshot bundle={bundle} onClose={() => setTaking(false)} />}
    </>
  );
}
