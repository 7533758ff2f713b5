/** What no figure can answer for: told once, out of the way. */
import { catalogue } from '../texts/catalogue';
import { element, paneId } from './elements';

const { pane } = catalogue;

export function createCautionsSection(cautions: readonly string[]): HTMLElement {
  const id = paneId('cautions-heading');
  return element(
    'section',
    { 'aria-labelledby': id },
    element(
      'details',
      {},
      element('summary', {}, element('h2', { id }, pane.cautions.heading)),
      createCautionList(cautions),
    ),
  );
}

export function createCautionList(cautions: readonly string[]): HTMLElement {
  return element('ul', { class: 'cautions' }, ...cautions.map((caution) => element('li', {}, caution)));
}
