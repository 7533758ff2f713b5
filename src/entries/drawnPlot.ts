/** The pictures of plots; a part of the page that is loaded when it is first asked for. */
import type { Answer } from '../functions/answering';
import { plotPlaces } from '../functions/plotPlaces';
import { paneColours, paperColours, type Colours } from '../pictures/colours';
import { drawPlot } from '../pictures/drawPlot';
import type { Drawing } from '../pictures/drawSvg';
import { svgToPng, type PngParts } from '../pictures/svgToPng';
import type { PlotToDraw } from '../templates/plotToDraw';

const sheetWidthPx = 640;
export const fileWidthPx = 1600;

const draw = ({ asked, ...plot }: PlotToDraw, widthPx: number, colours: Colours): Answer<Drawing> => {
  const places = plotPlaces(asked);
  if ('wrong' in places) return places;
  return { value: drawPlot({ ...plot, ...places.value }, { widthPx, colours }) };
};

export const drawPlotForPane = (plot: PlotToDraw, widthPx: number): Answer<Drawing> =>
  draw(plot, widthPx, paneColours);

export async function drawPlotForSheet(plot: PlotToDraw, parts: PngParts, width = sheetWidthPx) {
  const drawn = draw(plot, width, paperColours);
  if ('wrong' in drawn) return drawn;
  const { svg, widthPx, heightPx, alt } = drawn.value;
  const png = await svgToPng(svg, parts);
  return { value: { plot: plot.plot, stands: plot.stands, png, widthPx, heightPx, altText: alt } };
}
