/** Throws, with a sentence, when the page or the notebook does not answer. */
export function smoke(address: string): Promise<{ version: string; file: string; records: number }>;
