/** In Spanish: words that stand beside those of the functions, and how a date may be written. */
import type { Translated } from '../translated';

export const choices: Translated['choices'] = {
  rows: 'surcos, surco, hileras, hilera',
  hills: 'golpes, golpe, matas, mata',
  beds: 'camas, cama',
  seed: 'siembra directa, siembra, semilla, semillas',
  transplant: 'trasplante, trasplantes, transplante, almácigo',
  monoecious: 'monoica, monoico',
  gynoecious: 'ginoica, ginoico',
  parthenocarpic: 'partenocárpica, partenocárpico',
  andromonoecious: 'andromonoica, andromonoico',
  triploid: 'triploide',
  us: 'estadounidenses, estadounidense, de EE. UU.',
  metric: 'métricas, métricos, métrica, métrico',
  inc: 'inclusiva',
  exc: 'exclusiva',
  north: 'norte',
  south: 'sur',
  mean: 'media',
  modified: 'modificado',
  sine: 'seno',
  reduced: 'reducido',
  weight: 'peso',
  bushel: 'bushel, bushels',
  carton: 'caja, cajas',
  each: 'pieza, piezas',
};

export const months: Translated['months'] = [
  'enero',
  'febrero',
  'marzo',
  'abril',
  'mayo',
  'junio',
  'julio',
  'agosto',
  'septiembre, setiembre',
  'octubre',
  'noviembre',
  'diciembre',
];
