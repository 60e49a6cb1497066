import type { Bundle } from '../../../core/model/bundle.ts';
import { useSize } from '../../design/index.ts';
import { useBundle } from '../../state/useBench.ts';
import { useFormKind } from '../frame/formKind.ts';
import { HeadWithSwitch } from '../frame/FormSwitch.tsx';
import { Headline } from '../frame/Headline.tsx';
import { useFindings } from '../frame/useFindings.ts';
import { DrawingForm } from './DrawingForm.tsx';
import { PlainForm } from './PlainForm.tsx';
import { useBowFields } from './useBowFields.ts';
import './bow.css';

/** Everything a tape, a square and a bow scale can say of this archer and this bow: on the drawing, or row by row. */
export function Bow() {
  const bundle = useBundle();
  return bundle === null ? null : <BowPage bundle={bundle} />;
}

/** Whether no figure of the bow has been entered: a drawing in pencil alone finds nothing in order. */
function nothingMeasured({ bow, setup }: Bundle): boolean {
  const { braceHeight, tiller, nockingPoint, centreShot, weightOnFingers, strands } = setup.settings;
  const entered = [braceHeight, tiller, nockingPoint, centreShot, weightOnFingers, strands, bow.length, bow.markedWeight];
  return bow.forceDraw.length === 0 && entered.every((figure) => figure === null);
}

function BowPage({ bundle }: { bundle: Bundle }) {
  const kind = useFormKind();
  const findings = useFindings();
  const fields = useBowFields(bundle);
  const [body, room] = useSize();
  return (
    <>
      <HeadWithSwitch>
        <Headline
          screen="bow"
          clear={
            bundle.bow.bowKind === 'compound'
              ? 'A compound is recorded here, and not judged'
              : 'Nothing measured on this bow is out of range'
          }
          blank={nothingMeasured(bundle)}
          note={
            kind === 'drawing'
              ? 'Every figure on the drawing is a field. Grey is drawn, not measured.'
              : 'Enter keeps a figure, Esc gives the old one back. Any unit may follow a number: 8 3/4 in, 222 mm, 38 lb.'
          }
        />
      </HeadWithSwitch>
      <div className="body" ref={body}>
        {kind === 'plain form' ? (
          <PlainForm bundle={bundle} fields={fields} />
        ) : (
          room !== null && (
            <DrawingForm bundle={bundle} fields={fields} findings={findings} width={room.width - 48} height={room.height - 24} />
          )
        )}
      </div>
    </>
  );
}
