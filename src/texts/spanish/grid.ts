/** In Spanish: what the browser's grid says and its packages have no text for. */
import type { Translated } from '../translated';

export const grid: Translated['grid'] = {
  'sheets-formula': {
    progress: {
      analyzing: 'Buscando qué calcular…',
      calculating: 'Calculando…',
      'array-analysis': 'Buscando qué más calcular…',
      'array-calculation': 'Calculando lo que llena varias celdas…',
      done: 'Calculado',
    },
  },
  'sheets-ui': {
    merge: {
      confirm: {
        warning: 'Celdas combinadas',
        dismantleMergeCellWarning: 'Algunas celdas combinadas se van a separar. ¿Seguir?',
      },
    },
    filter: {
      confirm: {
        error: 'Filas ocultas',
        notAllowedToInsertRange:
          'No se pueden mover celdas mientras un filtro oculta filas aquí. Quite primero el filtro.',
      },
    },
    info: {
      error: 'Nota',
      forceStringInfo: 'Este número se guarda como texto.',
    },
  },
  'data-validation': { operators: { legal: 'es de la clase correcta' } },
  ui: { ribbon: { menu: 'Menú' } },
};
