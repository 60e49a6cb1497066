import os from 'node:os';
import path from 'node:path';

/**
 * Where the user's notebook lies. Electron and the loopback host share it, so that whoever starts in one finds everything in the other;
 * Electron's own userData would be another folder on Linux.
 */
export function notebookFile(
  env: NodeJS.ProcessEnv = process.env,
  platform: NodeJS.Platform = process.platform,
  home = os.homedir(),
): string {
  const named = env['FISTMELE_NOTEBOOK'];
  if (named !== undefined && named !== '') return path.resolve(named);
  return path.join(appData(env, platform, home), 'fistmele', 'notebook.sqlite');
}

function appData(env: NodeJS.ProcessEnv, platform: NodeJS.Platform, home: string): string {
  if (platform === 'win32') return env['APPDATA'] || path.join(home, 'AppData', 'Roaming');
  if (platform === 'darwin') return path.join(home, 'Library', 'Application Support');
  return env['XDG_DATA_HOME'] || path.join(home, '.local', 'share');
}
