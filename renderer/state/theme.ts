import type { Bench } from './bench.ts';

/** Keeps <html data-theme> with the user's choice, or with the system's when that is the choice. */
export function followTheme(bench: Bench): void {
  const dark = matchMedia('(prefers-color-scheme: dark)');
  const apply = () => {
    const choice = bench.getState().preferences.theme;
    document.documentElement.dataset['theme'] = choice === 'system' ? (dark.matches ? 'dark' : 'light') : choice;
  };
  dark.addEventListener('change', apply);
  bench.subscribe(apply);
  apply();
}
