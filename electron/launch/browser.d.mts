export const quietFlags: readonly string[];
export function systemBrowser(): string | null;
