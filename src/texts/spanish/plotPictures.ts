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
    '{pollenizers} de ellas {count|es polinizadora|son polinizadoras}, repartidas por igual en los surcos (criterio nuestro); de semilla mezclada nacen en cualquier sitio.',
  pollenizersNotShown:
    '{pollenizers} de ellas {count|es polinizadora|son polinizadoras}, que aquí no se muestran.',
  corner: {
    plants:
      'La esquina recuadrada se dibuja otra vez, ampliada a su propia escala: {rows} {rows|surco|surcos} de {inRow} {inRow|planta|plantas}.',
    hills:
      'La esquina recuadrada se dibuja otra vez, ampliada a su propia escala: {rows} {rows|surco|surcos} de {inRow} {inRow|golpe|golpes}.',
  },
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
  refused: {
    noName: 'Dé un nombre a la parcela: por él se conoce su imagen.',
    pollenizers: 'Polinizadoras tiene un error en la hoja: corríjalo primero.',
    plants: 'Plantas tiene un error en la hoja: corríjalo primero.',
    waiting: 'La parcela aún se está calculando.',
    notChosen: 'Elija una parcela de la lista para verla.',
  },
  pane: {
    heading: 'Imagen de la parcela elegida',
    larger: {
      open: 'Ampliar la imagen',
      heading: 'La imagen de la parcela',
      close: 'Cerrar',
      save: 'Guardar como archivo de imagen (PNG)',
      fileName: 'imagen de {plot}.png',
    },
    put: 'Poner esta imagen en una hoja',
    putAll: 'Poner en una hoja las imágenes de todas las parcelas',
    waiting: 'Espere a que las parcelas estén calculadas y ponga entonces las imágenes.',
    nothing: 'No se puede dibujar ninguna parcela: corrija lo que dice de ellas la hoja Parcelas.',
    done: '{count} {count|imagen puesta|imágenes puestas} en la hoja {sheet}.',
    doneSome:
      '{count} {count|imagen puesta|imágenes puestas} en la hoja {sheet}. Sin dibujar, por corregir antes: {plots}.',
    full: 'La hoja de imágenes no tiene más lugar. Bórrela y ponga en una nueva las imágenes que quiera.',
    older: 'En su hoja estas imágenes son anteriores a sus parcelas: {plots}. Póngalas de nuevo.',
    undo: 'Imágenes de parcelas',
  },
  sheet: {
    name: 'Imágenes de parcelas',
    lead: [
      'Dibujadas a escala de la hoja Parcelas. Después de un cambio allí, ponga aquí de nuevo las imágenes.',
    ],
    plot: 'Parcela',
    state: 'Tal como está',
    stands: 'sí',
    older: 'no',
  },
};
