import path from 'node:path';
import type { Tracked } from './tracked.ts';

/** Links and pictures of the Markdown files that lead to no tracked file: a reader on another machine would find nothing there. */
export function linkFaults(tree: readonly Tracked[]): string[] {
  const there = new Set(tree.flatMap(({ path: file }) => [file, ...foldersOf(file)]));
  return tree
    .filter(({ path: file }) => file.endsWith('.md'))
    .flatMap(({ path: file, text }) =>
      targetsIn(text)
        .map((target) => path.posix.join(path.posix.dirname(file), target))
        .filter((target) => !there.has(target))
        .map((target) => `${file} points to ${target}, which is not there`),
    );
}

/** What `[text](target)` and `![picture](target "title")` name within the project; what stands in code is no link. */
function targetsIn(text: string): string[] {
  const prose = text.replaceAll(/^(```|~~~)[^]*?^\1/gm, '').replaceAll(/`[^`\n]*`/g, '');
  return [...prose.matchAll(/\]\(\s*<?([^)\s>]+)>?(?:\s+"[^"]*")?\s*\)/g)]
    .map(([, target = '']) => decodeURIComponent(target.split('#')[0] ?? ''))
    .filter((target) => target !== '' && !/^[a-z][a-z+.-]*:/i.test(target));
}

const foldersOf = (file: string): string[] =>
  file
    .split('/')
    .slice(0, -1)
    .map((_name, i, names) => names.slice(0, i + 1).join('/'));
