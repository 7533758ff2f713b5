/** In Spanish: the pages of the function reference. */
import type { Translated } from '../translated';

export const guide: Translated['guide'] = {
  functions: {
    pageTitle: '{id}: funciones de cucurbitáceas',
    indexTitle: 'Funciones de cucurbitáceas, por tarea',
    indexLead:
      'Una página por cada función: qué pide, cómo calcula, un ejemplo resuelto, qué rechaza y de dónde vienen sus cifras.',
    conventions: [
      'Los largos van en pies y las distancias entre plantas en pulgadas; con "metric" como último argumento, en metros y centímetros.',
      'Las fracciones son decimales o por ciento: 0.85 u 85%. Las fechas son fechas.',
      'Un argumento entre corchetes se puede omitir y toma entonces su valor supuesto. Toda función dice qué hacer cuando un argumento falta, es un error o es de otra clase que la que pide.',
    ],
    search: 'Buscar en las funciones',
    found: 'Se {count|muestra|muestran} {count} {count|función|funciones}',
    all: 'Todas las funciones',
    asks: 'Qué pide',
    asksNothing: 'No toma argumentos.',
    optional: 'se puede omitir',
    gives: 'Qué da',
    example: 'Un ejemplo',
    exampleGives: 'da',
    working: 'El ejemplo, resuelto',
    notes: 'Para tener en cuenta',
    calculation: 'Cómo calcula',
    source: 'Fuente: {source}',
    figures: 'Fuentes de las cifras del ejemplo',
    refuses: 'Qué rechaza',
    refusesLead:
      'Responde con una de estas frases en lugar de un número; las palabras inclinadas están por las cifras y nombres del caso.',
    cautions: 'Precauciones',
    related: 'Otras para la misma tarea: {family}',
  },
};
