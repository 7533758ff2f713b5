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
import { showDrawing, widthFor, type Drawn } from './showDrawing';

const words = catalogue.pictures.pane;

/** A picture, or the advice that stands in its place. */
export interface PaneDrawing {
  readonly name: string;
  readonly drawn: Drawn;
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
        const drawings = await tools.drawForPane(weather, widthFor(place));
        place.replaceChildren(...drawings.map(({ drawn }) => showDrawing(drawn)));
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
