import { z } from './zod.ts';

/** A refusal as a value: the code is for machines, the sentence for people, the field for the form that asked. Exceptions are for bugs. */
export const Problem = z.strictObject({
  code: z.string(),
  sentence: z.string(),
  field: z.string().optional(),
});
export type Problem = { code: string; sentence: string; field?: string | undefined };

export type Result<T> = { ok: true; value: T } | { ok: false; problem: Problem };

export const ok = <T>(value: T): Result<T> => ({ ok: true, value });
export const refuse = (code: string, sentence: string, field?: string): { ok: false; problem: Problem } => ({
  ok: false,
  problem: field === undefined ? { code, sentence } : { code, sentence, field },
});
