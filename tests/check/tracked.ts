import { execFileSync } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';

/** One tracked file: its path with forward slashes, and its text (empty for a font or a picture). */
export interface Tracked {
  readonly path: string;
  readonly text: string;
}

/** Every file that git keeps, as it lies in the working folder. */
export function trackedTree(root: string): Tracked[] {
  const listed = execFileSync('git', ['ls-files', '-z'], { cwd: root, encoding: 'utf8', maxBuffer: 1 << 26 });
  return listed
    .split('\0')
    .filter((name) => name !== '' && fs.existsSync(path.join(root, name)))
    .map((name) => ({ path: name, text: /\.(woff2|png|ico)$/.test(name) ? '' : fs.readFileSync(path.join(root, name), 'utf8') }));
}
