import { contextBridge, ipcRenderer } from 'electron';
import { channels, EVENT_CHANNEL } from '../core/channels.ts';

/** All that the page sees of Electron. Built as one plain script, because a sandboxed preload can load nothing else. */
const known: ReadonlySet<string> = new Set(channels);

contextBridge.exposeInMainWorld(
  'fistmele',
  Object.freeze({
    call: (channel: string, input: unknown): Promise<unknown> =>
      known.has(channel) ? ipcRenderer.invoke(channel, input) : Promise.reject(new Error(`the bench has no call ${channel}`)),
    subscribe: (listener: (event: unknown) => void): (() => void) => {
      const hear = (_from: unknown, event: unknown) => listener(event);
      ipcRenderer.on(EVENT_CHANNEL, hear);
      return () => void ipcRenderer.off(EVENT_CHANNEL, hear);
    },
  }),
);
