/** In Spanish: the homework: its sheet, its key, its problems by the function that gives the answer. */
import type { Translated } from '../translated';

export const homework: Translated['homework'] = {
  sheet: 'Tarea escolar',
  keySheet: 'Clave de la tarea',
  title: 'Tarea escolar',
  keyTitle: 'Tarea escolar: la clave',
  lead: [
    'Escriba en Respuesta: fecha como 2027-05-16, fracción como 80% o 0.8. Veredicto dice "correcto" o el error probable.',
    'En surcos, golpes y camas cada planta tiene su distancia entera: la mitad queda libre en ambos extremos.',
    'Pasos de un problema: elija su línea y abra De dónde sale una cifra en el panel; o copie Pasos como fórmula.',
    'N.º empieza con el número de la tarea, con m si es métrica: con él todos tienen los mismos problemas.',
  ],
  keyLead: [
    'Para quien enseña. Solo valores: aquí nada se calcula. Las respuestas se redondean a seis cifras.',
  ],
  percent: '{percent}%',
  numbered: { us: '{number}-{position}', metric: '{number}m-{position}' },
  columns: {
    position: { header: 'N.º', note: 'El número de la tarea y el del problema.' },
    problem: { header: 'Problema', note: 'Lo que se pregunta.' },
    answer: {
      header: 'Respuesta',
      note: 'Suya: un número, una fecha o una fracción. Mejor tan exacta como la tenga.',
    },
    verdict: {
      header: 'Veredicto',
      note: 'CUCURBIT.CHECK.SLIP: "correcto", o el error que da justo esa respuesta, o cuánto se aparta.',
    },
    steps: {
      header: 'Pasos',
      note: 'Una fórmula como texto. Copiada a una celda libre muestra los pasos, uno por fila.',
    },
    function: { header: 'Función', note: 'La función que da la respuesta.' },
    argument: {
      header: 'Argumento {position}',
      note: 'Lo que se da a la función; en blanco si nada. Fechas o números de una lista van entre ;.',
    },
    rightAnswer: { header: 'Respuesta correcta', note: '' },
  },
};
