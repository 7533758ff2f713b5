/** In Spanish: the pages of the function reference. */
import type { guide as english } from '../english/guide';
import type { WithOtherWords } from '../translated';

export const guide: WithOtherWords<typeof english> = {
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
    found: 'Se {count|muestra|muestran} {count} {count|función|funciones}',
    all: 'Todas las funciones',
    inOther: 'This page in English',
    asks: 'Qué pide',
    asksNothing: 'No toma argumentos.',
    optional: 'se puede omitir',
    gives: 'Qué da',
    example: 'Un ejemplo',
    exampleGives: 'da',
    putIntoCell:
      'Para usarla, copie la fórmula y péguela en una celda vacía. O ponga sus propias cifras desde el panel: en "{heading}" pulse "{open}", elija {id}, elija una celda vacía y pulse "{put}".',
    working: 'El ejemplo, resuelto',
    notes: 'Para tener en cuenta',
    calculation: 'Cómo calcula',
    inEnglish: 'Esta parte sale de los comentarios del código y está solo en inglés:',
    source: 'Fuente: {source}',
    figures: 'Fuentes de las cifras del ejemplo',
    refuses: 'Qué rechaza',
    refusesLead:
      'Responde con una de estas frases en lugar de un número; las palabras en cursiva representan las cifras y nombres del caso.',
    cautions: 'Precauciones',
    related: 'Otras para la misma tarea: {family}',
  },
  crops: {
    headings: {
      uses: 'sirve para',
      picking: 'cortar cuando',
      trouble: 'señales de problemas',
      seedLife: 'la semilla dura',
      bushel: 'un bushel pesa',
      beetles: 'actuar con escarabajos rayados',
    },
    uses: {
      pickles: 'encurtir',
      slicing: 'rebanar, en fresco',
      smallSpace: 'poco espacio',
      underCover: 'cultivo protegido',
    },
    useNotes: {
      pickedYoung: 'Cortado tierno, al tamaño de encurtir.',
      mostlyBush: 'Casi todos los tipos son arbustivos; los de guía piden más espacio.',
      bushOrMini: 'Tipos arbustivos y miniatura; otros de fruto pequeño corren.',
      needsNoBees: 'Cuaja sin abejas, y mejor sin ellas.',
    },
    range: '{low} a {high}',
    ready: '{size} de {measured}',
    measured: { length: 'largo', diameter: 'ancho' },
    forPickles: '{size} para encurtir',
    trouble: '{sign}: {meaning}',
    troubles: {
      noEmergence: {
        sign: 'No nace nada a las dos semanas de sembrar',
        meaning:
          'el suelo puede estar bajo su mínimo. Mídalo, busque una semilla y siembre de nuevo en suelo bastante cálido.',
      },
      chilled: {
        sign: 'Las plántulas se detienen tras noches frías',
        meaning: 'bajo 40 °F (4 °C) las daña el frío, y una helada ligera hace gran daño.',
      },
      wilt: {
        sign: 'Las guías se marchitan aunque el suelo está húmedo, y hay escarabajos rayados',
        meaning:
          'puede ser la marchitez bacteriana que traen los escarabajos. Cuéntelos en plantas de todo el campo (BEETLE.VERDICT) y pregunte a su oficina de extensión.',
      },
      noSet: {
        sign: 'Las flores abren y caen, y no cuaja fruto',
        meaning:
          'las primeras flores son masculinas. Las femeninas llevan un frutito detrás de los pétalos, y las abejas deben llegar: quite las cubiertas.',
      },
      noPollenizer: {
        sign: 'No cuaja fruto',
        meaning:
          'necesita polen de una sandía con semilla: cerca de 1 polinizadora por cada 3 (FLOWER.POLLENIZERS).',
      },
      misshapen: {
        sign: 'El fruto sale torcido o angosto de un extremo',
        meaning: 'vinieron pocas abejas: una flor pide unas 11 visitas en su único día.',
      },
      seedyFruit: {
        sign: 'El fruto se abomba, tiene semilla o amarga',
        meaning:
          'las abejas trajeron polen de otros pepinos. Protéjalo con malla y mantenga lejos a los demás (FLOWER.ISOLATE).',
      },
      hotHouse: {
        sign: 'Menos frutos con el calor',
        meaning: 'sobre 95 °F (35 °C) da menos; manténgalo a 65 °F (18 °C) o más y ventile.',
      },
      stopped: {
        sign: 'Las plantas dejan de cuajar',
        meaning:
          'el fruto que queda en la guía impide que cuajen otros: córtelo todo, también el pasado de tamaño.',
      },
      oversize: {
        sign: 'El fruto es demasiado grande',
        meaning: 'crece rápido: corte cada 1 a 3 días.',
      },
      mildew: {
        sign: 'Polvo blanco en las hojas',
        meaning:
          'oídio (cenicilla). Deje espacio y aire entre plantas, riegue el suelo y no las hojas, y pregunte a su oficina de extensión qué más ayuda.',
      },
      bitter: {
        sign: 'El fruto sabe amargo',
        meaning: 'escúpalo y tírelo. No guarde su semilla.',
      },
    },
  },
};
