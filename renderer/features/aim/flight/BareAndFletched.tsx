import { useMemo } from 'react';
import { bareAndFletched, type BareFletchedAt, type FlightBasis } from '../../../../core/aim/index.ts';
import type { Bundle } from '../../../../core/model/bundle.ts';
import { factorOf } from '../../../../core/units/index.ts';
import { useSize, WhyLink } from '../../../design/index.ts';
import { Exportable } from '../../../export/index.ts';
import { NoseAngle } from '../../../plots/noseAngle/NoseAngle.tsx';
import { noseTable } from '../../../plots/noseAngle/table.ts';
import { Note } from '../../../plots/readAlong/Note.tsx';
import { Refused } from '../../../plots/readAlong/Refused.tsx';
import { useUnits } from '../../../state/useBench.ts';
import { noseLimits, noseNote, noseSaid, noseTitle, noseWhy } from './words.ts';

/** One degree: what a person sees as a little off. */
const NOSE = Math.PI / 180;
/** Bare shafts are shot to here, and their model is good for no more, in the shown unit of distance. */
const FAR = 30;
/** Where they are mostly shot. Common practice. */
const AT = { m: 18, yd: 20 } as const;

/** A bare and a fletched arrow of the same loose, the nose a degree off the path. */
export function BareAndFletched({ bundle, basis }: { bundle: Bundle; basis: FlightBasis }) {
  const units = useUnits();
  const [place, room] = useSize();
  const width = Math.max(280, Math.floor(room?.width ?? 440));
  const one = factorOf('distance', units);
  const rest = AT[units.distance] * one;
  const flown = useMemo(
    () =>
      bareAndFletched(
        bundle,
        basis,
        NOSE,
        Array.from({ length: 2 * FAR + 1 }, (_, i) => (i / 2) * one),
      ),
    [bundle, basis, one],
  );
  const title = noseTitle(NOSE);
  if (!flown.ok) return <Refused title={title} problem={flown.problem} />;
  const { at: samples } = flown.value;
  const at = (distance: number): BareFletchedAt => samples[Math.round((2 * distance) / one)] ?? (samples[0] as BareFletchedAt);
  const note = noseNote(flown.value, at(rest), units);
  return (
    <section ref={place} className="flight-nose">
      <h2 className="plate">{title}</h2>
      <p className="note">
        {note} <WhyLink why={noseWhy(flown.value)} about="the nose" />
      </p>
      <Exportable
        of="bare and fletched"
        title={title}
        note={note}
        sentence={`${title}. ${note}`}
        table={() => noseTable(samples, units)}
        beneath={noseLimits(flown.value).map((limit) => (
          <Note key={limit}>{limit}</Note>
        ))}
      >
        <NoseAngle
          samples={samples}
          width={width}
          sentence={`${title}. ${note}`}
          rest={rest}
          says={(distance) => noseSaid(at(distance), units)}
          at={at}
        />
      </Exportable>
    </section>
  );
}
