import { randomBytes, timingSafeEqual } from 'node:crypto';

const secret = () => randomBytes(32).toString('base64url');

/**
 * Who may call. A code in the fragment of the printed address is exchanged once for the token of this run; whoever reads the address
 * afterwards, in a history or over a shoulder, has nothing. One code is open at a time, and a new one closes the old.
 */
export class Admission {
  readonly #token = secret();
  #code: string | null = null;

  newCode(): string {
    this.#code = secret();
    return this.#code;
  }

  /** The token for the open code, which is closed by that. */
  redeem(authorization: string | undefined): string | null {
    if (this.#code === null || !bears(authorization, this.#code)) return null;
    this.#code = null;
    return this.#token;
  }

  admits(authorization: string | undefined): boolean {
    return bears(authorization, this.#token);
  }
}

function bears(authorization: string | undefined, expected: string): boolean {
  const given = Buffer.from(authorization ?? '');
  const wanted = Buffer.from(`Bearer ${expected}`);
  return given.length === wanted.length && timingSafeEqual(given, wanted);
}
