/** Frames that a face may take to stand on the page. */
const PATIENCE = 30;

const places = { typed: '[data-typed-shot]', face: '.face-target' } as const;

/** A group that was just begun takes its shots at once: at the face, or in the field for whoever began it by a key (a click is none). */
export function focusEntry(where: keyof typeof places, frames = PATIENCE): void {
  requestAnimationFrame(() => {
    // A sheet that is closing gives the focus back first.
    const there = document.querySelector('dialog[open]') === null ? document.querySelector(places[where]) : null;
    if (there instanceof HTMLElement || there instanceof SVGElement) there.focus();
    else if (frames > 0) focusEntry(where, frames - 1);
  });
}
