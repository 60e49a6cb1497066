/**
 * One piece of work at a time, in the order it was asked for: the second edit of a record must see the first one's revision. What fails does
 * not hold up the next.
 */
export function turnTaking(): <T>(work: () => Promise<T>) => Promise<T> {
  let last: Promise<unknown> = Promise.resolve();
  return (work) => {
    const run = last.then(work, work);
    last = run.catch(() => undefined);
    return run;
  };
}
