/** After an act that takes its own button away the focus goes to the work, not nowhere: Tab and the keys go on from there. */
export function keepFocus(): void {
  requestAnimationFrame(() => {
    if (document.activeElement !== null && document.activeElement !== document.body) return;
    document.querySelector<HTMLElement>('[data-region="work"]')?.focus();
  });
}

/** What is being typed is kept when its field is left, and a field that is taken away with its page is never left. */
export function leaveField(): void {
  const here = document.activeElement;
  if (here instanceof HTMLInputElement || here instanceof HTMLTextAreaElement) here.blur();
}
