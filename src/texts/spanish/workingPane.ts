/** In Spanish: what the task pane says of how a figure comes about. */
import type { Translated } from '../translated';

export const workingPane: Pick<Translated['pane'], 'working'> = {
  working: {
    heading: 'De dónde sale una cifra',
    lead: 'Elija una celda: cada función de este complemento que haya en ella se muestra con lo que entró, paso a paso.',
    summary: 'Mostrar el desarrollo de la celda elegida',
    reading: 'Leyendo la celda…',
    nothingSelected: 'Elija una celda que use una de estas funciones.',
    notOurs: '{cell} no usa ninguna de estas funciones.',
    notOursKept: '{cell} no usa ninguna de estas funciones. Este es todavía el desarrollo de {kept}.',
    unreadable:
      'La fórmula de {cell} está escrita de un modo que aquí no se puede leer, así que no se muestra su desarrollo. Ponga la función en una celda propia.',
    failed: 'El desarrollo no se pudo leer. {problem}',
    noFunctions: 'Las funciones aún no están cargadas. Espere un momento y elija la celda de nuevo.',
    announced: 'Desarrollo de {name}',
    tellsAnswer: 'El desarrollo de {name} dice la respuesta correcta.',
    filledBy: '{cell} es parte de la lista que da la fórmula de {origin}.',
    offer: 'Mostrar el desarrollo de {name}',
    shown: '{cell} muestra',
    asks: 'Problema {position}',
    blank: 'nada',
    another:
      'Calculado aquí es {result}. Quizá la celda aún no está calculada, o un dato cambió hace un momento.',
    call: {
      notAsked: '{id}: la fórmula no llega a esta parte tal como están las cosas',
      askedUnknown: 'Aquí no se puede saber si la fórmula llega a esta parte.',
      unknown: 'No hay función con ese nombre.',
      gives: 'Da',
      refuses: 'Rechaza',
      answer: '{answer} {unit}',
    },
    inputs: {
      heading: 'Lo que entró',
      leftOut: 'omitido',
      blank: 'en blanco',
      notKnown: 'no se calcula aquí',
      written: 'escrito en la fórmula',
      sum: 'calculado de {text}',
      given: 'lo que da {functions}',
      ofColumn: '{sheet} {cell}, {label}',
      ofCells: '{sheet} {cell}',
    },
    steps: {
      heading: 'Pasos',
      none: 'Esto se consulta, no se calcula: no hay pasos.',
      stopped: 'Pasos hasta el rechazo',
      putIn: 'con {numbers}',
      rounded: '{answer}, {rounding}',
    },
    assumed: { heading: 'Supuesto, porque se omitió', line: '{title}, {value}: {ground}' },
    remarks: { heading: 'Notas' },
    sources: { heading: 'Fuente' },
    effects: {
      heading: 'Qué lo cambiaría más',
      lead: 'Cada dato por sí solo un décimo más y menos, los enteros en el paso entero más cercano, los años en uno, las fechas en una semana, y ninguno más allá de lo que puede. El orden es por lo que hace un décimo; en fechas y años, por lo que hace su paso.',
      change: '{given} ({step}) da {answer}',
      unvaried: {
        list: 'La respuesta es una lista: lo que cambiaría una lista no se calcula aquí.',
        nothing: 'No hay entre los datos ningún número ni fecha que pueda ser un poco mayor o menor.',
      },
      nothing: 'Quedaría igual con un poco más o menos de:',
    },
    around: {
      heading: 'Lo que la fórmula hace con ello',
      line: '{text} da {value}',
    },
    notFollowed: {
      heading: 'No se sigue aquí',
      advice: 'Para ver el resto, ponga esa parte en una celda propia y haga que la fórmula la señale.',
      function: '{text}: lo calcula el programa de hojas de cálculo.',
      notation:
        '{text}: una forma de escribir que no se sigue, como una potencia, un rango desbordado u otro libro.',
      name: '{text}: no nombra celdas de este libro.',
      table: '{text}: aquí no hay tal tabla o columna.',
      list: '{text}: varias celdas o valores donde la fórmula usa solo uno a la vez. Nombre una sola celda en su lugar.',
      tooMany: '{text}: demasiadas celdas para leer aquí.',
    },
    goneThere: 'El panel no pudo ir allí. {problem}',
  },
};
