import { useState, type KeyboardEvent } from 'react';
import { useBenchApi } from '../../state/useBench.ts';
import { inBar } from './screens.ts';

/** What the keys do, for the page behind "?". */
export const keyTable: readonly { readonly keys: string; readonly does: string }[] = [
  { keys: 'F6', does: 'go round: bar, rack, work, findings (with Shift the other way)' },
  { keys: 'Alt+1 to Alt+6', does: 'Bow, Arrow, Groups, Aim, Compare, Record' },
  { keys: 'Tab', does: 'the next field; what you typed is kept' },
  { keys: 'Enter', does: 'keep the figure and stay' },
  { keys: 'Esc', does: 'give the old figure back; close a page' },
  { keys: 'Up, Down', does: 'step a figure by the trade’s step' },
  { keys: 'Ctrl+Z, Ctrl+Shift+Z', does: 'undo, redo; both survive a restart' },
  { keys: 'on the face: arrows', does: 'move the cross 5 mm, with Shift 1 mm' },
  { keys: 'on the face: Enter', does: 'set a shot at the cross' },
  { keys: 'on the face: digits', does: 'number the shot just set or chosen' },
  { keys: 'on the face: Backspace', does: 'take the last shot back' },
  { keys: 'on the face: Page Up, Page Down', does: 'choose a shot; arrows then nudge it 1 mm; Esc lets it go' },
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
    const first = region?.querySelector<HTMLElement>('button:not([disabled]), input, select, textarea, [tabindex="0"]');
    if (first !== null && first !== undefined) return first.focus();
  }
}

const isTyping = (target: EventTarget) => target instanceof HTMLElement && target.closest('input, textarea, select') !== null;

/** The keys that work everywhere. Ctrl+Z inside a field that is being typed in belongs to the field. */
export function useShortcuts() {
  const [open, setOpen] = useState(false);
  const bench = useBenchApi();

  const onKeyDown = (event: KeyboardEvent) => {
    const control = event.ctrlKey || event.metaKey;
    if (event.key === 'F6') {
      event.preventDefault();
      goRound(event.shiftKey);
    } else if (event.altKey && /^Digit[1-6]$/.test(event.code)) {
      event.preventDefault();
      const screen = inBar[Number(event.code.slice(5)) - 1];
      if (screen !== undefined && bench.getState().setupId !== null) bench.getState().go(screen);
    } else if (control && event.key.toLowerCase() === 'z' && !isTyping(event.target)) {
      event.preventDefault();
      void (event.shiftKey ? bench.getState().redo() : bench.getState().undo());
    } else if (control && event.key.toLowerCase() === 'y' && !isTyping(event.target)) {
      event.preventDefault();
      void bench.getState().redo();
    } else if (event.key === '?' && !isTyping(event.target)) {
      setOpen(true);
    }
  };
  return { open, setOpen, onKeyDown };
}
