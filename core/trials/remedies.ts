import { stopsOf } from '../findings/all.ts';
import type { Bundle } from '../model/bundle.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { inch } from '../units/exact.ts';
import { textQuantity } from '../units/index.ts';
import { boltStep } from './boltStep.ts';
import { pointStep } from './pointStep.ts';
import type { NextStep } from './reading.ts';
import { lowered, stepOf } from './step.ts';

/** Arrows are shortened by this at a time [m]. */
const SHORTER = 0.25 * inch;

/**
 * The further remedies for a stiff or weak reading, in the trade's order, with their cautions.
 *
 * @equation stiff: bolts in, heavier point, lighter string, longer or weaker shaft; weak: bolts out, lighter point, shorter shaft, heavier string, stiffer shaft; last the trial of the brace height
 * @param bundle - the set-up with its records [record]
 * @param lateral - the reading [choice]
 * @param units - the person's choice of units [record]
 * @param then - what to shoot after each [text]
 * @returns the steps; a remedy that would make the arrow too short or too light for the bow stands as a stop [list]
 * @validity one change at a time
 * @source common practice
 * @example sideRemedies(exampleBundle, 'stiff', defaultPreferences.units, '')[0].title // "Both limb bolts in by 1/2 to 1 turn"
 */
export function sideRemedies(bundle: Bundle, lateral: 'stiff' | 'weak', units: UnitChoice, then: string): readonly NextStep[] {
  const stiff = lateral === 'stiff';
  const change = (title: string, text: string, caution: string | null) => stepOf('change', title, text, { then, caution });
  return [
    bundle.bow.bowKind === 'take-down recurve' ? boltStep(bundle, lateral, units, then) : null,
    bundle.bow.arrowPass === 'hand' ? null : pointStep(bundle, lateral, units, then),
    stiff ? null : shorterStep(bundle, units, then),
    change(
      stiff ? 'A lighter string' : 'A heavier string',
      `The trade says that it makes the shaft act ${stiff ? 'weaker' : 'stiffer'}; reckoning does not agree, so let the groups say.`,
      'Low-stretch fibre only on bows rated for it. Measure brace height and nocking point again.',
    ),
    change(
      stiff ? 'Last: a longer or weaker shaft' : 'Last: a stiffer shaft',
      'New shafts, once everything that can be turned has been.',
      'Look at the load on the shaft and the arrow\u2019s mass before any is bought.',
    ),
    change(
      `Or try the brace height ${textQuantity(units.length === 'in' ? inch / 8 : 0.003, 'length', units)} either way`,
      'Sources give both signs for what it does to the reading: shoot both ways and let the groups say.',
      'Keep inside its range.',
    ),
  ].filter((step) => step !== null);
}

function shorterStep(bundle: Bundle, units: UnitChoice, then: string): NextStep {
  const by = textQuantity(SHORTER, 'length', units);
  const stop = stopsOf(shorter(bundle), units)[0];
  if (stop !== undefined)
    return stepOf('stop', 'Do not shorten these arrows', `${by} less, and then: ${lowered(stop.title)}. ${stop.detail}`, {});
  return stepOf('change', `Shorten the arrows by ${by}`, 'A shorter shaft acts stiffer. Try it on one arrow first.', {
    then,
    caution: 'Length for safety comes first, and a cut cannot be undone.',
  });
}

function shorter(bundle: Bundle): Bundle {
  const { arrowSet, setup } = bundle;
  const less = (length: number | null) => (length === null ? null : length - SHORTER);
  const weighed = arrowSet.weighed === null ? null : arrowSet.weighed - SHORTER * (arrowSet.linearDensity ?? 0);
  return {
    ...bundle,
    arrowSet: { ...arrowSet, length: less(arrowSet.length), weighed },
    setup: { ...setup, settings: { ...setup.settings, pointAhead: less(setup.settings.pointAhead) } },
  };
}

/**
 * What else to look at when the bare shafts show a height.
 *
 * @equation low: nock fit, then tiller; high: clearance
 * @param vertical - what the height reads [choice]
 * @param then - what to shoot after each [text]
 * @returns the steps [list]
 * @validity one change at a time
 * @source common practice
 * @example heightRemedies('nocking point low', '')[0].title // "Test the clearance"
 */
export function heightRemedies(vertical: 'nocking point high' | 'nocking point low', then: string): readonly NextStep[] {
  if (vertical === 'nocking point low') return [clearanceStep('change', then)];
  return [
    stepOf(
      'change',
      'Check the nock fit',
      'The arrow hangs on the string, and a light tap frees it. Too tight also reads stiffer.',
      { then },
    ),
    stepOf('change', 'Check the tiller', 'Draw slowly on a mark: a balanced bow neither climbs nor dives.', { then }),
  ];
}

/**
 * The test for fletching or shaft touching the bow.
 *
 * @equation dry powder on fletching, rest and window, three shots, look at the traces
 * @param kind - whether it stops the trial or is a remedy among others [choice]
 * @param then - what to shoot after it [text]
 * @returns the step [record]
 * @validity a helper loads, so that no false marks are made
 * @source common practice
 * @example clearanceStep('stop', '').title // "Stop the trial: test the clearance"
 */
export function clearanceStep(kind: 'stop' | 'change', then: string): NextStep {
  return stepOf(
    kind,
    kind === 'stop' ? 'Stop the trial: test the clearance' : 'Test the clearance',
    'Dry spray powder on the fletching end, the rest and the window; three fletched shots, a helper loading. Only a slide trace on the shaft is normal. If fletching touches, turn the nock a little and repeat.',
    {
      then,
      caution:
        kind === 'stop' ? 'If nothing touches, it is the release: shoot no more bare shafts until a coach has looked.' : null,
    },
  );
}
