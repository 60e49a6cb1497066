import { allFindings } from '../../core/findings/index.ts';
import { defaultPreferences, exampleBare, exampleBundle, exampleFletched, exampleNow } from '../../core/model/index.ts';
import { suitability } from '../../core/suitability/index.ts';
import { readBareShaft } from '../../core/trials/index.ts';
import { timed, type Row } from './row.ts';
import { medians } from './timing.ts';

/** What a screen asks after each edit: every check of a set-up, and the reading of six fletched and four bare arrows. */
export function setupRows(): Row[] {
  const { units } = defaultPreferences;
  const { setup } = exampleBundle;
  const { fit, findings, reading } = medians({
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
  });
  return [timed('suitability', fit), timed('findings.all', findings), timed('trials.bare-shaft.6+4', reading)];
}
