import { useMemo } from 'react';
import { compareHeadline, compareSetups } from '../../../core/compare/index.ts';
import { shootingStops, stopsOf } from '../../../core/findings/index.ts';
import type { ShotBundle } from '../../../core/model/bundle.ts';
import { Fraction, Mark } from '../../design/index.ts';
import { shotBundleOf } from '../../state/selectors.ts';
import { useBench, useUnits } from '../../state/useBench.ts';
import { otherBundle, othersOf, type Other } from './choices.ts';
import { CompareTable } from './CompareTable.tsx';
import { EmptyCompare } from './EmptyCompare.tsx';
import { Overlays } from './Overlays.tsx';
import { overlayOf } from './overlay.ts';
import { useChosenOther } from './store.ts';
import { toldOf } from './told.ts';
import './compare.css';

/** Two set-ups side by side: what differs, what is noise, and how both shoot. */
export function Compare() {
  const records = useBench((state) => state.records);
  const setupId = useBench((state) => state.setupId);
  const reference = shotBundleOf(records, setupId);
  const others = useMemo(() => (setupId === null ? [] : othersOf(records, setupId)), [records, setupId]);
  const chosen = useChosenOther(setupId);
  const other = others.find((one) => one.id === chosen) ?? others[0];
  const bundle = useMemo(() => (other === undefined ? null : otherBundle(records, other)), [records, other]);
  if (reference === null) return <div className="body" />;
  if (other === undefined || bundle === null) return <EmptyCompare name={reference.setup.name} />;
  return <Two reference={reference} other={bundle} which={other} others={others} />;
}

interface TwoProps {
  reference: ShotBundle;
  other: ShotBundle;
  which: Other;
  others: readonly Other[];
}

function Two({ reference, other, which, others }: TwoProps) {
  const units = useUnits();
  const rows = useMemo(() => compareSetups(reference, other, units), [reference, other, units]);
  const overlay = useMemo(() => overlayOf(reference, other, units), [reference, other, units]);
  const stopped = useMemo(() => [reference, other].map((bundle) => stopsOf(bundle, units)), [reference, other, units]);
  const told = toldOf(reference, other, overlay.ok ? overlay.value.told : null);
  const stops = useMemo(
    () =>
      [reference, other].flatMap((bundle, index) =>
        shootingStops(bundle, units).map((stop) => ({ id: `${index}${stop.id}`, name: bundle.setup.name, stop })),
      ),
    [reference, other, units],
  );
  return (
    <>
      <div className="head">
        <h1>
          <Fraction>{compareHeadline(rows, reference, other, units)}</Fraction>
        </h1>
        <p>
          Bars start at the first column, each on its own scale. Grey is within the noise; a bar with an end is a difference to
          believe.
        </p>
      </div>
      <div className="body compare">
        {stops.map(({ id, name, stop }) => (
          <p key={id} className="compare-stop">
            <Mark level="stop" />
            <span>
              <b>{name}:</b> <Fraction>{`${stop.title}. ${stop.detail}`}</Fraction>
            </span>
          </p>
        ))}
        {told !== null && (
          <p className="compare-told">
            <Mark level="caution" />
            <span>
              <b>{told.sentence}</b> <Fraction>{told.facts}</Fraction>
            </span>
          </p>
        )}
        <CompareTable
          rows={rows}
          reference={reference}
          other={other}
          which={which}
          others={others}
          stopped={stopped.map((list) => list.length > 0)}
        />
        <Overlays reference={reference} other={other} overlay={overlay} stopped={stopped.some((list) => list.length > 0)} />
      </div>
    </>
  );
}
