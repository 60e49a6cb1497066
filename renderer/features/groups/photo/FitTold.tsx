import type { Face } from '../../../../core/group/index.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import type { FaceFit } from '../../../../core/photo/index.ts';
import { lengthText } from './fineText.ts';
import { isFarOff } from './ringMarks.ts';

interface Props {
  face: Face;
  fit: FaceFit;
  byHand: boolean;
  /** Whether somebody marked which way is up. */
  isUp: boolean;
  notes: readonly string[];
  units: UnitChoice;
}

/** How well the rings lie on the face, and what is in doubt about it. */
export function FitTold({ face, fit, byHand, isUp, notes, units }: Props) {
  const fine = (metres: number) => lengthText(metres, units);
  const edge = fit.turn * (face.rings[0]?.radius ?? 0);
  return (
    <>
      <p className="note" data-residual={fit.residual}>
        The rings lie {fine(fit.residual)} off the face’s, root mean square of {fit.marks} {byHand ? 'marks' : 'places found'}.
      </p>
      {byHand && isFarOff(fit, face) && (
        <p className="note caution-text">
          That is much for marks on the right rings: see that the lines drawn lie on the rings, and that this face hangs there.
        </p>
      )}
      {byHand && fit.covariance === null && (
        <p className="note caution-text">No mark is to spare: with a few more, the bench can tell how well they fit.</p>
      )}
      {notes.map((note) => (
        <p key={note} className="note">
          {note}
        </p>
      ))}
      <p className="note">
        {isUp ? 'Up is where it was marked.' : `A camera held 2° out of level turns a place at the last ring by ${fine(edge)}.`}
      </p>
    </>
  );
}
