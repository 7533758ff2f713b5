/** In Spanish: what the pane says of the function reference and the crop guide. */
import type { Translated } from '../translated';

export const guidePane: Pick<Translated['pane'], 'fetched' | 'functionList' | 'crops'> = {
  fetched: {
    fetching: 'Cargando…',
    failed: 'No se pudo cargar. Revise la conexión e inténtelo de nuevo.',
  },
  functionList: {
    heading: 'Funciones',
    lead: 'Todas las funciones: qué pide y qué da cada una, y una fórmula para empezar.',
    open: 'Mostrar las funciones',
    search: 'Buscar en las funciones',
    searchHelp:
      'Una palabra suya, como distancia, abejas o última helada. Las flechas recorren la lista; Intro abre la primera.',
    ignored:
      'a al como con cual cuales cuando cuanta cuantas cuanto cuantos de debo del donde el en es esta hay la las lo los me mi mis necesito o para pide por puedo que quiero se si sobre son su sus tengo un una unas unos y',
    byName: 'Por su nombre',
    none: 'No hay nada para "{searched}". Pruebe menos palabras u otras, como germinación, cuántos sobres, última helada o frascos; o vacíe el campo para ver todas por tarea.',
    count: '{count} {count|función|funciones}',
    all: 'Todas las funciones',
    page: 'Todo sobre {id}, con un ejemplo resuelto',
    optional: '{name} (se puede omitir)',
    take: 'Tomar la selección',
    fields:
      'Los campos tienen un ejemplo. Escriba lo suyo, como 85%, 2026-05-02, pepino o B2; o elija celdas y tómelas.',
    put: 'Poner en la celda elegida',
    putWhere: 'Elija primero una celda vacía. Lo que hay en una celda nunca se reemplaza.',
    written: '{formula} está ahora en {cell}.',
    noCell: 'No se escribió nada. Elija una celda vacía de una hoja e inténtelo de nuevo.',
    manyCells: 'No se escribió nada. {cells} es más de una celda: elija una sola vacía e inténtelo de nuevo.',
    occupied: 'No se escribió nada, pues {cell} no está vacía. Elija una celda vacía e inténtelo de nuevo.',
    wanted: 'No se escribió nada. Complete {name}.',
    refused: 'No se escribió nada. {problem}',
  },
  crops: {
    heading: 'Cultivos',
    lead: 'Cada cultivo de la referencia con sus cifras, para qué sirve y señales de problemas, lado a lado.',
    open: 'Mostrar los cultivos',
    search: 'Buscar en los cultivos',
    searchHelp: 'Un nombre, como zapallito o patilla, o una palabra de una señal, como amargo.',
    use: 'Sirve para',
    anyUse: 'cualquier uso',
    units: 'Unidades de las cifras',
    unitSystems: { us: 'ft, in, °F, lb', metric: 'm, cm, °C, kg' },
    choose: 'Cultivos que comparar, hasta {most}',
    names: 'también {names}',
    count: '{count} {count|cultivo|cultivos}',
    none: 'Ningún cultivo. Pruebe menos palabras u otras, elija "{any}" en "{use}" o vacíe el campo para ver todos.',
    tooMany: 'Lado a lado van a lo sumo {most} cultivos: quite antes la marca de uno.',
    nobody: 'Marque un cultivo para ver sus cifras.',
    sources: 'Con fuentes',
    noFigure: 'sin dato publicado',
    cautions: 'Precauciones',
  },
};
