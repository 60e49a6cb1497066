import type { Archer } from './archer.ts';
import type { ArrowSet } from './arrowSet.ts';
import type { Bow } from './bow.ts';
import type { ShotGroup } from './group.ts';
import type { Setup } from './setup.ts';

/** A set-up with the records it points to: what every check, reading and comparison takes. */
export interface Bundle {
  readonly archer: Archer;
  readonly bow: Bow;
  readonly arrowSet: ArrowSet;
  readonly setup: Setup;
}

/** The same with the groups shot with it, oldest first, archived ones left out. */
export interface ShotBundle extends Bundle {
  readonly groups: readonly ShotGroup[];
}
