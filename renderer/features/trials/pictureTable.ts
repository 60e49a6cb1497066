import type { UnitChoice } from '../../../core/model/preferences.ts';
import type { TrialPlot } from '../../../core/trials/index.ts';
import { factorOf, unitOf, type Use } from '../../../core/units/index.ts';
import { inFigures, type CsvTable } from '../../export/index.ts';
import { touchedText } from './touched.ts';

/** The numbers of a picture in the shown units. */
export function pictureTable(plot: TrialPlot, units: UnitChoice): CsvTable {
  const into = (use: Use) => (si: number) => inFigures(si / factorOf(use, units));
  const [setting, distance, speed] = [into('setting'), into('distance'), into('speed')];
  const [mm, far, fast] = [unitOf('setting', units), unitOf('distance', units), unitOf('speed', units)];
  switch (plot.kind) {
    case 'shifts':
      return {
        columns: [
          `distance (${far})`,
          `right (${mm})`,
          `± (${mm})`,
          `up (${mm})`,
          `± (${mm})`,
          'arrows of the first',
          'of the second',
        ],
        rows: plot.points.map((at) => [
          distance(at.distance),
          setting(at.dx),
          setting(at.halfX),
          setting(at.dy),
          setting(at.halfY),
          ...at.arrows,
        ]),
      };
    case 'tears':
      return {
        columns: [`distance (${far})`, `right (${mm})`, `up (${mm})`, 'arrow'],
        rows: plot.tears.map((tear) => [distance(tear.distance), setting(tear.across), setting(tear.up), tear.fletching]),
      };
    case 'walk-back':
      return {
        columns: ['what', `distance (${far})`, `right (${mm})`, `± (${mm})`],
        rows: [
          ...plot.shots.map((shot) => ['shot', distance(shot.distance), setting(shot.offset), null]),
          ...plot.line.map((at) => ['straight line', distance(at.distance), setting(at.offset), setting(at.half)]),
          ...plot.curve.map((at) => ['bent line', distance(at.distance), setting(at.offset), null]),
        ],
      };
    case 'sizes': {
      const along = into(plot.along === 'brace height' ? 'length' : 'setting');
      return {
        columns: [
          'what',
          `${plot.along} (${unitOf(plot.along === 'brace height' ? 'length' : 'setting', units)})`,
          'value',
          'low',
          'high',
        ],
        rows: [
          ...plot.sizes.map((at) => [`spread (${mm})`, along(at.setting), setting(at.value), setting(at.low), setting(at.high)]),
          ...plot.speeds.map((at) => [`speed (${fast})`, along(at.setting), speed(at.value), speed(at.low), speed(at.high)]),
        ],
      };
    }
    case 'heights':
      return {
        columns: [`nocking point (${mm})`, `bare above fletched (${mm})`, `low (${mm})`, `high (${mm})`],
        rows: plot.points.map((at) => [setting(at.setting), setting(at.value), setting(at.low), setting(at.high)]),
      };
    case 'clearance':
      return {
        columns: ['shot', 'touched', 'nock turned (parts of a turn)'],
        rows: plot.shots.map((shot, i) => [i + 1, touchedText(shot.touched), inFigures(shot.nockTurn)]),
      };
  }
}
