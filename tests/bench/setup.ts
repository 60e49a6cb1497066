import { compareSetups } from '../../core/compare/index.ts';
import { allFindings } from '../../core/findings/index.ts';
import { defaultPreferences, exampleBare, exampleBundle, exampleFletched, exampleNow } from '../../core/model/index.ts';
import { suitability } from '../../core/suitability/index.ts';
import { readBareShaft } from '../../core/trials/index.ts';
import { timed, type Row } from './row.ts';
import { medians } from './timing.ts';

/** What a screen asks after each edit: every check of a set-up, the reading of six fletched and four bare arrows, two set-ups side by side. */
export function setupRows(): Row[] {
  const { units } = defaultPreferences;
  const { arrowSet, setup } = exampleBundle;
  const other = { ...exampleBundle, arrowSet: { ...arrowSet, pointMass: 0.0078, weighed: null } };
  const { fit, findings, reading, compared } = medians({
    fit: (times) => {
      let last = 0;
      for (let i = 0; i < times; i++) last += suitability({ ...exampleBundle, settings: setup.settings }).ok ? 1 : 0;
      return last;
    },
    findings: (times) => {
      let last = 0;
      for (let i = 0; i < times; i++) last += allFindings(exampleBundle, { units, now: exampleNow }).length;
      return last;
    },
    reading: (times) => {
      let last = 0;
      for (let i = 0; i < times; i++) last += readBareShaft(exampleBundle, exampleFletched, exampleBare, units).causes.length;
      return last;
    },
    compared: (times) => {
      let last = 0;
      for (let i = 0; i < times; i++) last += compareSetups(exampleBundle, other).length;
      return last;
    },
  });
  return [
    timed('suitability', fit),
    timed('findings.all', findings),
    timed('trials.bare-shaft.6+4', reading),
    timed('compare.setups', compared),
  ];
}
