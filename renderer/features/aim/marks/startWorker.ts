// What Vite makes of this is the address of the built worker.
// oxlint-disable-next-line import/default
import address from './strip.worker.ts?worker&url';
import { startOwn } from '../../../workers/startOwn.ts';

export const startWorker = (): Worker => startOwn('strip-worker', new URL(address, import.meta.url).href);
