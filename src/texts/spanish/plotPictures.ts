/** In Spanish: what the picture of a plot says. */
import type { Translated } from '../translated';

export const plotPictures: Translated['plotPictures'] = {
  title: '{plot}: {crop}',
  cut: '{start}…',
  length: {
    feet: '{feet} ft',
    inches: '{inches} in',
    feetAndInches: '{feet} ft {inches} in',
    metres: '{metres} m',
    centimetres: '{centimetres} cm',
  },
  apart: { plants: '{spacing} de planta a planta', hills: '{spacing} de golpe a golpe' },
  path: 'pasillo {width}',
  bed: 'cama {width}',
  size: 'La parcela tiene {length} de largo y {width} de ancho; los surcos corren a lo largo.',
  rows: '{plants} {count|planta|plantas} en {rows} {rows|surco|surcos} de {inRow}: surcos a {rowSpacing}, plantas a {plantSpacing} en el surco.',
  hills:
    '{plants} {count|planta|plantas} en {hills} {hills|golpe|golpes} de {perHill}: {rows} {rows|surco|surcos} de {inRow} {inRow|golpe|golpes}, surcos a {rowSpacing}, golpes a {hillSpacing} en el surco.',
  beds: '{plants} {count|planta|plantas} en {beds} {beds|cama|camas} de {bedWidth} de ancho, pasillos de {pathWidth}: {rows} {rows|surco|surcos} por cama, {inRow} {inRow|planta|plantas} por surco, a {plantSpacing}.',
  pollenizers:
    '{pollenizers} de ellas {count|es polinizadora|son polinizadoras}, repartidas por igual en los surcos (criterio); de semilla mezclada nacen en cualquier sitio.',
  asLines:
    'Cada surco se dibuja como una línea: {plants} plantas son demasiadas para dibujarlas una por una.',
  typedOver: 'Plantas de la hoja dice {typed}: alguien lo escribió, y esto es lo que cabe.',
  plant: 'planta',
  pollenizer: 'polinizadora',
  columns: ['Medida', 'En la parcela'],
  measures: {
    plants: 'Plantas',
    pollenizers: 'Polinizadoras',
    length: 'Largo',
    width: 'Ancho',
    rows: 'Surcos',
    hills: 'Golpes',
    beds: 'Camas',
    perHill: 'Plantas por golpe',
    inRow: 'En un surco',
    rowSpacing: 'Entre surcos',
    plantSpacing: 'Entre plantas',
    hillSpacing: 'Entre golpes',
    bedWidth: 'Ancho de cama',
    pathWidth: 'Ancho de pasillo',
    rowsPerBed: 'Surcos por cama',
  },
};
