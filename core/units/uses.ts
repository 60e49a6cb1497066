/**
 * What a figure is used for. The use, not the dimension, decides the unit it is shown in: an arrow is measured in inches
 * by the same person who paces its distance in metres.
 */
const uses = [
  'length', // bow, arrow, draw, brace height
  'setting', // small settings, and places on a face
  'weight', // draw weight (a force)
  'mass',
  'distance',
  'drop', // heights along a flight
  'speed', // of an arrow
  'wind',
  'deflection',
  'density', // mass per length of shaft
  'massPerWeight', // arrow mass per draw weight
  'smallForce', // a button's spring, a pull at a limb tip
  'springRate', // force per length of a button or a string
  'weightPerLength', // how draw weight grows with the draw
  'inertia', // moment of inertia
  'stiffness', // bending stiffness
  'frequency',
  'energy',
  'time',
  'angle',
  'turns',
  'count',
  'ratio',
  'reading', // of a sight's scale, in its own numbers
  'temperature',
  'pressure', // of the air
  'humidity',
  'altitude', // of the ground above the sea
] as const;
export type Use = (typeof uses)[number];

/**
 * Whether a text names a use that this version knows: a snapshot of a later one may hold others, and is kept as it is.
 *
 * @equation the text is in the list of uses
 * @param text - the use as it was written down [text]
 * @returns true when a figure of that use can be shown here [choice]
 * @validity any text
 * @source own derivation
 * @example isUse('mass') // true
 */
export function isUse(text: string): text is Use {
  return (uses as readonly string[]).includes(text);
}
