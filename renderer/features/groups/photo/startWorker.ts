// What Vite makes of this is the address of the built worker.
// oxlint-disable-next-line import/default
import address from './photo.worker.ts?worker&url';

interface ScriptPolicy {
  createScriptURL(address: string): string;
}
interface PolicyMaker {
  createPolicy(name: string, rules: { createScriptURL(address: string): string }): ScriptPolicy;
}

let policy: ScriptPolicy | null = null;

/** The page's one worker. Its address passes the one Trusted Types policy that is admitted, which lets nothing else through. */
export function startWorker(): Worker {
  const own = new URL(address, import.meta.url).href;
  const maker = (globalThis as { trustedTypes?: PolicyMaker }).trustedTypes;
  policy ??=
    maker?.createPolicy('photo-worker', {
      createScriptURL(asked) {
        if (asked !== own) throw new TypeError('The bench starts no other worker.');
        return asked;
      },
    }) ?? null;
  return new Worker(policy === null ? own : policy.createScriptURL(own), { type: 'module' });
}
