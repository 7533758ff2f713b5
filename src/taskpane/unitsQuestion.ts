/** Asked before the units of the season change: what becomes of the numbers that were typed in the old ones. */
import { english } from '../texts/english';
import { fill } from '../texts/fill';
import { element, setText } from './elements';

const words = english.pane.units;

export type UnitsAnswer = 'convert' | 'only';

export interface UnitsQuestion {
  readonly element: HTMLElement;
  /** How many numbers are in question. */
  ask(count: number): void;
  hide(): void;
}

/** @param onAnswer null leaves the units as they are */
export function createUnitsQuestion(onAnswer: (answer: UnitsAnswer | null) => void): UnitsQuestion {
  const question = element('p', {});
  const button = (text: string, answer: UnitsAnswer | null): HTMLButtonElement => {
    const made = element('button', { type: 'button' }, text);
    made.addEventListener('click', () => onAnswer(answer));
    return made;
  };
  const first = button(words.convert, 'convert');
  const all = element(
    'div',
    { class: 'asks', role: 'group', 'aria-label': words.heading, hidden: true },
    question,
    element('div', { class: 'buttons' }, first, button(words.only, 'only'), button(words.leave, null)),
  );
  return {
    element: all,
    ask(count) {
      setText(question, fill(words.ask, { count }));
      all.hidden = false;
      first.focus();
    },
    hide() {
      all.hidden = true;
    },
  };
}

/** A blank cell means the first of the choices. */
export function isOtherUnits(one: unknown, other: unknown): boolean {
  const system = (value: unknown): string => String(value ?? '').toLowerCase() || 'us';
  return system(one) !== system(other);
}
