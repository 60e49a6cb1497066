import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { allFindings } from '../../core/findings/index.ts';
import type { Bundle } from '../../core/model/bundle.ts';
import { exampleBundle, exampleNow } from '../../core/model/example.ts';
import { defaultPreferences } from '../../core/model/preferences.ts';
import { Curves } from '../../renderer/features/bow/Curves.tsx';
import { createBench } from '../../renderer/state/bench.ts';
import { BenchContext } from '../../renderer/state/useBench.ts';

const { units } = defaultPreferences;
const noHost = { call: () => Promise.reject(new Error('no host here')), subscribe: () => () => undefined };

/** The two plots of what the arrow gets from the bow, as they come to the page. */
function curvesOf(bundle: Bundle) {
  const findings = allFindings(bundle, { units, now: exampleNow });
  const value = createBench(noHost);
  const html = renderToStaticMarkup(
    createElement(BenchContext, { value }, createElement(Curves, { bundle, findings, width: 700 })),
  );
  return {
    stops: findings.filter(({ level }) => level === 'stop').map(({ id }) => id),
    stroke: html.includes('Read the stroke at a moment'),
    speed: html.includes('Read the speed of an arrow of a mass'),
    html,
  };
}

const { archer, bow, arrowSet, setup } = exampleBundle;
const ofWeight = (grains: number): Bundle => ({
  ...exampleBundle,
  arrowSet: { ...arrowSet, weighed: grains * 6.479891e-5, arrows: [] },
});

describe('the two plots of what the arrow gets from the bow', () => {
  it('are drawn while nothing stops', () => {
    expect(curvesOf(exampleBundle)).toMatchObject({ stops: [], stroke: true, speed: true });
  });

  it.each<[string, string, Bundle]>([
    ['a dry fire', 'dryFired', { ...exampleBundle, bow: { ...bow, dryFired: exampleNow } }],
    [
      'too short an arrow',
      'pointAhead',
      { ...exampleBundle, setup: { ...setup, settings: { ...setup.settings, pointAhead: 0 } } },
    ],
    ['a left-handed bow in right hands', 'hand', { ...exampleBundle, archer: { ...archer, hand: 'left' } }],
  ])('stand back at %s, and each says which stop it is', (_, id, bundle) => {
    const { stops, stroke, speed, html } = curvesOf(bundle);
    expect(stops).toContain(id);
    expect({ stroke, speed }).toEqual({ stroke: false, speed: false });
    expect(html.match(/Not shown while this stop stands: [^<.]+/g)).toHaveLength(2);
    expect(html).not.toContain('Save ');
  });

  it('show for too light an arrow what it must weigh, and no stroke of it', () => {
    expect(curvesOf(ofWeight(120))).toMatchObject({ stops: ['arrowMass'], stroke: false, speed: true });
  });

  it('show both while the brace height stops: mending it is the next change', () => {
    const low = { ...exampleBundle, setup: { ...setup, settings: { ...setup.settings, braceHeight: 0.16 } } };
    expect(curvesOf(low)).toMatchObject({ stops: ['braceHeight'], stroke: true, speed: true });
  });
});
