import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';

const OURS = /^fistmele-demo-(\d+)-/;

/** The demo lives in a temporary folder that bears the number of the process it goes with. */
export const makeDemoFolder = (): string => fs.mkdtempSync(path.join(os.tmpdir(), `fistmele-demo-${process.pid}-`));

/**
 * A killed bench cannot throw its demo away; the next one does. Only real folders of this user, named as ours, with nothing but a demo
 * in them, whose process is gone: whatever is in doubt stays.
 */
export function sweepDemoFolders(temp = os.tmpdir()): void {
  for (const name of namesIn(temp)) {
    const owner = OURS.exec(name)?.[1];
    const folder = path.join(temp, name);
    if (owner === undefined || lives(Number(owner)) || !isOurFolder(folder)) continue;
    if (!namesIn(folder).every((inside) => inside.startsWith('demo.sqlite'))) continue;
    try {
      fs.rmSync(folder, { recursive: true, force: true });
    } catch {
      // it may stay; the next start tries again
    }
  }
}

function isOurFolder(folder: string): boolean {
  const found = fs.lstatSync(folder, { throwIfNoEntry: false });
  return found !== undefined && found.isDirectory() && (process.getuid === undefined || found.uid === process.getuid());
}

function namesIn(folder: string): string[] {
  try {
    return fs.readdirSync(folder);
  } catch {
    return [];
  }
}

/** Signal 0 asks only. A process that may not be asked lives. */
function lives(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code !== 'ESRCH';
  }
}
