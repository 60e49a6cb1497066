import type { Stamp } from '../core/model/index.ts';

/** The only place where the host asks for the time. */
export function now(): Stamp {
  const moment = new Date();
  return { at: moment.toISOString(), offsetMinutes: -moment.getTimezoneOffset() };
}
