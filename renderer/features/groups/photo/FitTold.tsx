import type { Face } from '../../../../core/group/index.ts';
import type { UnitChoice } from '../../../../core/model/preferences.ts';
import { placeOn, toPicture, type FaceFit } from '../../../../core/photo/index.ts';
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
  const worst = worstError(fit, face);
  const edge = fit.turn * (face.rings[0]?.radius ?? 0);
  return (
    <>
      <p className="note" data-residual={fit.residual}>
        The rings lie {fine(fit.residual)} off the face’s, root mean square of {fit.marks} {byHand ? 'marks' : 'places found'}.
        {worst !== null &&
          ` By them a place on the face is known to ${fine(worst)}, one standard deviation; the click adds its own.`}
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

/** The largest error that the rings leave at the last of them; null when they leave none to tell. */
function worstError(fit: FaceFit, face: Face): number | null {
  const radius = face.rings[0]?.radius ?? 0;
  const errors = [0, 1, 2, 3].map((quarter) => {
    const angle = (quarter * Math.PI) / 2;
    const at = { x: radius * Math.cos(angle), y: radius * Math.sin(angle) };
    return placeOn(fit, toPicture(fit.homography, at)).error;
  });
  return errors.some((error) => error === null) ? null : Math.max(...errors.map((error) => error ?? 0));
}
