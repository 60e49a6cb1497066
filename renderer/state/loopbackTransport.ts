import { MOST_CALL_BYTES, TOO_LARGE } from '../../core/channels.ts';
import { refuse } from '../../core/model/problem.ts';
import type { Transport } from './transport.ts';
import { download } from './download.ts';
import { listenToHost } from './loopbackEvents.ts';
import { printPage } from './printPage.ts';

const TOKEN = 'fistmele.token';
const GONE =
  'The bench’s host has stopped, so this last change was not kept; everything before it is. Start it again with npm start and open the address it gives.';
const NOT_ADMITTED =
  'This page is not admitted to the bench: its address works once. Press Enter where npm start runs for a new one, or start the bench with npm start.';

/** Calls to the host that served this page. Two tabs of one session share a token, so each page names itself to be spared its own news. */
export function loopbackTransport(): Transport {
  const page = crypto.randomUUID();
  const token = admission();
  const headers = async () => ({ authorization: `Bearer ${(await token) ?? ''}`, 'x-fistmele-page': page });

  return {
    async call(channel, input) {
      if (channel === 'files.save') return download(input);
      if (channel === 'files.pdf') return printPage(input);
      try {
        if ((await token) === null) return refuse('not-admitted', NOT_ADMITTED);
        const body = JSON.stringify(input);
        if (body.length > MOST_CALL_BYTES) return refuse('too-large', TOO_LARGE);
        const answer = await fetch(`/api/${channel}`, {
          method: 'POST',
          headers: { ...(await headers()), 'content-type': 'application/json' },
          body,
        });
        return answer.status === 401 ? refuse('not-admitted', NOT_ADMITTED) : await answer.json();
      } catch {
        return refuse('host-gone', GONE);
      }
    },
    subscribe: (listener) => listenToHost(headers, listener),
  };
}

/**
 * The one-time code in the address's fragment buys the token of this run. The fragment never leaves the browser in a request, and
 * the token lives in sessionStorage, so that a reload keeps it; a cookie would go to every other port of 127.0.0.1.
 */
async function admission(): Promise<string | null> {
  const code = new URLSearchParams(location.hash.slice(1)).get('code');
  if (code === null) return sessionStorage.getItem(TOKEN);
  history.replaceState(null, '', location.pathname);
  const answer = await fetch('/api/session', {
    method: 'POST',
    headers: { 'content-type': 'application/json', authorization: `Bearer ${code}` },
    body: 'null',
  });
  if (!answer.ok) return sessionStorage.getItem(TOKEN);
  const { token } = (await answer.json()) as { token: string };
  sessionStorage.setItem(TOKEN, token);
  return token;
}
