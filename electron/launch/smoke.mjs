// Whether a host answers: the page, the notebook, and the records in it. Node's own modules only.

/**
 * Throws, with a sentence, when the page or the notebook does not answer.
 *
 * @param {string} address
 * @returns {Promise<{ version: string, file: string, records: number }>}
 */
export async function smoke(address) {
  const { origin, hash } = new URL(address);
  const page = await fetch(`${origin}/`);
  if (!page.ok || !(await page.text()).includes('<script')) throw new Error('the page of the bench does not answer');

  /** @type {(path: string, bearer: string | null, input: unknown) => Promise<any>} */
  const post = async (path, bearer, input) => {
    const answer = await fetch(`${origin}/api/${path}`, {
      method: 'POST',
      headers: { origin, 'content-type': 'application/json', authorization: `Bearer ${bearer}` },
      body: JSON.stringify(input),
    });
    if (!answer.ok) throw new Error(`the host answers ${path} with ${answer.status}`);
    return answer.json();
  };
  const { token } = await post('session', new URLSearchParams(hash.slice(1)).get('code'), null);
  const info = await post('bench.info', token, null);
  const book = await post('notebook.load', token, { book: 'own' });
  if (!info.ok) throw new Error(info.problem.sentence);
  if (!book.ok) throw new Error(book.problem.sentence);
  return { version: info.value.version, file: info.value.notebook.file, records: book.value.records.length };
}
