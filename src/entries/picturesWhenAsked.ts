import type { PictureTools } from '../taskpane/weatherPictures';

/** Drawing is a part of the page that is loaded when it is first asked for. */
export const picturesWhenAsked: PictureTools = {
  drawForPane: async (weather, widthPx) => (await import('./drawnWeather')).drawForPane(weather, widthPx),
  drawForSheet: async (weather) => {
    const [{ drawForSheet }, { fetchPngParts }] = await Promise.all([
      import('./drawnWeather'),
      import('./pictureFiles'),
    ]);
    return drawForSheet(weather, await fetchPngParts());
  },
};
