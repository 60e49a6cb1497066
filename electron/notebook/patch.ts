import { z } from 'zod';

/**
 * What a Change did to one record's text: at this place, this came out and that was put in. The journal keeps these rather than whole
 * records, since a group entered shot by shot would otherwise be written whole for every shot. A birth has nothing to take out (null),
 * a removal nothing to put in.
 */
export const Patch = z.strictObject({
  id: z.uuid(),
  kind: z.string(),
  at: z.int().nonnegative(),
  out: z.string().nullable(),
  put: z.string().nullable(),
});
export type Patch = z.infer<typeof Patch>;

export function patchBetween(id: string, kind: string, before: string | null, after: string | null): Patch {
  if (before === null || after === null) return { id, kind, at: 0, out: before, put: after };
  let start = 0;
  const shorter = Math.min(before.length, after.length);
  while (start < shorter && before.charCodeAt(start) === after.charCodeAt(start)) start++;
  let end = 0;
  while (end < shorter - start && before.charCodeAt(before.length - 1 - end) === after.charCodeAt(after.length - 1 - end)) end++;
  return { id, kind, at: start, out: before.slice(start, before.length - end), put: after.slice(start, after.length - end) };
}

export const inverse = (patch: Patch): Patch => ({ ...patch, out: patch.put, put: patch.out });

/** The text after the patch; undefined when the text is not the one that the patch was made for. */
export function applyPatch(text: string | null, patch: Patch): string | null | undefined {
  if (patch.out === null) return text === null ? patch.put : undefined;
  if (text === null || !text.startsWith(patch.out, patch.at)) return undefined;
  if (patch.put === null) return text === patch.out ? null : undefined;
  return text.slice(0, patch.at) + patch.put + text.slice(patch.at + patch.out.length);
}
