/**
 * What a page of the bench may do, the same under app:// and on the loopback host: load its own files and talk to its own host,
 * nothing else. No library of ours writes HTML from strings, so the only trusted-types policies that are admitted are those by
 * which the page starts its own two workers, and no other.
 */
const contentSecurityPolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
  "object-src 'none'",
  "require-trusted-types-for 'script'",
  'trusted-types photo-worker strip-worker',
].join('; ');

export const securityHeaders: Readonly<Record<string, string>> = {
  'Content-Security-Policy': contentSecurityPolicy,
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Embedder-Policy': 'require-corp',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Permissions-Policy': 'camera=(), microphone=(), geolocation=(), usb=(), serial=(), hid=()',
  'Cache-Control': 'no-store',
};

export const SCHEME = 'app';
const BENCH_HOST = 'bench';
export const ORIGIN = `${SCHEME}://${BENCH_HOST}`;

/** Taken apart by a URL parser, never compared as a prefix: app://bench.elsewhere.test must not pass. */
export function isOurs(url: string): boolean {
  if (!URL.canParse(url)) return false;
  const { protocol, host, username } = new URL(url);
  return protocol === `${SCHEME}:` && host === BENCH_HOST && username === '';
}
