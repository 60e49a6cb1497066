import { refuse, type Problem, type Result } from '../../model/problem.ts';

/**
 * A bow as the model of the stroke sees it: both halves alike, each a rigid arm on a hinge that is a spring, the string elastic and with
 * mass. Places are measured from the pivot of the grip, x towards the archer, y up.
 */
export interface LimbBow {
  /** m_a [kg]. */
  readonly arrowMass: number;
  /** F(u), what a scale reads with the nocking point at u from the pivot [N]; 0 at the brace height. */
  readonly force: (u: number) => number;
  /** B, where the string rests [m]. */
  readonly brace: number;
  /** D, full draw, pivot to nocking point [m]: the AMO draw less 1.75 in. */
  readonly draw: number;
  /** x_h and y_h, the upper arm's hinge [m]. */
  readonly hingeX: number;
  readonly hingeY: number;
  /** ell, hinge to tip [m]. */
  readonly limb: number;
  /** m_t, the limb's mass as it is felt at its tip [kg]. */
  readonly tipMass: number;
  /** EA of the string [N]. */
  readonly stringStiffness: number;
  /** m_s, the whole string [kg]. */
  readonly stringMass: number;
  /** c_s of half a string, in tension only [N s/m]. */
  readonly stringDamping: number;
  /** c_h of each hinge [N m s]. */
  readonly hingeDamping: number;
  /** τ, how long the fingers still hold back, fading evenly [s]; 0 for a string that is simply gone. */
  readonly fingers: number;
}

type Figure = Exclude<keyof LimbBow, 'force'>;

/** Outside these nothing is a bow; inside them no step of the integration can become hopelessly small. */
const figures: Readonly<Record<Figure, readonly [name: string, low: number, high: number, unit: string]>> = {
  arrowMass: ['The arrow mass', 0.001, 0.2, 'kg'],
  brace: ['The brace height', 0.02, 0.6, 'm'],
  draw: ['The draw', 0.05, 1.2, 'm'],
  hingeX: ['The place of the hinge, x', -0.3, 0.5, 'm'],
  hingeY: ['The place of the hinge, y', 0.01, 1, 'm'],
  limb: ['The length of the limb', 0.05, 1.2, 'm'],
  tipMass: ['The limb mass felt at the tip', 1e-4, 1, 'kg'],
  stringStiffness: ['The stiffness EA of the string', 1e3, 1e8, 'N'],
  stringMass: ['The string mass', 0, 0.1, 'kg'],
  stringDamping: ['The damping of the string', 0, 200, 'N s/m'],
  hingeDamping: ['The damping of the hinge', 0, 5, 'N m s'],
  fingers: ['The time the fingers take', 0, 0.05, 's'],
};

/**
 * What is wrong with a bow before anything is computed: a figure that is none or cannot be, or a draw that does not pass the brace height.
 *
 * @equation each figure within its own limits, D > B + 2 cm, F(D) from 1 to 2000 N
 * @param bow - the bow as the model sees it [record]
 * @returns the refusal, or null when there is nothing to refuse [record]
 * @validity figures alone; whether the string can reach is seen when it is braced and drawn
 * @source own derivation
 * @example figureFault({ ...exampleLimbBow, draw: 0.1 }).problem.code // "no stroke"
 */
export function figureFault(bow: LimbBow): (Result<never> & { readonly ok: false; readonly problem: Problem }) | null {
  for (const key of Object.keys(figures) as Figure[]) {
    const [name, low, high, unit] = figures[key];
    const value = bow[key];
    if (!(value >= low && value <= high))
      return refuse('out of limits', `${name} was expected between ${low} and ${high} ${unit}.`);
  }
  if (!(bow.draw - bow.brace > 0.02))
    return refuse('no stroke', 'The draw was expected at least 2 cm beyond the brace height. Measure both again.');
  const full = bow.force(bow.draw);
  if (!(full >= 1 && full <= 2000))
    return refuse('no force', 'A force between 1 and 2000 N was expected at full draw. Weigh the bow with a scale.');
  return null;
}

/** A recurve of 40 lb with everything that the model asks for: the run that the model was checked by before it was written. */
export const exampleLimbBow: LimbBow = {
  arrowMass: 0.021986,
  force: (u) => {
    const x = (u - 0.22) / 0.46;
    return 178 * x * (1.486 - 0.486 * x);
  },
  brace: 0.22,
  draw: 0.68,
  hingeX: 0.03,
  hingeY: 0.385,
  limb: 0.45,
  tipMass: 0.035,
  stringStiffness: 100_000,
  stringMass: 0.006,
  stringDamping: 7.981686,
  hingeDamping: 0.1,
  fingers: 0.003,
};
