export const quietFlags: readonly string[];
export function systemBrowser(): string | null;
export function hasDesktop(): boolean;
export function openAddress(address: string): Promise<boolean>;
