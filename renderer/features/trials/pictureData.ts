import type { UnitChoice } from '../../../core/model/preferences.ts';
import type { SettingPoint, TrialPlot } from '../../../core/trials/index.ts';
import { factorOf, showQuantity, textQuantity, unitOf, type Use } from '../../../core/units/index.ts';
import type { AlongData, AlongPoint } from '../../plots/trial/along.ts';

export const unitFor = (use: Use, units: UnitChoice) => ({ factor: factorOf(use, units), symbol: unitOf(use, units) });

const pointOf = ({ setting, value, low, high, amongBest }: SettingPoint): AlongPoint => ({
  at: setting,
  value,
  low,
  high,
  strong: amongBest !== false,
});

function settingTexts(points: readonly { readonly setting: number }[], use: Use, units: UnitChoice): AlongData['settings'] {
  const settings = [...new Set(points.map(({ setting }) => setting))].sort((a, b) => a - b);
  return settings.map((at, i) => ({
    at,
    text: i === settings.length - 1 ? textQuantity(at, use, units) : showQuantity(at, use, units).figure,
  }));
}

/** Spreads and speeds against the setting that was tried. */
export function sizesData(plot: Extract<TrialPlot, { kind: 'sizes' }>, units: UnitChoice): AlongData {
  const panel = { line: [], zero: false, place: null };
  const spreads = { ...panel, title: 'spread of one axis', unit: unitFor('setting', units), points: plot.sizes.map(pointOf) };
  const speeds = { ...panel, title: 'arrow speed', unit: unitFor('speed', units), points: plot.speeds.map(pointOf) };
  return {
    axis: plot.along,
    settings: settingTexts([...plot.sizes, ...plot.speeds], plot.along === 'brace height' ? 'length' : 'setting', units),
    panels: [...(plot.sizes.length > 0 ? [spreads] : []), ...(plot.speeds.length > 0 ? [speeds] : [])],
  };
}

/** How far the bare shafts strike above the fletched, and the nocking point at which they would not. */
export function heightsData(plot: Extract<TrialPlot, { kind: 'heights' }>, units: UnitChoice): AlongData {
  const { level } = plot;
  return {
    axis: 'nocking point above square',
    settings: settingTexts(plot.points, 'setting', units),
    panels: [
      {
        title: 'bare above fletched',
        unit: unitFor('setting', units),
        points: plot.points.map(({ setting, value, low, high }) => ({ at: setting, value, low, high, strong: true })),
        line: plot.line.map(({ setting, height }) => ({ at: setting, value: height })),
        zero: true,
        place:
          level === null
            ? null
            : {
                at: level.value,
                low: level.low,
                high: level.high,
                text: `level at ${textQuantity(level.value, 'setting', units)}`,
              },
      },
    ],
  };
}
