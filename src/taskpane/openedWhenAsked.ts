/** A section whose content is fetched when it is first asked for: it would make the page heavier for all others. */
import { catalogue } from '../texts/catalogue';
import type { Actions } from './actions';
import { element, section } from './elements';
import { createNotice } from './notice';

export interface WhenAskedWords {
  readonly heading: string;
  readonly lead: string;
  readonly open: string;
}

/** @param fetch gives the content, which takes the focus from the button that asked for it */
export function openedWhenAsked(
  name: string,
  { heading, lead, open }: WhenAskedWords,
  actions: Pick<Actions, 'onRun'>,
  fetch: () => Promise<{ readonly element: HTMLElement; focus(): void }>,
): HTMLElement {
  const { element: all } = section(name, heading);
  const notice = createNotice(actions);
  const button = element('button', { type: 'button' }, open);
  const buttons = element('div', { class: 'buttons' }, button);
  all.append(element('p', { class: 'lead' }, lead), buttons, notice.element);
  let isAsked = false;
  const show = async (): Promise<void> => {
    if (isAsked) return;
    isAsked = true;
    all.classList.add('fetching');
    notice.say(catalogue.pane.fetched.fetching);
    try {
      const content = await fetch();
      notice.element.remove();
      buttons.replaceWith(content.element);
      content.focus();
    } catch {
      isAsked = false;
      notice.warn(catalogue.pane.fetched.failed);
    } finally {
      all.classList.remove('fetching');
    }
  };
  button.addEventListener('click', () => void show());
  return all;
}
