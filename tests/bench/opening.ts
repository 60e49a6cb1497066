// A program of its own, so that the memory of opening a notebook is measured in a process that has done nothing else.
import { memoryUsage, resourceUsage } from 'node:process';
import { openNotebook } from '../../electron/notebook/open.ts';

const collect = (globalThis as { gc?: () => void }).gc;
if (collect === undefined) throw new Error('Run it with --expose-gc.');
collect();
const before = memoryUsage();
const began = performance.now();
const opened = await openNotebook(process.argv[2] ?? '', { now: () => ({ at: '2026-06-01T10:00:00Z', offsetMinutes: 60 }) });
if (!opened.ok) throw new Error(opened.problem.sentence);
const { records } = opened.value.notebook.load();
const seconds = (performance.now() - began) / 1000;
const peak = resourceUsage().maxRSS * 1024;
collect();
const after = memoryUsage();
await opened.value.close();
console.log(JSON.stringify({ records: records.length, seconds, peak, before, after }));
