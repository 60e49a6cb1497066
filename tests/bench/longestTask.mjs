// The longest task of the page's main thread while something is done. What a task costs is its processor time; how long it was held up
// depends on the machine's other work, so both are told.

/** @typedef {{ name: string, ph: string, pid: number, tid: number, ts: number, dur?: number, tdur?: number, args?: { name?: string } }} TraceEvent */

/**
 * Tasks of the main thread of whatever page works meanwhile.
 * @param {import('playwright').Browser} browser
 * @param {() => Promise<void>} act
 */
export async function longestTask(browser, act) {
  const session = await browser.newBrowserCDPSession();
  /** @type {TraceEvent[]} */
  const events = [];
  session.on('Tracing.dataCollected', ({ value }) => {
    for (const event of /** @type {TraceEvent[]} */ (/** @type {unknown} */ (value))) events.push(event);
  });
  const whole = new Promise((resolve) => session.once('Tracing.tracingComplete', resolve));
  await session.send('Tracing.start', {
    traceConfig: { includedCategories: ['toplevel'] },
    transferMode: 'ReportEvents',
  });
  await act();
  await session.send('Tracing.end');
  await whole;
  await session.detach();
  const threads = new Set(
    events
      .filter(({ name, args }) => name === 'thread_name' && args?.name === 'CrRendererMain')
      .map(({ pid, tid }) => `${pid} ${tid}`),
  );
  const tasks = events.filter(({ name, ph, pid, tid }) => ph === 'X' && /RunTask/.test(name) && threads.has(`${pid} ${tid}`));
  const most = (/** @type {'dur' | 'tdur'} */ key) =>
    tasks.reduce((longest, task) => Math.max(longest, (task[key] ?? 0) / 1000), 0);
  return { processor: most('tdur'), wall: most('dur') };
}
