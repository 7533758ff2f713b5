/** Makes page elements. Text is always text: nothing that comes from a sheet is read as markup. */
type Attributes = Readonly<Record<string, string | number | boolean>>;

/** true sets an attribute without a value, false leaves it out. */
export function element<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  attributes: Attributes = {},
  ...children: readonly (Node | string)[]
): HTMLElementTagNameMap[Tag] {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (value !== false) made.setAttribute(name, value === true ? '' : String(value));
  }
  made.append(...children);
  return made;
}

/** An id that the page around the pane will not use. */
export function paneId(name: string): string {
  return `cucurbit-${name.toLowerCase().replaceAll(/[^a-z0-9]+/g, '-')}`;
}

/** A section named by its heading. */
export function section(
  name: string,
  heading: string,
): { readonly element: HTMLElement; readonly heading: HTMLHeadingElement } {
  const id = paneId(`${name}-heading`);
  const title = element('h2', { id }, heading);
  return { element: element('section', { 'aria-labelledby': id }, title), heading: title };
}

/** Sets a text only where it differs, so that a live region speaks once and a selection in it stays. */
export function setText(target: Element, text: string): void {
  if (target.textContent !== text) target.textContent = text;
}
