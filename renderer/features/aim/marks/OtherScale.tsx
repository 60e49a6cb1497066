import { useUnits } from '../../../state/useBench.ts';
import { useEdits } from '../../../state/useEdits.ts';
import type { MarksView } from './derive.ts';
import { scaleHow } from './words.ts';

/** Marks that go together on another scale than was given or assumed: it is taken so in one step. */
export function OtherScale({ view }: { view: MarksView }) {
  const units = useUnits();
  const edit = useEdits();
  const { otherScale: other } = view;
  if (other === null) return null;
  const given = view.picture.scale;
  return (
    <p className="marks-scale" role="status">
      Read {scaleHow(view, units)} they go together.{' '}
      <button
        type="button"
        className="link"
        onClick={() =>
          void edit.settings('The sight’s scale', {
            ...(other.unit === given.unit ? {} : { sightUnit: other.unit }),
            ...(other.grows === given.grows ? {} : { sightGrows: other.grows }),
          })
        }
      >
        Take the scale so
      </button>
    </p>
  );
}
