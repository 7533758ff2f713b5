/** The button that begins the page anew in the other language, and what is said where that is needed. */
import { catalogue } from '../texts/catalogue';
import { element, setText } from './elements';
import type { Speak } from './paneTools';

const words = catalogue.pane.language;
const pressedKey = 'cucurbit-functions language pressed';

export interface LanguageChoice {
  readonly element: HTMLElement;
  /** Whether the sheets of the workbook are in the other language, so that nothing but the button helps. */
  show(isNeeded: boolean): void;
  /** On the page that the button began, once it is read: gives it the keyboard again, unless somebody went on. */
  takeBack(): void;
}

export function createLanguageChoice(speak: Speak): LanguageChoice {
  const button = element('button', { type: 'button', lang: words.tag }, words.other);
  const notice = element('p', { role: 'alert', class: 'notice notice-bad' });
  let isBegunHere = takePressed();
  const goOn = (): void => {
    isBegunHere = false;
  };
  for (const type of ['keydown', 'pointerdown']) {
    document.addEventListener(type, goOn, { capture: true, once: true });
  }
  button.addEventListener('click', () => {
    keepPressed();
    if (speak(words.tag)) return;
    takePressed();
    setText(notice, words.notKept);
  });
  return {
    element: element('div', { class: 'language' }, button, notice),
    show: (isNeeded) => setText(notice, isNeeded ? words.sheetsInOther : ''),
    takeBack() {
      if (isBegunHere) button.focus();
      goOn();
    },
  };
}

/** Kept over the new beginning of the page. A browser may keep nothing, and says so by an error. */
function keepPressed(): void {
  try {
    sessionStorage.setItem(pressedKey, 'yes');
  } catch {
    // Then the page begins where every page does.
  }
}

function takePressed(): boolean {
  try {
    const isPressed = sessionStorage.getItem(pressedKey) !== null;
    sessionStorage.removeItem(pressedKey);
    return isPressed;
  } catch {
    return false;
  }
}
