import { describe, expect, it } from 'vitest';
import { defaultPreferences } from '../../core/model/preferences.ts';
import { writeCsv } from '../../renderer/export/csv.ts';
import { shotsTable } from '../../renderer/plots/face/table.ts';
import { flightTable } from '../../renderer/plots/flight/table.ts';
import { overlayTable } from '../../renderer/plots/groupsOverlay/table.ts';
import { heightsTable } from '../../renderer/plots/heights/table.ts';
import { timelineTable } from '../../renderer/plots/timeline/table.ts';

const { units } = defaultPreferences;

describe('the figures behind a plot, as a table', () => {
  it('are the flight over the line of sight in the shown units', () => {
    const samples = [{ distance: 10, value: 0.42, low: 0.4, high: 0.45 }];
    const data = {
      samples,
      setFor: 30,
      top: { distance: 15, height: 0.5 },
      ground: null,
      pointOn: null,
      bandName: '',
      farEnd: 40,
    };
    expect(flightTable(data, units)).toEqual({
      columns: ['distance (m)', 'over the line (cm)', 'low (cm)', 'high (cm)'],
      rows: [[10, 42, 40, 45]],
    });
    // A yard is 0.9144 m, by definition.
    expect(flightTable(data, { ...units, distance: 'yd' }).rows[0]?.[0]).toBeCloseTo(10 / 0.9144, 3);
  });

  it('are all shots of a face, those left out too', () => {
    const shot = { id: 0, x: 0.0125, y: -0.004, arrow: 3, end: null, leftOut: null };
    const out = { ...shot, id: 1, end: 2, leftOut: 'A bird flew by.' };
    expect(
      writeCsv(shotsTable([{ name: 'fletched', shots: [shot, out] }], units))
        .split('\r\n')
        .slice(1),
    ).toEqual(['fletched,,3,12.5,-4,', 'fletched,2,3,12.5,-4,A bird flew by.', '']);
  });

  it('are the heights of one arrow over another, with the band', () => {
    const samples = [{ distance: 18, value: 2.62749, low: 1.1, high: 4.1 }];
    expect(heightsTable({ reference: 'A', other: 'B', samples, distanceUnit: 'm', unit: 'cm' })).toEqual({
      columns: ['distance (m)', 'B over A (cm)', 'low (cm)', 'high (cm)'],
      rows: [[18, 2.627, 1.1, 4.1]],
    });
  });

  it('are the centres of two groups, then their shots', () => {
    const entry = { setup: 0 as const, name: 'A', centre: { x: 5, y: -2 }, radius: 12, shots: [{ x: 1, y: 2 }] };
    expect(overlayTable({ origin: 'centre of the face', rings: [], entries: [entry], unit: 'mm' }).rows).toEqual([
      ['A', 'centre', 5, -2, 12],
      ['A', 'shot', 1, 2, null],
    ]);
  });

  it('are the group sizes, the steps of each setting in decimals, and the snapshots, each with its day', () => {
    const at = Date.UTC(2026, 4, 31, 19);
    const table = timelineTable({
      sizes: { name: 'Mean radius', small: 'mm at 18 m', points: [{ at, shots: 12, value: 46, low: 35, high: 65, text: '46' }] },
      lanes: [
        {
          key: 'braceHeight',
          name: 'brace height',
          unit: 'in',
          steps: [{ at, value: 0.22, text: '8 3/4' }],
          now: { value: 0.2, text: '7 7/8' },
        },
        { key: 'tiller', name: 'tiller', unit: 'mm', steps: [{ at, value: -0.002, text: '−2' }], now: null },
      ],
      flags: [{ id: 'a', at, name: 'Spring, 70 m', chosen: false }],
    });
    expect(writeCsv(table).split('\r\n')).toEqual([
      'what,when,figure,low,high,unit,arrows',
      'Mean radius,2026-05-31 19:00,46,35,65,mm at 18 m,12',
      'brace height,2026-05-31 19:00,8.75,,,in,',
      'brace height,now,7.875,,,in,',
      'tiller,2026-05-31 19:00,-2,,,mm,',
      '"snapshot: Spring, 70 m",2026-05-31 19:00,,,,,',
      '',
    ]);
  });
});
