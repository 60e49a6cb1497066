/** After an act that takes its own button away the focus goes to the work, not nowhere: Tab and the keys go on from there. */
export function keepFocus(): void {
  requestAnimationFrame(() => {
    if (document.activeElement !== null && document.activeElement !== document.body) return;
    document.querySelector<HTMLElement>('[data-region="work"]')?.focus();
  });
}
