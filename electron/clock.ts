import type { Stamp } from '../core/model/index.ts';

/** The only place where the host asks what time to write into a record. */
export function now(): Stamp {
  const moment = new Date();
  return { at: moment.toISOString(), offsetMinutes: -moment.getTimezoneOffset() };
}
