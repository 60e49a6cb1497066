import type { Dimension } from './dimensions.ts';
import { foot, grain, inch, pound, poundForce, standardGravity, yard } from './exact.ts';

/** A unit: how it is written, the SI value of one of it, and the other ways in which people write it (lower case, without spaces). */
export interface Unit {
  readonly symbol: string;
  readonly factor: number;
  /** The SI value where its scale reads nought: only temperatures have one. */
  readonly zero: number;
  readonly also: readonly string[];
}

const ounce = pound / 16;

const unit = (symbol: string, factor: number, also = '', zero = 0): Unit => ({
  symbol,
  factor,
  zero,
  also: also.split(' ').filter((word) => word !== ''),
});

/** Every unit that can be typed, by dimension. Case never matters: no two of them differ by case alone. */
export const table: Readonly<Record<Dimension, readonly Unit[]>> = {
  length: [
    unit('in', inch, '" inch inches ins'),
    unit('cm', 0.01, 'cms centimetre centimetres centimeter centimeters'),
    unit('mm', 0.001, 'mms millimetre millimetres millimeter millimeters'),
    unit('m', 1, 'metre metres meter meters'),
    unit('ft', foot, "' foot feet"),
    unit('yd', yard, 'y yds yard yards'),
  ],
  // A bow is weighed in pounds or kilograms by people who mean the force.
  force: [
    unit('lb', poundForce, '# lbs lbf lb·f pound pounds pound·force pounds·force'),
    unit('kg', standardGravity, 'kgs kgf kg·f kp kilo kilos kilogram kilograms kilogramme kilogrammes'),
    unit('N', 1, 'newton newtons'),
    unit('g', standardGravity / 1000, 'gf gm gms gram grams gramme grammes'),
    unit('oz', poundForce / 16, 'ozf ounce ounces'),
  ],
  mass: [
    unit('gr', grain, 'grs grain grains'),
    unit('g', 0.001, 'gm gms gram grams gramme grammes'),
    unit('kg', 1, 'kgs kilo kilos kilogram kilograms kilogramme kilogrammes'),
    unit('mg', 1e-6, 'milligram milligrams milligramme milligrammes'),
    unit('oz', ounce, 'ounce ounces'),
    unit('lb', pound, '# lbs pound pounds'),
  ],
  speed: [
    unit('ft/s', foot, 'fps ft/sec foot/second feet/second feet/sec'),
    unit('m/s', 1, 'mps m/sec metre/second metres/second meter/second meters/second'),
    unit('km/h', 1 / 3.6, 'kmh kph km/hr kilometres/hour kilometers/hour'),
    unit('mph', 0.44704, 'mi/h miles/hour'),
  ],
  massPerLength: [
    unit('gr/in', grain / inch, 'gpi gr/inch grain/inch grains/inch grains/in gr/"'),
    unit('g/m', 0.001, 'gram/metre grams/metre grams/meter'),
    unit('g/cm', 0.1, 'grams/centimetre grams/centimeter'),
    unit('g/in', 0.001 / inch, 'g/inch grams/inch'),
    unit('gr/cm', grain / 0.01, 'grains/cm'),
    unit('kg/m', 1),
  ],
  massPerForce: [
    unit('gr/lb', grain / poundForce, 'gpp gr/# gr/lbf gr/pound grain/pound grains/pound grains/lb'),
    unit('g/kg', 0.001 / standardGravity, 'g/kgf grams/kg grams/kilogram'),
    unit('g/lb', 0.001 / poundForce, 'g/# g/lbf grams/pound'),
    unit('gr/kg', grain / standardGravity, 'gr/kgf grains/kg'),
    unit('g/N', 0.001, 'grams/newton'),
    unit('kg/N', 1),
  ],
  forcePerLength: [
    unit('N/mm', 1000, 'n/millimetre'),
    unit('N/cm', 100, 'n/centimetre'),
    unit('N/m', 1, 'n/metre'),
    unit('lb/in', poundForce / inch, '#/in lbf/in lbs/in lb/inch pounds/inch'),
    unit('kg/cm', standardGravity / 0.01, 'kgf/cm'),
    unit('kg/in', standardGravity / inch, 'kgf/in'),
  ],
  momentOfInertia: [unit('g m²', 0.001, 'g·m2 gm2'), unit('kg m²', 1, 'kg·m2 kgm2')],
  stiffness: [unit('N m²', 1, 'n·m2 nm2'), unit('lb in²', poundForce * inch * inch, 'lb·in2 lbin2 lbf·in2 lbs·in2')],
  frequency: [unit('Hz', 1, 'hertz')],
  energy: [unit('J', 1, 'joule joules n·m'), unit('ft lb', foot * poundForce, 'ft·lb ftlb ft·lbs ft·lbf foot·pound foot·pounds')],
  time: [
    unit('s', 1, 'sec secs second seconds'),
    unit('ms', 0.001, 'millisecond milliseconds'),
    unit('min', 60, 'mins minute minutes'),
  ],
  angle: [
    unit('°', Math.PI / 180, 'deg degree degrees'),
    unit('rad', 1, 'radian radians'),
    unit('mrad', 0.001, 'milliradian milliradians'),
  ],
  turn: [unit('turns', 1, 'turn')],
  temperature: [
    unit('°C', 1, '° c celsius centigrade degc deg·c degree·c degrees·c degrees·celsius', 273.15),
    unit('°F', 5 / 9, 'f fahrenheit degf deg·f degree·f degrees·f degrees·fahrenheit', 273.15 - (32 * 5) / 9),
    unit('K', 1, 'kelvin'),
  ],
  pressure: [
    unit('hPa', 100, 'mbar mb millibar millibars hectopascal hectopascals'),
    unit('kPa', 1000, 'kilopascal kilopascals'),
    unit('Pa', 1, 'pascal pascals'),
    unit('mmHg', 133.322387415, 'mm·hg torr'),
    unit('inHg', 3386.388640341, 'in·hg'),
  ],
  number: [unit('%', 0.01, 'percent')],
};
