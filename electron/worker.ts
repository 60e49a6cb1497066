import { parentPort, workerData } from 'node:worker_threads';
import { type BenchOptions, createBench } from './bench.ts';

/** The thread that holds the notebook. */
const port = parentPort;
if (port === null) throw new Error('this file is the notebook thread; it is started by benchInWorker');
const bench = createBench(workerData as BenchOptions);

port.on('message', (message: 'close' | { id: number; channel: unknown; input: unknown }) => {
  if (message === 'close') {
    void bench
      .close()
      .catch((error: unknown) => console.error(error)) // there is nobody left to tell
      .finally(() => port.close());
  } else {
    void bench.call(message.channel, message.input).then((answer) => port.postMessage({ id: message.id, answer }));
  }
});
