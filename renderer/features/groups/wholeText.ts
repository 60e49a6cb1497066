/** A count as it is, thousands parted by a comma: what was shot and scored is not rounded. */
export const wholeText = (count: number): string => count.toLocaleString('en-GB');
