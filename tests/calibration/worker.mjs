// One of the processes of `npm run calibration`: works out the figures it is sent, one at a time, behind everybody else.
import os from 'node:os';

os.setPriority(os.constants.priority.PRIORITY_LOW);
const { rowsAt } = await import(process.argv[2] ?? '');

process.on('message', (/** @type {{ index: number, seed: number, quick: boolean }} */ { index, seed, quick }) => {
  const began = process.cpuUsage().user;
  const rows = rowsAt(index, seed, quick);
  process.send?.({ index, rows, seconds: (process.cpuUsage().user - began) / 1e6 });
});
process.on('disconnect', () => process.exit(0));
process.send?.('ready');
