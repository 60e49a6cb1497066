import type { Why } from '../findings/finding.ts';
import { angleAt, type Length } from '../group/index.ts';
import type { UnitChoice } from '../model/preferences.ts';
import { sources } from '../sources.ts';
import { acrossText } from '../trials/words.ts';
import { textQuantity } from '../units/index.ts';
import type { QuestionTable } from './question.ts';
import type { SheetReading } from './sheetReading.ts';
import { angleText, betweenText, tableOf } from './texts.ts';

/**
 * A score sheet's circles, and what such arrows score elsewhere, as tables.
 *
 * @equation each figure with its 95 % interval and its angle at the archer
 * @param reading - what the sheet tells [record]
 * @param distance - at which it was shot [m]
 * @param units - the person's choice of units [record]
 * @returns two tables [list]
 * @validity any reading
 * @source own derivation
 * @example sheetTables(sheetReading([['X', 10, 9], [9, 8, 8]], '40', 18, 0.003).value, 18, defaultPreferences.units).length // 2
 */
export function sheetTables(reading: SheetReading, distance: number, units: UnitChoice): readonly QuestionTable[] {
  const row = (name: string, { value, interval }: Length): string[] => [
    name,
    acrossText(value, units),
    betweenText(interval, units),
    angleText(angleAt(value, distance), units),
  ];
  return [
    tableOf(
      ['', 'figure', '95 %', 'angle'],
      [
        row('mean radius of many', reading.meanRadius),
        row('half within, R50', reading.r50),
        row('95 in 100 within, R95', reading.r95),
        row('spread of one axis', reading.spread),
      ],
      ['mean radius of many'],
    ),
    tableOf(
      ['elsewhere, sight right', 'an arrow', '95 %'],
      reading.elsewhere.map((there) => [
        `${textQuantity(there.distance, 'distance', units)}, ${there.face.name.split(',')[0] ?? ''}`,
        there.points.toFixed(2),
        `${there.interval[0].toFixed(1)} to ${there.interval[1].toFixed(1)}`,
      ]),
    ),
  ];
}

/**
 * What opens behind Why for a score sheet.
 *
 * @equation the likelihood of the rings, with today's figures
 * @param reading - what the sheet tells [record]
 * @param units - the person's choice of units [record]
 * @returns the record that the screens open [record]
 * @validity any reading
 * @source own derivation
 * @example sheetWhy(sheetReading([['X', 10, 9], [9, 8, 8]], '40', 18, 0.003).value, defaultPreferences.units).symbols[0].value // "6"
 */
export function sheetWhy(reading: SheetReading, units: UnitChoice): Why {
  return {
    title: 'How wide did the arrows fall?',
    text: 'Each ring catches a share of the arrows that depends on how wide they fall; the spread is the one that makes the sheet most likely, and its interval holds those that make it less likely by no more than chance does. A shaft that touches a line scores the higher zone. Where an X stands on the sheet the inner ten is a ring of its own.',
    equation: 'P(ring) = e^(−a²/2σ²) − e^(−b²/2σ²)',
    symbols: [
      { symbol: 'n', name: 'arrows', value: String(reading.arrows) },
      { symbol: 'σ', name: 'spread of one axis', value: acrossText(reading.spread.value, units) },
      { symbol: '', name: 'its 95 % interval', value: betweenText(reading.spread.interval, units) },
    ],
    source: sources['wa-rules'],
  };
}
