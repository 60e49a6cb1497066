interface ScriptPolicy {
  createScriptURL(address: string): string;
}
interface PolicyMaker {
  createPolicy(name: string, rules: { createScriptURL(address: string): string }): ScriptPolicy;
}

const policies = new Map<string, ScriptPolicy>();

/** Starts one of the page's own workers. Its whole address passes the Trusted Types policy of its name, which lets nothing else through. */
export function startOwn(name: 'photo-worker' | 'strip-worker', address: string): Worker {
  const maker = (globalThis as { trustedTypes?: PolicyMaker }).trustedTypes;
  let policy = policies.get(name);
  if (policy === undefined && maker !== undefined) {
    policy = maker.createPolicy(name, {
      createScriptURL(asked) {
        if (asked !== address) throw new TypeError('The bench starts no other worker.');
        return asked;
      },
    });
    policies.set(name, policy);
  }
  return new Worker(policy === undefined ? address : policy.createScriptURL(address), { type: 'module' });
}
