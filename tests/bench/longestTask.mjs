// The longest task of the page's main thread while something is done. What a task costs is its processor time; how long it was held up
// depends on the machine's other work, so both are told.

/** @typedef {{ name: string, ph: string, pid: number, tid: number, ts: number, dur?: number, tdur?: number }} TraceEvent */

/** Where the page says that it is watched from here on: the browser has pages of its own at work beside it. */
const MARK = 'watched from here';

/**
 * The longest task of the page's main thread [ms].
 * @param {import('playwright').Page} page
 * @param {() => Promise<void>} act
 */
export async function longestTask(page, act) {
  const browser = page.context().browser();
  if (browser === null) throw new Error('no browser around the page');
  const session = await browser.newBrowserCDPSession();
  /** @type {TraceEvent[]} */
  const events = [];
  session.on('Tracing.dataCollected', ({ value }) => {
    for (const event of /** @type {TraceEvent[]} */ (/** @type {unknown} */ (value))) events.push(event);
  });
  const whole = new Promise((resolve) => session.once('Tracing.tracingComplete', resolve));
  await session.send('Tracing.start', {
    traceConfig: { includedCategories: ['toplevel', 'blink.user_timing'] },
    transferMode: 'ReportEvents',
  });
  await page.evaluate((mark) => void performance.mark(mark), MARK);
  await act();
  await session.send('Tracing.end');
  await whole;
  await session.detach();
  const mark = events.find(({ name }) => name === MARK);
  if (mark === undefined) throw new Error('the page was not watched');
  const tasks = events.filter(
    ({ name, ph, pid, tid, ts }) => ph === 'X' && /RunTask/.test(name) && pid === mark.pid && tid === mark.tid && ts > mark.ts,
  );
  const most = (/** @type {'dur' | 'tdur'} */ key) =>
    tasks.reduce((longest, task) => Math.max(longest, (task[key] ?? 0) / 1000), 0);
  return { processor: most('tdur'), wall: most('dur') };
}
