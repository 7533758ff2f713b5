/** The button that begins the page anew in the other language, and what is said where that is needed. */
import { catalogue } from '../texts/catalogue';
import { element, setText } from './elements';
import type { Speak } from './paneTools';

const words = catalogue.pane.language;

export interface LanguageChoice {
  readonly element: HTMLElement;
  /** Whether the sheets of the workbook are in the other language, so that nothing but the button helps. */
  show(isNeeded: boolean): void;
}

export function createLanguageChoice(speak: Speak): LanguageChoice {
  const button = element('button', { type: 'button', lang: words.tag }, words.other);
  const notice = element('p', { role: 'alert', class: 'notice notice-bad' });
  button.addEventListener('click', () => {
    if (!speak(words.tag)) setText(notice, words.notKept);
  });
  return {
    element: element('div', { class: 'language' }, button, notice),
    show: (isNeeded) => setText(notice, isNeeded ? words.sheetsInOther : ''),
  };
}
