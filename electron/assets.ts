import fs from 'node:fs/promises';
import path from 'node:path';

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json',
  '.map': 'application/json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.txt': 'text/plain; charset=utf-8',
};

export interface Asset {
  readonly body: Buffer<ArrayBuffer>;
  readonly type: string;
}

/** A file of the page, by the path of its address. Null for whatever does not lie below the folder: no way up, no link out, no dot file. */
export async function readAsset(folder: string, urlPath: string): Promise<Asset | null> {
  const wanted = decoded(urlPath);
  if (wanted === null || /[\0\\]/.test(wanted)) return null;
  const parts = wanted.split('/').filter((part) => part !== '');
  if (parts.some((part) => part.startsWith('.'))) return null;
  try {
    const root = await fs.realpath(folder);
    const file = await fs.realpath(path.join(root, ...(parts.length === 0 ? ['index.html'] : parts)));
    const type = types[path.extname(file)];
    if (!file.startsWith(root + path.sep) || type === undefined) return null;
    return { body: Buffer.from(await fs.readFile(file)), type };
  } catch {
    return null;
  }
}

function decoded(urlPath: string): string | null {
  try {
    return decodeURIComponent(urlPath);
  } catch {
    return null;
  }
}
