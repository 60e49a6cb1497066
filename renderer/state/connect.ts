import { z } from '../../core/model/zod.ts';
import { type Channel, contract, type Host, HostEvent, type Input, type Output } from '../../core/host.ts';
import { Problem, refuse, type Result } from '../../core/model/problem.ts';
import { electronTransport } from './electronTransport.ts';
import { loopbackTransport } from './loopbackTransport.ts';
import type { Transport } from './transport.ts';

const Refusal = z.strictObject({ ok: z.literal(false), problem: Problem });

/** The page's end of the contract, over Electron's bridge where there is one, else over the loopback host that served the page. */
export function connect(transport: Transport = window.fistmele ? electronTransport(window.fistmele) : loopbackTransport()): Host {
  return {
    call: async <C extends Channel>(channel: C, input: Input<C>) => understand(channel, await transport.call(channel, input)),
    subscribe: (listener) =>
      transport.subscribe((told) => {
        const event = HostEvent.safeParse(told);
        if (event.success) listener(event.data);
      }),
  };
}

/** Nothing that comes in from outside is taken at its word: the page and the host may not be of one version. */
function understand<C extends Channel>(channel: C, answer: unknown): Result<Output<C>> {
  const refusal = Refusal.safeParse(answer);
  if (refusal.success) return refusal.data;
  const accepted = z.strictObject({ ok: z.literal(true), value: contract[channel].output }).safeParse(answer);
  if (accepted.success) return { ok: true, value: accepted.data.value as Output<C> };
  return refuse(
    'not-understood',
    'This page and its host do not understand each other. Stop the bench and start it again with npm start.',
  );
}
