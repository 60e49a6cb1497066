const SHORTEST_WAIT = 1_000;
const LONGEST_WAIT = 30_000;

/**
 * The host's one event stream, a line of JSON an event. It is fetched rather than opened as an EventSource, because that cannot send
 * the token in a header, and a token in an address ends up in histories.
 */
export function listenToHost(headers: () => Promise<Record<string, string>>, listener: (event: unknown) => void): () => void {
  const ended = new AbortController();
  void keepListening(headers, listener, ended.signal);
  return () => ended.abort();
}

async function keepListening(
  headers: () => Promise<Record<string, string>>,
  listener: (event: unknown) => void,
  signal: AbortSignal,
) {
  let wait = SHORTEST_WAIT;
  let connections = 0;
  while (!signal.aborted) {
    try {
      const answer = await fetch('/api/events', { headers: await headers(), signal });
      if (!answer.ok || answer.body === null) return; // not admitted: asking again would not help
      wait = SHORTEST_WAIT;
      // News told while the line was down is lost; whoever listens must look again.
      if (connections++ > 0) listener({ event: 'host.reconnected' });
      await readLines(answer.body, listener);
    } catch {
      // The host has gone or the page is leaving; the next call says so in words.
    }
    await new Promise((resolve) => setTimeout(resolve, wait));
    wait = Math.min(2 * wait, LONGEST_WAIT);
  }
}

async function readLines(body: ReadableStream<Uint8Array>, listener: (event: unknown) => void) {
  const reader = body.getReader();
  const decoder = new TextDecoder();
  let rest = '';
  for (let part = await reader.read(); !part.done; part = await reader.read()) {
    const lines = (rest + decoder.decode(part.value, { stream: true })).split('\n');
    rest = lines.pop() ?? '';
    for (const line of lines) if (line !== '') listener(JSON.parse(line));
  }
}
