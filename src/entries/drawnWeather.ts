/** The pictures of the weather; a part of the page, and of a command, that is loaded when it is first asked for. */
import { weatherSeries } from '../functions/weatherSeries';
import { paneColours, paperColours } from '../pictures/colours';
import { drawWeather, type NamedDrawing } from '../pictures/drawWeather';
import { svgToPng, type PngParts } from '../pictures/svgToPng';
import type { SheetPicture, WeatherToDraw } from '../templates/weatherPictures';

const sheetWidthPx = 640;

export function drawForPane({ record, asked }: WeatherToDraw, widthPx: number): NamedDrawing[] {
  return drawWeather(weatherSeries(record, asked), { widthPx, colours: paneColours });
}

/** Those that can be drawn. */
export function drawForSheet({ record, asked }: WeatherToDraw, parts: PngParts): Promise<SheetPicture[]> {
  const drawings = drawWeather(weatherSeries(record, asked), {
    widthPx: sheetWidthPx,
    colours: paperColours,
  });
  const drawn = drawings.flatMap(({ name, drawn: one }) => ('wrong' in one ? [] : [{ name, ...one.value }]));
  return Promise.all(
    drawn.map(async ({ name, svg, alt, widthPx, heightPx }) => ({
      name,
      png: await svgToPng(svg, parts),
      widthPx,
      heightPx,
      altText: alt,
    })),
  );
}
