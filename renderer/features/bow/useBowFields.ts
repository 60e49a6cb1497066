import { useMemo } from 'react';
import { carriedSentence, setupSpeed, tillerOf, withTiller } from '../../../core/bow/index.ts';
import type { Bow } from '../../../core/model/bow.ts';
import type { Bundle } from '../../../core/model/bundle.ts';
import type { UnitChoice } from '../../../core/model/preferences.ts';
import type { Settings } from '../../../core/model/setup.ts';
import { figuresOf, type FigureSpec } from '../../design/figureSpecs.ts';
import type { FigureProps } from '../../design/index.ts';
import { readAt } from '../../state/births.ts';
import { useUnits } from '../../state/useBench.ts';
import { useEdits } from '../../state/useEdits.ts';

type FiguresOf<T> = { [K in keyof T]-?: T[K] extends number | null ? K : never }[keyof T];
// The sight's own figures are entered where it is used, on Aim.
type SettingField = Exclude<FiguresOf<Settings>, 'weightDraw' | 'speedMass' | 'speedBrace' | `sight${string}`>;
type BowField = Exclude<FiguresOf<Bow>, 'forceDrawBrace' | 'revision'>;

const settingSpecs: Readonly<Record<SettingField, FigureSpec>> = {
  braceHeight: {
    measure: 'braceHeight',
    name: 'brace height',
    label: 'Brace height',
    hint: 'String to the deepest point of the grip, square to the string.',
  },
  weightOnFingers: {
    measure: 'weightOnFingers',
    name: 'weight on the fingers',
    label: 'Weight on the fingers',
    hint: 'Read on a bow scale at this archer’s full draw, with an arrow nocked and the string let down slowly.',
  },
  nockingPoint: {
    measure: 'nockingPoint',
    name: 'nocking point',
    label: 'Nocking point',
    hint: 'Bottom of the nocked arrow above square to the string.',
  },
  tiller: {
    measure: 'tiller',
    name: 'tiller',
    label: 'Tiller',
    hint: 'Top minus bottom, limb root to string. Typed here, it takes the place of the two distances.',
  },
  tillerUpper: {
    measure: 'limbToString',
    name: 'upper limb to string',
    label: 'Upper limb to string',
    hint: 'From the limb’s root, square to the string.',
  },
  tillerLower: {
    measure: 'limbToString',
    name: 'lower limb to string',
    label: 'Lower limb to string',
    hint: 'From the limb’s root, square to the string.',
  },
  centreShot: {
    measure: 'centreShot',
    name: 'centre shot',
    label: 'Centre shot',
    hint: 'Outside the string, away from the riser.',
  },
  buttonTurns: {
    measure: 'buttonTurns',
    name: 'button',
    label: 'Button',
    hint: 'Turns in from fully out. Feel which way firms it: makers differ.',
  },
  buttonPreload: {
    measure: 'buttonPreload',
    name: 'button preload',
    label: 'Preload of the button',
    hint: 'The force at which the button just begins to give.',
  },
  buttonRate: {
    measure: 'buttonRate',
    name: 'button stiffness',
    label: 'Stiffness of the button',
    hint: 'How much more force each millimetre takes.',
  },
  upperBolt: { measure: 'boltTurns', name: 'upper bolt', label: 'Upper limb bolt', hint: 'Turns out from fully in.' },
  lowerBolt: { measure: 'boltTurns', name: 'lower bolt', label: 'Lower limb bolt', hint: 'Turns out from fully in.' },
  strands: { measure: 'strands', name: 'strands', label: 'Strands of the string' },
  stringLength: {
    measure: 'stringLength',
    name: 'string length',
    label: 'String length',
    hint: 'From loop to loop, stretched between pins; a bow is marked 3 in longer.',
  },
  stringMass: {
    measure: 'stringMass',
    name: 'string mass',
    label: 'String mass',
    hint: 'With its servings and nocking points.',
  },
  twists: { measure: 'twists', name: 'twists', label: 'Twists of the string' },
  pointAhead: {
    measure: 'pointAhead',
    name: 'shaft ahead of the rest',
    label: 'Shaft ahead of the rest',
    hint: 'End of shaft beyond the rest at the deepest draw, if you have looked. Otherwise it is worked out.',
  },
  arrowSpeed: {
    measure: 'arrowSpeed',
    name: 'arrow speed',
    label: 'Arrow speed',
    hint: 'From a chronograph, if there is one.',
  },
};

const bowSpecs: Readonly<Record<BowField, FigureSpec>> = {
  length: { measure: 'bowLength', name: 'length', label: 'Bow length', hint: 'As marked: string master plus 3 in.' },
  markedWeight: {
    measure: 'markedWeight',
    name: 'marked weight',
    label: 'Marked weight',
    hint: 'On the limb. Used with a band until a scale says better.',
  },
  markedDraw: {
    measure: 'markedDraw',
    name: 'marked at',
    label: 'Draw the weight is marked at',
    hint: 'AMO draw; 28 in unless the maker says otherwise.',
  },
  braceLow: { measure: 'braceHeight', name: 'brace, least', label: 'Least brace height' },
  braceHigh: {
    measure: 'braceHeight',
    name: 'brace, most',
    label: 'Most brace height',
    hint: 'From the bow’s papers. With both ends they govern; without them common practice is held against it, as a caution only.',
  },
  leastMassPerWeight: {
    measure: 'leastMassPerWeight',
    name: 'arrow mass, least',
    label: 'Least arrow mass',
    hint: 'Mass per draw weight, from the maker.',
  },
  strandsLow: { measure: 'strands', name: 'strands, fewest', label: 'Fewest strands' },
  strandsHigh: { measure: 'strands', name: 'strands, most', label: 'Most strands' },
  mostBoltTurns: {
    measure: 'boltTurns',
    name: 'bolts out, most',
    label: 'Most turns of a limb bolt',
    hint: 'How far out from fully in the maker lets a limb bolt be.',
  },
};

export interface BowFields {
  readonly settings: Readonly<Record<SettingField, FigureProps>>;
  readonly bow: Readonly<Record<BowField, FigureProps>>;
  readonly drawLength: FigureProps;
  readonly holdTime: FigureProps;
  readonly eyeHeight: FigureProps;
  readonly arrowLength: FigureProps;
}

/** Every figure of this bow and its archer with how it is kept: the same on the drawing and in the plain form. */
export function useBowFields(bundle: Bundle): BowFields {
  const edit = useEdits();
  const units = useUnits();
  return useMemo(() => bowFields(bundle, edit, units), [bundle, edit, units]);
}

function bowFields(bundle: Bundle, edit: ReturnType<typeof useEdits>, units: UnitChoice): BowFields {
  const { archer, bow, arrowSet, setup } = bundle;
  const settings = figuresOf('settings', settingSpecs, setup.settings, (label, patch) => edit.settings(label, patch));
  const speed = setupSpeed(bundle);
  const carried = speed.ok ? carriedSentence(speed.value, units) : null;
  const onBow = figuresOf('bow', bowSpecs, bow, (label, patch) => edit.bow(label, patch));
  return {
    settings: {
      ...settings,
      weightOnFingers: {
        ...settings.weightOnFingers,
        onKeep: (value) => edit.settings('Weight on the fingers', readAt(value, archer)),
      },
      arrowSpeed: carried === null ? settings.arrowSpeed : { ...settings.arrowSpeed, hint: carried, again: true },
      tiller: {
        ...settings.tiller,
        value: tillerOf(setup.settings),
        onKeep: (value) => edit.settings('Tiller', withTiller(value)),
      },
    },
    bow: {
      ...onBow,
      markedDraw: {
        ...onBow.markedDraw,
        required: true,
        onKeep: (markedDraw) => markedDraw !== null && edit.bow('Draw the weight is marked at', { markedDraw }),
      },
    },
    drawLength: {
      measure: 'drawLength',
      name: 'draw length',
      value: archer.drawLength,
      onKeep: (drawLength) => edit.drawLength(drawLength),
      hint: 'AMO: nocking point to the pivot of the grip at full draw, plus 1 3/4 in.',
      field: 'archer.drawLength',
    },
    holdTime: {
      measure: 'holdTime',
      name: 'holds full draw for',
      value: archer.holdTime,
      onKeep: (holdTime) => edit.archer('Time at full draw', { holdTime }),
      hint: 'Without a tremor, on a bow of this weight.',
      field: 'archer.holdTime',
    },
    eyeHeight: {
      measure: 'eyeHeight',
      name: 'eye above the arrow',
      value: setup.form.eyeHeight,
      onKeep: (eyeHeight) => edit.form('Eye above the arrow', { eyeHeight }),
      hint: 'At anchor, square to the arrow.',
      field: 'form.eyeHeight',
    },
    arrowLength: {
      measure: 'arrowLength',
      name: 'arrow length',
      value: arrowSet.length,
      onKeep: (length) => edit.arrowSet('Arrow length', { length }),
      hint: 'Throat of the nock to the end of the shaft; the point is not counted.',
      field: 'arrowSet.length',
    },
  };
}
