import type { Band } from '../../model/band.ts';
import type { StringMaterial } from '../../model/index.ts';

/** One strand of a bowstring fibre, as it comes off the spool. */
export interface Fibre {
  /** Mass per length [kg/m]. */
  readonly linearDensity: number;
  /** EA over mass per length [N m/kg]: a thousandth of it is N/tex. Upper bounds: twist, loops and wax take some. */
  readonly modulus: Band;
  /** Breaking strength of one strand, new [N]. */
  readonly strength: Band;
  /** Whether it is one of the low-stretch fibres that only bows made for them are to carry. */
  readonly lowStretch: boolean;
  /** Greatest tension over draw weight while the arrow is on the string, by a rigid arm with usual strings of it. */
  readonly dynamic: Pick<Band, 'low' | 'high'>;
}

/** Of another fibre nothing is known here. */
export type KnownFibre = Exclude<StringMaterial, 'other'>;

const perTex = (low: number, high: number): Band => ({ value: (1e6 * (low + high)) / 2, low: 1e6 * low, high: 1e6 * high });
const about = (value: number, doubt: number): Band => ({ value, low: value * (1 - doubt), high: value * (1 + doubt) });

/**
 * Moduli of polyester, HMPE, LCP and aramid stand in two tables of fibres; so do a polyester strand of 222 N and an HMPE strand of 445 N.
 * The other strengths, all masses per length (from EA of such a strand over the modulus where that is known) and linen are from memory.
 */
export const fibres: Readonly<Record<KnownFibre, Fibre>> = {
  polyester: {
    linearDensity: 2.6e-4,
    modulus: perTex(9, 10),
    strength: about(222, 0.15),
    lowStretch: false,
    dynamic: { low: 2.3, high: 3.4 },
  },
  linen: {
    linearDensity: 2.4e-4,
    modulus: perTex(10, 20),
    strength: about(90, 0.35),
    lowStretch: false,
    dynamic: { low: 2.5, high: 5.5 },
  },
  HMPE: {
    linearDensity: 1.5e-4,
    modulus: perTex(88, 175),
    strength: about(445, 0.15),
    lowStretch: true,
    dynamic: { low: 3, high: 5.8 },
  },
  'HMPE and LCP': {
    linearDensity: 1.6e-4,
    modulus: perTex(70, 130),
    strength: about(440, 0.2),
    lowStretch: true,
    dynamic: { low: 3, high: 5.8 },
  },
  LCP: {
    linearDensity: 1.7e-4,
    modulus: perTex(46, 53),
    strength: about(360, 0.2),
    lowStretch: true,
    dynamic: { low: 3, high: 5.8 },
  },
  aramid: {
    linearDensity: 1.7e-4,
    modulus: perTex(49, 50),
    strength: about(310, 0.2),
    lowStretch: true,
    dynamic: { low: 3, high: 5.8 },
  },
};

/**
 * What is known of a bowstring fibre, strand by strand.
 *
 * @equation EA of a strand = modulus × mass per length
 * @param material - of the string [choice]
 * @returns mass per length [kg/m], modulus [N m/kg], strength [N], whether it is a low-stretch one; null for a fibre that nothing is known of [record]
 * @validity new strands without twist; one thread of a kind is not like another, hence the bands
 * @source from memory
 * @example fibreOf('polyester').strength.value // 222
 */
export function fibreOf(material: StringMaterial): Fibre | null {
  return material === 'other' ? null : fibres[material];
}

/**
 * How stiff twist, loops and wax are, strand by strand, as a spring in line with the fibre [N]: next to nothing beside polyester, and more
 * than half of what a string of HMPE gives. From memory, so chosen that usual strings come out near the 100 and 30 kN of the runs that the model was checked by.
 */
const CONSTRUCTION: Band = { value: 8_000, low: 4_000, high: Infinity };

/**
 * Stiffness of a whole string.
 *
 * @equation EA = n/(1/(modulus × mass per length) + 1/c), c = 8 kN (4 kN to endless) for twist, loops and wax
 * @param fibre - of its strands [record]
 * @param strands - n [-]
 * @returns EA, value with low and high [N] [record]
 * @validity the high end is the strands’ own, side by side and untwisted; c is from memory
 * @source from memory
 * @example axialOf({ modulus: { value: 1e7, low: 1e7, high: 1e7 }, linearDensity: 3e-4 }, 10).high // 30000
 */
export function axialOf({ modulus, linearDensity }: Pick<Fibre, 'modulus' | 'linearDensity'>, strands: number): Band {
  const at = (side: keyof Band) => strands / (1 / (modulus[side] * linearDensity) + 1 / CONSTRUCTION[side]);
  return { value: at('value'), low: at('low'), high: at('high') };
}

/** Servings and nocking points of a usual string [kg], from memory. */
const SERVINGS = 0.0015;

/**
 * Mass of a string that nobody weighed.
 *
 * @equation m_s = n × mass per length × length + 1.5 g of servings
 * @param fibre - of its strands [record]
 * @param strands - n [-]
 * @param length - loop to loop [m]
 * @returns m_s [kg]
 * @validity a guess to within a fifth; a scale for powder or letters tells it better
 * @source from memory
 * @example stringMassOf(fibreOf('HMPE'), 18, 1.6) // 0.00582
 */
export function stringMassOf({ linearDensity }: Fibre, strands: number, length: number): number {
  return strands * linearDensity * length + SERVINGS;
}
