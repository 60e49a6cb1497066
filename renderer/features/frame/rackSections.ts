import type { ReactNode } from 'react';
import type { Screen } from '../../../core/findings/finding.ts';
import { GroupsShelf } from '../groups/index.ts';
import { RecordShelf } from '../record/index.ts';
import { TrialsShelf } from '../trials/index.ts';

/** What a screen adds to the rack. */
export const rackSections: Partial<Record<Screen, () => ReactNode>> = {
  groups: GroupsShelf,
  trials: TrialsShelf,
  record: RecordShelf,
};
