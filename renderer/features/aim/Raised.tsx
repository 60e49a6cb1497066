import { raisedCaution } from '../../../core/aim/index.ts';
import { Mark } from '../../design/index.ts';

/** The caution where a shot asks for a bow that is raised far [rad]. */
export function Raised({ by }: { by: number }) {
  const caution = raisedCaution(by);
  return caution === null ? null : (
    <p className="caution-text">
      <Mark level="caution" /> {caution}
    </p>
  );
}
