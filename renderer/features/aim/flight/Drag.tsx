import { flightSpeedsListed } from '../../../../core/compare/index.ts';
import type { FlightBasis } from '../../../../core/aim/index.ts';
import type { Bundle } from '../../../../core/model/bundle.ts';
import { showQuantity, textQuantity, unitOf } from '../../../../core/units/index.ts';
import { WhyLink } from '../../../design/index.ts';
import { SheetRow } from '../../../design/SheetRow.tsx';
import { useUnits } from '../../../state/useBench.ts';
import { useEdits } from '../../../state/useEdits.ts';
import { FlightSpeedsSheet } from './FlightSpeedsSheet.tsx';
import { dragRests, dragTitle, dragWhy, launchNote, speedNotes } from './words.ts';

/** The drag figure, what it rests on, and the speeds along the flight that would tell it better. */
export function Drag({ bundle, basis }: { bundle: Bundle; basis: FlightBasis }) {
  const units = useUnits();
  const edit = useEdits();
  const { flightSpeeds, settings } = bundle.setup;
  const launch = launchNote(basis, basis.speed.from === 'carried' ? null : settings.arrowSpeed, units);
  return (
    <section className="flight-drag">
      <h2 className="plate">{dragTitle(basis, units)}</h2>
      <p className="note">
        {dragRests(basis)} <WhyLink why={dragWhy(basis, units)} about="drag" />
      </p>
      <SheetRow
        name="speeds along the flight"
        text={flightSpeeds.length === 0 ? 'Enter speeds' : flightSpeedsListed(flightSpeeds, units).text}
        field="setup.flightSpeeds"
        sheet={(close) => <FlightSpeedsSheet bundle={bundle} onClose={close} />}
      />
      {basis.along?.ok === true && <Readings basis={basis} />}
      {speedNotes(basis, units).map((note) => (
        <p key={note} className="note">
          {note}
        </p>
      ))}
      {launch !== null && (
        <p className="note">
          {launch.text}{' '}
          <button type="button" className="link" onClick={() => void edit.settings('Arrow speed', { arrowSpeed: launch.speed })}>
            Take it as the measured speed
          </button>
        </p>
      )}
    </section>
  );
}

/** Each speed beside what the others say of it. */
function Readings({ basis }: { basis: FlightBasis }) {
  const units = useUnits();
  if (basis.along?.ok !== true) return null;
  const speed = (si: number) => showQuantity(si, 'speed', units, { digits: units.speed === 'm/s' ? 1 : 0 }).figure;
  const unit = unitOf('speed', units);
  return (
    <table className="table flight-readings">
      <thead>
        <tr>
          <th scope="col">at</th>
          <th scope="col">read, {unit}</th>
          <th scope="col">others say</th>
          <th scope="col">
            <span className="heard">whether it fits</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {basis.along.value.readings.map(({ distance, speed: read, expected, verdict }, index) => (
          <tr key={index} className={verdict === 'does not fit' ? 'caution-text' : undefined}>
            <th scope="row">{textQuantity(distance, 'distance', units)}</th>
            <td>{speed(read)}</td>
            <td>{expected === null ? '–' : speed(expected)}</td>
            <td>{verdict === 'does not fit' ? 'does not fit' : verdict === 'agrees' ? 'agrees' : ''}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
