import { describe, expect, it } from 'vitest';
import { exampleBundle, exampleFletched, Settings, Setup, ShotGroup } from '../../../core/model/index.ts';

// Own rule: a record written before a field was there still reads.
describe('settings written before the draw of a reading was kept', () => {
  const { weightDraw, ...earlier } = exampleBundle.setup.settings;

  it('read as a draw that nobody noted, in a set-up and in the groups shot with it', () => {
    expect(weightDraw).not.toBeNull();
    expect(Settings.parse(earlier).weightDraw).toBeNull();
    expect(Setup.parse({ ...exampleBundle.setup, settings: earlier }).settings.weightDraw).toBeNull();
    const context = { ...exampleFletched.context, settings: earlier };
    expect(ShotGroup.parse({ ...exampleFletched, context }).context.settings.weightDraw).toBeNull();
  });

  it('and a draw that was noted stays', () => {
    expect(Settings.parse(exampleBundle.setup.settings).weightDraw).toBe(weightDraw);
  });
});
