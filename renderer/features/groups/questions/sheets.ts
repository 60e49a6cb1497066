import type { Id } from '../../../../core/model/common.ts';
import type { ScoreSheet } from '../../../../core/model/scoreSheet.ts';
import type { Records } from '../../../state/selectors.ts';

interface Sheets {
  readonly kept: readonly ScoreSheet[];
  readonly away: readonly ScoreSheet[];
}

/** The score sheets of a set-up, newest first: those on the page, and those put away. */
export function sheetsOf(records: Records, setupId: Id): Sheets {
  const all: ScoreSheet[] = [];
  for (const record of records.values()) if (record.kind === 'scoreSheet' && record.setupId === setupId) all.push(record);
  all.sort((a, b) => b.shotAt.at.localeCompare(a.shotAt.at));
  return { kept: all.filter(({ archivedAt }) => archivedAt === null), away: all.filter(({ archivedAt }) => archivedAt !== null) };
}
