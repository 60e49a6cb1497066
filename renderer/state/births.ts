import type { Archer, Form, Hand } from '../../core/model/archer.ts';
import type { ArrowSet } from '../../core/model/arrowSet.ts';
import type { Bow } from '../../core/model/bow.ts';
import type { Bundle } from '../../core/model/bundle.ts';
import type { Context, ShotGroup } from '../../core/model/group.ts';
import type { Picture } from '../../core/model/picture.ts';
import { markContext } from '../../core/aim/index.ts';
import type { ScoreSheet } from '../../core/model/scoreSheet.ts';
import type { SightMark } from '../../core/model/sightMark.ts';
import type { Settings, Setup } from '../../core/model/setup.ts';
import type { Trial, TrialKind, TrialPlan } from '../../core/model/trial.ts';
import { unmeasured } from '../../core/model/unmeasured.ts';
import { inch } from '../../core/units/exact.ts';
import { now } from './clock.ts';

const base = () => ({ id: crypto.randomUUID(), revision: 0, born: now(), archivedAt: null });

const noForm: Form = { anchor: null, hook: null, fingerCover: null, aiming: null, eyeHeight: null };

export const noSettings: Settings = unmeasured.settings;

/** A weight read on the scale, with the draw of the archer who read it: it holds for no other. */
export const readAt = (
  weightOnFingers: number | null,
  archer: Pick<Archer, 'drawLength'> | undefined,
): Pick<Settings, 'weightOnFingers' | 'weightDraw'> => ({
  weightOnFingers,
  weightDraw: weightOnFingers === null ? null : (archer?.drawLength ?? null),
});

export const newArcher = (name: string, hand: Hand): Archer => ({
  ...base(),
  kind: 'archer',
  name,
  hand,
  ...unmeasured.archer,
  clicker: false,
  form: noForm,
});

export const newBow = (name: string, hand: Hand): Bow => ({
  ...base(),
  kind: 'bow',
  name,
  bowKind: 'take-down recurve',
  hand,
  arrowPass: 'rest and button',
  markedDraw: 28 * inch,
  ...unmeasured.bow,
});

export const newArrowSet = (name: string): ArrowSet => ({
  ...base(),
  kind: 'arrowSet',
  name,
  material: 'carbon',
  convention: '28 in, 880 g',
  ...unmeasured.arrowSet,
});

export const newSetup = (name: string, archer: Archer, bow: Bow, arrowSet: ArrowSet, settings = noSettings): Setup => ({
  ...base(),
  kind: 'setup',
  name,
  archerId: archer.id,
  bowId: bow.id,
  arrowSetId: arrowSet.id,
  settings,
  form: archer.form,
  ...unmeasured.setup,
});

/** A new, empty group: it keeps copies of the form and the settings as they stand now, since the set-up will move on. */
export const newGroup = (
  bundle: Bundle,
  fletching: ShotGroup['fletching'],
  at: Pick<Context, 'distance' | 'face'>,
): ShotGroup => ({
  ...base(),
  kind: 'group',
  setupId: bundle.setup.id,
  fletching,
  context: {
    ...at,
    shotAt: now(),
    weather: '',
    light: '',
    kit: '',
    form: bundle.setup.form,
    settings: bundle.setup.settings,
    arrowSetId: bundle.arrowSet.id,
  },
  shots: [],
  note: '',
});

/** A trial before its first arrow: nothing of it is shot, and its cautions are still to be read. */
export const newTrial = (setupId: Setup['id'], trial: TrialKind, name: string, plan: TrialPlan): Trial => ({
  ...base(),
  kind: 'trial',
  setupId,
  trial,
  name,
  plan,
  cautionsRead: null,
  groups: [],
  tears: [],
  clearance: [],
  between: '',
  changes: [],
  ended: null,
  note: '',
});

/** Values written down without places; whoever shot them is known by the set-up. */
export const newScoreSheet = (
  setupId: ScoreSheet['setupId'],
  sheet: Pick<ScoreSheet, 'face' | 'distance' | 'ends'>,
): ScoreSheet => ({ ...base(), kind: 'scoreSheet', setupId, shotAt: now(), note: '', ...sheet });

/** A known mark of the sight, with copies of what it holds for. */
export const newSightMark = (bundle: Bundle, mark: Pick<SightMark, 'distance' | 'reading' | 'shots'>): SightMark => ({
  ...base(),
  kind: 'sightMark',
  setupId: bundle.setup.id,
  ...mark,
  leftOut: null,
  note: '',
  context: markContext(bundle, now()),
});

/** A photo of a target, made small, with how the face lies in it. */
export const newPicture = (
  groupId: Picture['groupId'],
  picture: Pick<Picture, 'jpeg' | 'width' | 'height' | 'homography' | 'residual'>,
): Picture => ({ ...base(), kind: 'picture', groupId, ...picture });
