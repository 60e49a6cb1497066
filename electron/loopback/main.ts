import fs from 'node:fs';
import path from 'node:path';
import { createInterface } from 'node:readline';
import { benchInWorker } from '../benchInWorker.ts';
import { notebookFile } from '../place.ts';
import { serve } from './serve.ts';

/**
 * The loopback host as a program. Each line it prints is one address that admits one page; a line on its input asks for another, and
 * the end of its input ends it, so that it never outlives whoever started it.
 */
// Whoever started us may be gone while a line is printed; the end of our input then ends us in good order.
process.stdout.on('error', () => {});
const built = import.meta.dirname;
const { version } = JSON.parse(fs.readFileSync(path.join(built, '../../package.json'), 'utf8')) as { version: string };
const bench = benchInWorker(path.join(built, 'worker.js'), { file: notebookFile(), shell: 'loopback', version });
const loopback = await serve(bench, path.join(built, '../renderer'));

let stopping = false;
async function stop(): Promise<void> {
  if (stopping) return;
  stopping = true;
  await loopback.close();
  await bench.close();
  process.exit(0);
}
process.on('SIGINT', () => void stop());
process.on('SIGTERM', () => void stop());
const asked = createInterface({ input: process.stdin });
asked.on('line', () => console.log(loopback.newAddress()));
asked.on('close', () => void stop());
console.log(loopback.newAddress());
