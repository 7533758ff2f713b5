/** A question before an action, with its answers as buttons; the first has the focus when it is asked. */
import { element, setText } from './elements';

export interface Asks {
  readonly element: HTMLElement;
  ask(question: string): void;
  hide(): void;
}

export function createAsks(label: string, answers: readonly HTMLButtonElement[]): Asks {
  const question = element('p', {});
  const all = element(
    'div',
    { class: 'asks', role: 'group', 'aria-label': label, hidden: true },
    question,
    element('div', { class: 'buttons' }, ...answers),
  );
  return {
    element: all,
    ask(text) {
      setText(question, text);
      all.hidden = false;
      answers[0]?.focus();
    },
    hide() {
      all.hidden = true;
    },
  };
}
