import type { PlotPictureTools } from '../taskpane/plotPicture';
import type { PictureTools } from '../taskpane/weatherPictures';

const drawnPlot = () => import('./drawnPlot');
const pngParts = async () => (await import('./pictureFiles')).fetchPngParts();

/** Drawing is a part of the page that is loaded when it is first asked for. */
export const picturesWhenAsked: PictureTools & PlotPictureTools = {
  drawForPane: async (weather, widthPx) => (await import('./drawnWeather')).drawForPane(weather, widthPx),
  drawForSheet: async (weather) => {
    const [{ drawForSheet }, parts] = await Promise.all([import('./drawnWeather'), pngParts()]);
    return drawForSheet(weather, parts);
  },
  drawPlotForPane: async (plot, widthPx) => (await drawnPlot()).drawPlotForPane(plot, widthPx),
  drawPlotForSheet: async (plot) => (await drawnPlot()).drawPlotForSheet(plot, await pngParts()),
  drawPlotForFile: async (plot) => {
    const { drawPlotForSheet, fileWidthPx } = await drawnPlot();
    return drawPlotForSheet(plot, await pngParts(), fileWidthPx);
  },
};
