/** The three pictures of a weather record. */
import type { Drawing, Frame } from './drawSvg';
import { drawFrostChance, type FrostChance } from './frostChance';
import { drawFrostFreeYears, type FrostFreeYears } from './frostFreeYears';
import { drawHeatPaths, type HeatPicture } from './heatPaths';

/** What a picture shows, or the advice of what was wrong with it. */
type Asked<Data> = { readonly value: Data } | { readonly wrong: string };

export interface WeatherSeries {
  readonly chance: Asked<FrostChance>;
  readonly years: Asked<FrostFreeYears>;
  /** null where nobody asked for sowings. */
  readonly heat: Asked<HeatPicture> | null;
}

export type PictureName = keyof WeatherSeries;

export interface NamedDrawing {
  readonly name: PictureName;
  readonly drawn: Asked<Drawing>;
}

export function drawWeather(series: WeatherSeries, frame: Frame): NamedDrawing[] {
  const draw = <Data>(
    name: PictureName,
    asked: Asked<Data>,
    drawing: (data: Data, frame: Frame) => Drawing,
  ): NamedDrawing => ({ name, drawn: 'wrong' in asked ? asked : { value: drawing(asked.value, frame) } });
  return [
    draw('chance', series.chance, drawFrostChance),
    ...(series.heat === null ? [] : [draw('heat', series.heat, drawHeatPaths)]),
    draw('years', series.years, drawFrostFreeYears),
  ];
}
