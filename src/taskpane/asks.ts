/**
 * A question before an action, with its answers as buttons. The first has the focus when it is asked; the last leaves
 * everything as it is, and Escape gives it. Then the focus goes back to what asked.
 */
import { element, paneId, setText } from './elements';

export interface Asks {
  readonly element: HTMLElement;
  /** @param asker gets the focus back; a button does not have it in every browser when it is pressed */
  ask(question: string, asker: { focus(): void }): void;
  hide(): void;
}

export function createAsks(name: string, answers: readonly HTMLButtonElement[]): Asks {
  const id = paneId(`${name}-asked`);
  const question = element('p', { id });
  const all = element(
    'div',
    { class: 'asks', role: 'group', 'aria-labelledby': id, hidden: true },
    question,
    element('div', { class: 'buttons' }, ...answers),
  );
  all.addEventListener('keydown', ({ key }) => {
    if (key === 'Escape') answers.at(-1)?.click();
  });
  let asker: { focus(): void } | null = null;
  return {
    element: all,
    ask(text, by) {
      asker = by;
      setText(question, text);
      all.hidden = false;
      answers[0]?.focus();
    },
    hide() {
      const hadFocus = all.contains(document.activeElement);
      all.hidden = true;
      if (hadFocus) asker?.focus();
    },
  };
}
