/** A field for many lines that are pasted or loaded: its label, its help, and the element they stand in. */
import { element, paneId } from './elements';

export interface PasteField {
  readonly element: HTMLElement;
  readonly area: HTMLTextAreaElement;
}

/** @param look on every change of the text by a person */
export function createPasteField(
  name: string,
  rows: number,
  words: { readonly label: string; readonly help: string },
  look: () => void,
): PasteField {
  const id = paneId(name);
  const area = element('textarea', {
    id,
    name,
    rows,
    spellcheck: false,
    'aria-describedby': `${id}-help`,
  });
  area.addEventListener('input', look);
  // By itself the browser takes seconds for a thousand lines, and four times as long for twice as many.
  area.addEventListener('paste', (event) => {
    const text = event.clipboardData?.getData('text/plain') ?? '';
    if (text === '') return;
    event.preventDefault();
    area.setRangeText(text, area.selectionStart, area.selectionEnd, 'end');
    look();
  });
  return {
    element: element(
      'div',
      { class: 'field' },
      element('label', { for: id }, words.label),
      element('div', { class: 'control' }, area),
      element('p', { id: `${id}-help`, class: 'help' }, words.help),
    ),
    area,
  };
}
