/** What a page of our own and its two parts are called, for whoever does not see them. */
import { catalogue } from '../texts/catalogue';
import { language } from '../texts/language';

const { keys, regions, title } = catalogue.pane;

export function namePage(grid: HTMLElement, pane: HTMLElement): void {
  document.documentElement.lang = language;
  document.title = title;
  grid.setAttribute('aria-label', regions.grid);
  grid.setAttribute('aria-description', keys);
  pane.setAttribute('aria-label', regions.pane);
}
