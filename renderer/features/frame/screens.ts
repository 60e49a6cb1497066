import type { ComponentType } from 'react';
import type { Screen } from '../../../core/findings/finding.ts';
import { Aim } from '../aim/index.ts';
import { Arrow } from '../arrow/index.ts';
import { Bow } from '../bow/index.ts';
import { Compare } from '../compare/index.ts';
import { First } from '../first/index.ts';
import { Groups } from '../groups/index.ts';
import { Record } from '../record/index.ts';
import { Trials } from '../trials/index.ts';

export const screens: Record<Screen, { readonly title: string; readonly View: ComponentType }> = {
  first: { title: 'First window', View: First },
  bow: { title: 'Bow', View: Bow },
  arrow: { title: 'Arrow', View: Arrow },
  groups: { title: 'Groups', View: Groups },
  trials: { title: 'Trials', View: Trials },
  aim: { title: 'Aim', View: Aim },
  compare: { title: 'Compare', View: Compare },
  record: { title: 'Record', View: Record },
};

/** The screens in the order of the work, as the bar shows them. */
export const inBar = ['bow', 'arrow', 'groups', 'trials', 'aim', 'compare', 'record'] as const satisfies readonly Screen[];
