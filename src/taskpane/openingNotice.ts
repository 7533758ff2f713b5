/** What stands in the pane until the workbook is there, and instead of it when it does not come. */
import { catalogue } from '../texts/catalogue';
import { element, setText } from './elements';

const { opening, title } = catalogue.pane;

export interface OpeningNotice {
  /** It takes longer than usual; it may still come. */
  slow(): void;
  /** It will not come. */
  failed(reason: keyof typeof opening.reasons): void;
}

/** @param tryAgain opens the page anew */
export function showOpening(root: HTMLElement, tryAgain: () => void): OpeningNotice {
  const status = element('p', { role: 'status' }, opening.waiting);
  const trouble = element('p', { role: 'alert', class: 'notice notice-bad' });
  const again = element('button', { type: 'button', hidden: true }, opening.again);
  again.addEventListener('click', tryAgain);
  root.replaceChildren(element('header', {}, element('h1', {}, title)), status, trouble, again);
  return {
    slow() {
      setText(status, opening.slow);
      again.hidden = false;
    },
    failed(reason) {
      setText(status, '');
      setText(trouble, opening.reasons[reason]);
      again.hidden = reason !== 'blocked';
    },
  };
}
