import { useEffect, useState } from 'react';
import { useBenchApi } from '../../state/useBench.ts';
import { turnForm } from './formKind.ts';
import { leaveField } from './keepFocus.ts';
import { inBar } from './screens.ts';

/** What the keys do, for the page behind "?". */
export const keyTable: readonly { readonly keys: string; readonly does: string }[] = [
  { keys: 'F6', does: 'go round: top bar, left column, page, findings (with Shift the other way)' },
  { keys: 'Alt+1 to Alt+7', does: 'Bow, Arrow, Groups, Trials, Aim, Compare, Record' },
  { keys: 'F2', does: 'on Bow and Arrow: figures on the drawing, or as a plain form' },
  { keys: 'Tab', does: 'the next field; what you typed is kept' },
  { keys: 'Enter', does: 'keep the figure and stay' },
  { keys: 'Esc', does: 'give the old figure back; close a page' },
  { keys: 'in a table: Enter, arrows', does: 'the next cell; Ctrl+Delete takes a row out' },
  { keys: 'Up, Down', does: 'step a figure by the trade’s step' },
  { keys: 'Ctrl+Z, Ctrl+Shift+Z', does: 'undo, redo; both survive a restart' },
  {
    keys: 'on the face: arrows',
    does: 'move the shot in hand 1 mm, with Shift 5 mm; without one the cross 5 mm, with Shift 1 mm',
  },
  { keys: 'on the face: Enter', does: 'set a shot at the cross' },
  { keys: 'on the face: digits', does: 'the arrow’s number of the shot in hand, or the last; 0 takes it off' },
  { keys: 'on the face: Backspace', does: 'remove the shot in hand, or the last' },
  { keys: 'on the face: N, L', does: 'begin the next end, leave the shot in hand out' },
  { keys: 'at: 12 −8 and Enter, or 12r 8d', does: 'a shot 12 right and 8 down; 3: before it numbers the arrow' },
  { keys: 'on the face: Page Up, Page Down', does: 'take a shot in hand; Esc lets it go' },
  { keys: 'on a photo: as on the face', does: 'and plus and minus, or the wheel, look closer and wider' },
  { keys: 'on the flight: arrows', does: 'read it, or move its target, by 1; with Shift by 5, Page Up and Page Down by 10' },
  { keys: '?', does: 'this page' },
];

const regions = ['bar', 'rack', 'work', 'findings'] as const;

function goRound(back: boolean): void {
  const here = document.activeElement?.closest('[data-region]')?.getAttribute('data-region');
  const at = regions.findIndex((region) => region === here);
  for (let step = 1; step <= regions.length; step++) {
    const next = regions[(at + (back ? -step : step) + 2 * regions.length) % regions.length];
    const region = document.querySelector<HTMLElement>(`[data-region="${next}"]`);
    const found = [
      ...(region?.querySelectorAll<HTMLElement>('button:not([disabled]), input, select, textarea, [tabindex="0"]') ?? []),
    ];
    const first = found.find((element) => element.checkVisibility());
    if (first !== undefined) return first.focus();
  }
}

/** Where letters stand, keys that are letters belong to the field. */
const inField = (target: EventTarget | null): HTMLElement | null =>
  target instanceof HTMLElement ? target.closest<HTMLElement>('input:not([type="radio"]), textarea') : null;

/** A field that was only passed through has nothing of its own to undo. */
const isTyping = (target: EventTarget | null) => {
  const field = inField(target);
  return field !== null && field.dataset['typing'] !== 'no';
};

/** The keys that work everywhere, wherever the focus is; while a page is open over the work they rest. */
export function useShortcuts() {
  const [open, setOpen] = useState(false);
  const bench = useBenchApi();

  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      if (document.querySelector('dialog[open]') !== null) return;
      const control = event.ctrlKey || event.metaKey;
      const key = event.key.toLowerCase();
      if (event.key === 'F6') {
        goRound(event.shiftKey);
      } else if (event.key === 'F2') {
        turnForm(bench.getState().screen);
      } else if (event.altKey && !control && /^Digit[1-7]$/.test(event.code)) {
        const screen = inBar[Number(event.code.slice(5)) - 1];
        if (screen === undefined || bench.getState().setupId === null) return;
        if (screen !== bench.getState().screen) leaveField();
        bench.getState().go(screen);
      } else if (control && !isTyping(event.target) && (key === 'z' || key === 'y')) {
        void (key === 'y' || event.shiftKey ? bench.getState().redo() : bench.getState().undo());
      } else if (event.key === '?' && inField(event.target) === null) {
        setOpen(true);
      } else return;
      event.preventDefault();
    };
    document.addEventListener('keydown', onKeyDown);
    return () => document.removeEventListener('keydown', onKeyDown);
  }, [bench]);
  return { open, setOpen };
}
