/**
 * What a figure is used for. The use, not the dimension, decides the unit it is shown in: an arrow is measured in inches
 * by the same person who paces its distance in metres.
 */
export type Use =
  | 'length' // bow, arrow, draw, brace height
  | 'setting' // small settings, and places on a face
  | 'weight' // draw weight (a force)
  | 'mass'
  | 'distance'
  | 'drop' // heights along a flight
  | 'speed'
  | 'deflection'
  | 'density' // mass per length of shaft
  | 'massPerWeight' // arrow mass per draw weight
  | 'stiffness' // bending stiffness
  | 'frequency'
  | 'energy'
  | 'time'
  | 'angle'
  | 'turns'
  | 'count'
  | 'ratio';
