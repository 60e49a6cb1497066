import type { Bundle } from '../model/bundle.ts';
import type { ShotGroup } from '../model/group.ts';
import type { UnitChoice } from '../model/preferences.ts';
import type { Problem } from '../model/problem.ts';
import type { Shift } from '../group/index.ts';

/** What is known when the next change is chosen. */
export interface Evidence {
  readonly bundle: Bundle;
  readonly fletched: ShotGroup;
  readonly bare: ShotGroup;
  readonly units: UnitChoice;
  readonly problem: Problem | null;
  readonly shift: Shift | null;
  readonly lateral: 'stiff' | 'weak' | null;
  readonly vertical: 'nocking point high' | 'nocking point low' | null;
  readonly erratic: boolean;
  /** Of the fletched group [m]: mean radius, and its farthest arrow from its centre; null when it has no spread. */
  readonly fletchedRadius: number | null;
  readonly fletchedFarthest: number | null;
}
