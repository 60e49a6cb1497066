import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { notebookFile } from '../../electron/place.ts';

/** The app-data folders are those of the platforms' own conventions: XDG base directories, AppData, Application Support. */
describe("The notebook's place", () => {
  it.each([
    ['linux', {}, '/home/wren/.local/share/fistmele/notebook.sqlite'],
    ['linux', { XDG_DATA_HOME: '/data' }, '/data/fistmele/notebook.sqlite'],
    ['linux', { XDG_DATA_HOME: '' }, '/home/wren/.local/share/fistmele/notebook.sqlite'],
    ['darwin', {}, '/home/wren/Library/Application Support/fistmele/notebook.sqlite'],
    ['win32', { APPDATA: '/roaming' }, '/roaming/fistmele/notebook.sqlite'],
    ['linux', { FISTMELE_NOTEBOOK: '/elsewhere/mine.sqlite' }, '/elsewhere/mine.sqlite'],
  ] as const)('on %s with %o is %s', (platform, env, place) => {
    expect(notebookFile(env, platform, '/home/wren')).toBe(path.resolve(place));
  });
});
