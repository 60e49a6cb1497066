/** The path of the built child; its folder is the caller's to remove. */
export function buildWriter(): Promise<string>;
