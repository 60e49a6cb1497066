// The child that is killed, as one file that Node can run. It lies within the project, so that it finds the packages.
import path from 'node:path';
import { threadId } from 'node:worker_threads';
import { buildProgram } from '../../electron/launch/build.mjs';

export async function buildWriter() {
  const file = path.join(import.meta.dirname, `../../.cache/kill-${process.pid}-${threadId}/writer.js`);
  await buildProgram('tests/host/killWriter.ts', file);
  return file;
}
