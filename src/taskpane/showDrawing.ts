/** A picture in the pane, with the same in figures below it, or the advice that stands in its place. */
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { element } from './elements';

export type Drawn =
  | {
      readonly value: {
        readonly svg: string;
        readonly title: string;
        readonly alt: string;
        readonly headers: readonly string[];
        readonly rows: readonly (readonly string[])[];
      };
    }
  | { readonly wrong: string };

/** Narrower is a page that is not laid out; wider than a sheet's picture serves nobody. */
const widths = { least: 272, most: 640 };

/** How wide a picture is drawn to stand in that place. */
export function widthFor(place: HTMLElement): number {
  return Math.min(Math.max(place.clientWidth, widths.least), widths.most);
}

export function showDrawing(drawn: Drawn): HTMLElement {
  if ('wrong' in drawn) return element('p', { class: 'note' }, drawn.wrong);
  const { svg, title, alt, headers, rows } = drawn.value;
  // Parsed as XML and nothing else: a page's parser would also run what stands in it.
  const picture = new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement;
  picture.setAttribute('role', 'img');
  picture.setAttribute('aria-label', alt);
  return element(
    'figure',
    {},
    picture,
    element(
      'details',
      {},
      element('summary', {}, fill(catalogue.pictures.pane.figures, { title })),
      element(
        'div',
        { class: 'lines', tabindex: 0, role: 'region', 'aria-label': title },
        element(
          'table',
          {},
          element(
            'thead',
            {},
            element('tr', {}, ...headers.map((text) => element('th', { scope: 'col' }, text))),
          ),
          element(
            'tbody',
            {},
            ...rows.map((row) => element('tr', {}, ...row.map((text) => element('td', {}, text)))),
          ),
        ),
      ),
    ),
  );
}
