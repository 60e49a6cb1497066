import type { UnitChoice } from '../model/index.ts';
import { together } from '../model/sentence.ts';
import { grain } from '../units/exact.ts';
import { textQuantity } from '../units/index.ts';
import type { SmallPart } from './mass.ts';

/** Glue, paint, and the rounding of every part: this share of the arrow's mass is no disagreement. From memory. */
const MASS_DOUBT = 0.03;
/** What a part that was left blank may weigh at most [kg]: from memory. */
const blankUpTo: Readonly<Record<SmallPart, number>> = {
  insertMass: 25 * grain,
  nockMass: 12 * grain,
  fletchingMass: 12 * grain,
};
const blankName: Readonly<Record<SmallPart, string>> = { insertMass: 'insert', nockMass: 'nock', fletchingMass: 'fletching' };
/** Ordinary places in place of measured ones move the balance point by about this share of the length: one point of front-of-centre. From memory. */
const BALANCE_DOUBT = 0.01;

/**
 * Where an arrow as it was weighed and balanced differs from its parts by more than the doubt.
 *
 * @equation |m_weighed − Σ mᵢ| > 3 % of m_weighed, with up to 25 gr for a blank insert and 12 gr for a blank nock or fletching above; |A_measured − A| > 1 % of L
 * @param build - mass [kg], balance [m] and length [m], from the parts [record]
 * @param measured - mass [kg] and balance [m] as measured, null where they were not [record]
 * @param blank - small parts that counted as nothing [list]
 * @param units - the person's choice of units [record]
 * @returns what differs and what to do, or null [text]
 * @validity finite figures
 * @source from memory
 * @example buildDisagrees({ mass: 0.02, balance: 0.4, length: 0.7 }, { mass: 0.0201, balance: 0.401 }, [], defaultPreferences.units) // null
 */
export function buildDisagrees(
  build: { readonly mass: number; readonly balance: number; readonly length: number },
  measured: { readonly mass: number | null; readonly balance: number | null },
  blank: readonly SmallPart[],
  units: UnitChoice,
): string | null {
  const said: string[] = [];
  if (measured.mass !== null) {
    const over = measured.mass - build.mass;
    const doubt = MASS_DOUBT * measured.mass;
    const mass = (si: number) => textQuantity(si, 'mass', units);
    const against = `The weighed arrow is ${mass(Math.abs(over))} ${over > 0 ? 'heavier' : 'lighter'} than its parts together: ${mass(measured.mass)} against ${mass(build.mass)}, with a doubt of ${mass(doubt)}.`;
    if (over > doubt + blank.reduce((sum, part) => sum + blankUpTo[part], 0) || over < -doubt)
      said.push(
        blank.length > 0 && over > 0
          ? `${against} Enter the ${together(blank.map((part) => blankName[part]))}, and weigh the parts again.`
          : `${against} Weigh the parts and the arrow again.`,
      );
  }
  if (measured.balance !== null && Math.abs(measured.balance - build.balance) > BALANCE_DOUBT * build.length) {
    const length = (si: number) => textQuantity(si, 'length', units);
    said.push(
      `The balance point was measured at ${length(measured.balance)} from the throat and comes out at ${length(build.balance)} from the parts, with a doubt of ${length(BALANCE_DOUBT * build.length)}. Measure it again, or weigh the parts again.`,
    );
  }
  return said.length === 0 ? null : said.join(' ');
}
