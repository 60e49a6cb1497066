/** Wind on the shooting line: along the shot, up, and to the archer's right [m/s]. A headwind has x below nought. */
export interface Wind {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}
