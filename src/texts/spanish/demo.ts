/** In Spanish: names in the invented garden. */
import type { Translated } from '../translated';

export const demo: Translated['demo'] = {
  place: 'Huerto inventado junto al arroyo',
  plots: {
    creek1: 'Arroyo 1',
    creek2: 'Arroyo 2',
    creek3: 'Arroyo 3',
    tunnel: 'Túnel',
    hillPatch: 'Rincón',
    fence: 'Cerca',
    northField: 'Campo norte',
    southField: 'Campo sur',
    slope: 'Ladera',
    sand1: 'Arenal 1',
    sand2: 'Arenal 2',
    arbor: 'Enramada',
  },
  crops: {
    slicing: 'pepino',
    pickling: 'pepino para encurtir',
    bush: 'pepino de mata',
    english: 'pepino inglés',
    zucchini: 'calabacín',
    summerSquash: 'calabacín',
    winterSquash: 'calabaza de invierno',
    pumpkin: 'calabaza de Halloween',
    cantaloupe: 'melón',
    watermelon: 'sandía',
    seedless: 'sandía sin semilla',
    gourd: 'calabaza de adorno',
  },
  lots: { treated: 'tratada: lea la etiqueta', notice: 'con dos semanas de aviso' },
};
