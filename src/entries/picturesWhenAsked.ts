import type { PlotPictureTools } from '../taskpane/plotPicture';
import type { PictureTools } from '../taskpane/weatherPictures';

/** Drawing is a part of the page that is loaded when it is first asked for. */
export const picturesWhenAsked: PictureTools & PlotPictureTools = {
  drawForPane: async (weather, widthPx) => (await import('./drawnWeather')).drawForPane(weather, widthPx),
  drawForSheet: async (weather) => {
    const [{ drawForSheet }, { fetchPngParts }] = await Promise.all([
      import('./drawnWeather'),
      import('./pictureFiles'),
    ]);
    return drawForSheet(weather, await fetchPngParts());
  },
  drawPlotForPane: async (plot, widthPx) => (await import('./drawnPlot')).drawPlotForPane(plot, widthPx),
  drawPlotForSheet: async (plot) => {
    const [{ drawPlotForSheet }, { fetchPngParts }] = await Promise.all([
      import('./drawnPlot'),
      import('./pictureFiles'),
    ]);
    return drawPlotForSheet(plot, await fetchPngParts());
  },
};
