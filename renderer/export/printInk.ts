/** The custom properties that the stylesheets give a whole page, and over them those that they give it on paper. */
function printProperties(sheets: Iterable<CSSStyleSheet>): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  const onPaper = new Map<string, string>();
  const take = (rules: CSSRuleList, into: Map<string, string>) => {
    for (const rule of rules) {
      if (rule instanceof CSSMediaRule && rule.conditionText === 'print') take(rule.cssRules, onPaper);
      if (!(rule instanceof CSSStyleRule) || rule.selectorText !== ':root') continue;
      for (const name of rule.style) if (name.startsWith('--')) into.set(name, rule.style.getPropertyValue(name));
    }
  };
  for (const sheet of sheets) take(sheet.cssRules, found);
  return new Map([...found, ...onPaper]);
}

/**
 * A copy of an element as it would look on paper, whatever theme is on, for as long as it is read. It hangs below copies of the element's
 * own ancestors, because the stylesheets speak of what stands inside what; it is never shown.
 */
export function inPrintInk<T>(element: Element, read: (copy: Element) => T): T {
  const copy = element.cloneNode(true) as Element;
  let top = copy;
  for (let above = element.parentElement; above !== null && above !== document.body; above = above.parentElement) {
    const around = above.cloneNode(false) as Element;
    around.append(top);
    top = around;
  }
  const page = document.createElement('div');
  page.hidden = true;
  page.inert = true;
  for (const [name, value] of printProperties(document.styleSheets)) page.style.setProperty(name, value);
  // Inherited as a colour, not as the token it came from.
  page.style.color = 'var(--ink)';
  // Names and ids stand once in a page: the copy has none that a label or a finding could lead to.
  page.append(top);
  for (const named of page.querySelectorAll('[data-field], input[name]')) {
    named.removeAttribute('data-field');
    named.removeAttribute('name');
  }
  document.body.append(page);
  try {
    return read(copy);
  } finally {
    page.remove();
  }
}
