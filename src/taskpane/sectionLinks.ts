/** The way to each section past a long form. Moves the focus itself: the page's address belongs to the host. */
import { catalogue } from '../texts/catalogue';
import { element, setText } from './elements';

const { pane } = catalogue;

export interface SectionLinks {
  readonly element: HTMLElement;
  /** Takes the headings as they read now: one of them counts. */
  update(): void;
}

export function createSectionLinks(sections: readonly HTMLElement[]): SectionLinks {
  const pairs = sections.flatMap((section) => {
    const heading = section.querySelector('h2');
    if (heading === null) return [];
    heading.tabIndex = -1;
    const link = element('a', { href: `#${heading.id}` });
    link.addEventListener('click', (event) => {
      event.preventDefault();
      heading.focus();
      heading.scrollIntoView({ block: 'start' });
    });
    return [{ heading, link }];
  });
  const update = (): void => {
    for (const { heading, link } of pairs) setText(link, heading.textContent ?? '');
  };
  update();
  const items = pairs.map(({ link }) => element('li', {}, link));
  return { element: element('nav', { 'aria-label': pane.parts }, element('ul', {}, ...items)), update };
}
