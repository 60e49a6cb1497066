/**
 * Units that core's rooms count in where a rule of the trade is worded in them. Exact: the international yard and pound (1959)
 * and standard gravity (CGPM 1901).
 */
export const inch = 0.0254;
export const grain = 6.479891e-5;
export const poundForce = 4.4482216152605;
export const standardGravity = 9.80665;
