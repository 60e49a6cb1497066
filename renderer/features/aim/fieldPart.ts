import type { Id } from '../../../core/model/common.ts';
import { type AimPart, chooseInAim } from './store.ts';

/** Which part of the page a field stands in; the figures that a flight rests on stand in the last. */
function partOf(field: string): AimPart {
  if (field.startsWith('marks.') || field.startsWith('settings.sight')) return 'marks';
  if (field.startsWith('conditions.')) return 'conditions';
  return ['aim.otherEye', 'archer.eyeAboveGround', 'form.eyeHeight'].includes(field) ? 'holds' : 'flight';
}

/** Brings up the part of the page that a field stands in, before the field can take the focus. */
export function showPartWith(setupId: Id, field: string): void {
  chooseInAim(setupId, { part: partOf(field) });
}
