import { markContext, marksPicture } from '../../core/aim/index.ts';
import { marksSpeedFinding, sightMarksFinding, unprovenFinding } from '../../core/findings/index.ts';
import { exampleNow, type Settings, type ShotBundle, type SightMark, type UnitChoice } from '../../core/model/index.ts';
import { sentences, sound, titles } from './sound.ts';

/** Three marks of this set-up and one from before something changed, whether or not any flight passes them. */
export function expectSoundMarks(bundle: ShotBundle, units: UnitChoice): void {
  const { settings } = bundle.setup;
  const grown = settings.sightGrows === 'up' ? -1 : 1;
  const mark = (distance: number, reading: number, then: Partial<Settings> = {}): SightMark => ({
    ...bundle.setup,
    kind: 'sightMark',
    setupId: bundle.setup.id,
    distance,
    reading,
    shots: null,
    leftOut: null,
    note: '',
    context: markContext({ ...bundle, setup: { ...bundle.setup, settings: { ...settings, ...then } } }, exampleNow),
  });
  const scale = (settings.sightUnit ?? 0.001) / 0.001;
  const marks = [
    mark(18, (grown * 40) / scale),
    mark(30, (grown * 55) / scale),
    mark(50, (grown * 85) / scale),
    mark(40, 70, { nockingPoint: 0.004, braceHeight: 0.2 }),
  ];
  for (const some of [marks, marks.slice(3), marks.slice(0, 1)]) {
    const picture = marksPicture(bundle, some, null);
    sound('marks', picture.fit);
    sound(
      'moved',
      picture.unproven.map(({ moved }) => moved),
    );
    if (picture.fit?.ok === false) sentences(picture.fit.problem.sentence);
    if (picture.fit?.ok === true) sentences(...picture.fit.value.notes.map(({ sentence }) => sentence));
    for (const found of [sightMarksFinding(picture, units), unprovenFinding(picture, units), marksSpeedFinding(picture, units)]) {
      if (found === null) continue;
      sound('finding of marks', found);
      titles(found.title, found.short.word);
      sentences(found.detail, found.why?.text ?? null);
    }
  }
}
