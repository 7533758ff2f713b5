/** The pictures of the weather: drawn when asked, with the same in figures below each, and put into a sheet. */
import type { WorkbookPort } from '../workbook/port';
import {
  putWeatherPictures,
  readWeatherToDraw,
  type SheetPicture,
  type WeatherToDraw,
} from '../templates/weatherPictures';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { element } from './elements';
import type { WeatherSheetRead } from './readWeatherSheet';

const words = catalogue.pictures.pane;

/** A picture, or the advice that stands in its place. */
export interface PaneDrawing {
  readonly name: string;
  readonly drawn:
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
}

export interface PictureTools {
  drawForPane(weather: WeatherToDraw, widthPx: number): Promise<readonly PaneDrawing[]>;
  drawForSheet(weather: WeatherToDraw): Promise<readonly SheetPicture[]>;
}

export interface PictureParts {
  readonly workbook: WorkbookPort;
  readonly tools: PictureTools;
  readonly addButton: (button: HTMLButtonElement) => void;
  /** An action whose failure is said. */
  readonly run: (action: () => Promise<void>) => void;
  readonly say: (text: string) => void;
}

/** Narrower is a page that is not laid out; wider than a sheet's picture serves nobody. */
const widths = { least: 272, most: 640 };

export interface WeatherPictures {
  readonly element: HTMLElement;
  show(read: Pick<WeatherSheetRead, 'form' | 'sowings' | 'pictures'>): void;
}

export function createWeatherPictures({
  workbook,
  tools,
  addButton,
  run,
  say,
}: PictureParts): WeatherPictures {
  const draw = element('button', { type: 'button' }, words.draw);
  const put = element('button', { type: 'button' }, words.put);
  addButton(draw);
  addButton(put);
  const older = element('p', { class: 'note', hidden: true }, words.older);
  const olderHere = element('p', { class: 'note', hidden: true }, words.olderHere);
  const place = element('div', { class: 'pictures' });
  /** What the sheets said when they were last read, and when the pictures below were drawn. */
  let now = '';
  let drawnOf: string | null = null;
  const withWeather = async (use: (weather: WeatherToDraw) => Promise<void>): Promise<void> => {
    const weather = await readWeatherToDraw(workbook);
    if (weather === null) return say(words.nothing);
    await use(weather);
  };
  draw.addEventListener('click', () =>
    run(() =>
      withWeather(async (weather) => {
        const width = Math.min(Math.max(place.clientWidth, widths.least), widths.most);
        const drawings = await tools.drawForPane(weather, width);
        place.replaceChildren(...drawings.map(showDrawing));
        drawnOf = now;
        olderHere.hidden = true;
        say(fill(words.drawn, { count: drawings.filter(({ drawn }) => 'value' in drawn).length }));
      }),
    ),
  );
  put.addEventListener('click', () =>
    run(() =>
      withWeather(async (weather) => {
        const pictures = await tools.drawForSheet(weather);
        if (pictures.length === 0) return say(words.nothing);
        const sheet = await putWeatherPictures(workbook, pictures, weather, words.undo);
        say(fill(words.done, { count: pictures.length, sheet }));
      }),
    ),
  );
  return {
    element: element(
      'div',
      {},
      element('h3', {}, words.heading),
      older,
      element('div', { class: 'buttons' }, draw, put),
      olderHere,
      place,
    ),
    show({ form, sowings, pictures }) {
      now = JSON.stringify([form.values, sowings]);
      older.hidden = pictures !== catalogue.pictures.sheet.older;
      olderHere.hidden = drawnOf === null || drawnOf === now;
    },
  };
}

function showDrawing({ drawn }: PaneDrawing): HTMLElement {
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
      element('summary', {}, fill(words.figures, { title })),
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
