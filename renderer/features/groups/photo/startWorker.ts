// What Vite makes of this is the address of the built worker.
// oxlint-disable-next-line import/default
import address from './photo.worker.ts?worker&url';
import { startOwn } from '../../../workers/startOwn.ts';

export const startWorker = (): Worker => startOwn('photo-worker', new URL(address, import.meta.url).href);
