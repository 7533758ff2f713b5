/** In Spanish: what the task pane says: one long list of sentences. */
import type { Translated } from '../translated';
import { guidePane } from './guidePane';
import { plotsPane } from './plotsPane';
import { weatherPane } from './weatherPane';
import { workingPane } from './workingPane';

export const pane: Translated['pane'] = {
  ...plotsPane,
  ...weatherPane,
  ...guidePane,
  ...workingPane,
  title: 'Plan de cucurbitáceas',
  keys: 'F6 lleva de la cuadrícula a este panel y de vuelta. Ctrl+Z deshace en ambos, pero en un campo de texto solo su texto.',
  language: {
    other: 'All in English',
    tag: 'en',
    sheetsInOther:
      'Las hojas de este libro están en inglés, y el panel solo las reconoce en inglés. Elija inglés con el botón de arriba, abra otro plan o empiece de nuevo abajo.',
    notKept:
      'Este navegador no guarda nada para esta página, así que no se puede elegir el idioma. Permítale guardar datos del sitio e inténtelo de nuevo.',
  },
  regions: { grid: 'Libro de trabajo', pane: 'Panel de tareas' },
  parts: 'Partes de este panel',
  opening: {
    waiting: 'Conectando con Excel…',
    slow: 'Excel aún no responde. Espere un poco más. Si no llega nada, revise la conexión a internet e inténtelo de nuevo.',
    again: 'Intentar de nuevo',
    reasons: {
      blocked:
        'No se pudo cargar de appsforoffice.microsoft.com un archivo que todo complemento de Excel necesita. Revise la conexión a internet; en una oficina, pida a quien lleva la red que permita esa dirección. Luego inténtelo de nuevo. Sus hojas están como las dejó.',
      outside:
        'Esta página es parte de un complemento y solo funciona dentro de Excel. En Excel la abre el botón "Plan cucurbits" de la pestaña Inicio. Cómo agregarla a Excel está en el archivo README.md de este proyecto.',
      old: 'Este Excel es demasiado viejo para el panel. Use Excel en la web, Excel para Microsoft 365, o Excel 2021 o posterior.',
    },
  },
  cutOff: {
    lead: '"{action}" se interrumpió a la mitad la última vez. Lo que había antes en las celdas está guardado en este libro. Póngalo de nuevo antes de seguir: lo que se haya escrito desde entonces en esas celdas se pierde.',
    put: 'Ponerlo de nuevo',
    leave: 'Dejarlo por ahora',
    working: 'Poniéndolo de nuevo…',
  },
  reading: 'Leyendo su plan…',
  calculating: '{heading}: calculando…',
  notRead: 'Las hojas no se pudieron leer. {problem}',
  readAgain: 'Leer las hojas de nuevo',
  undo: {
    season: 'Poner la temporada en la hoja',
    sheets: 'Llenar las hojas',
    formula: 'Poner una fórmula en una celda',
    formulas: 'Volver a introducir nuestras fórmulas',
    copy: 'Hacer una copia solo de valores',
    addPlot: 'Agregar una parcela',
    pastePlots: 'Pegar parcelas',
    weather: 'Poner un registro en las hojas de clima',
    calendar: 'Hacer el calendario',
    homework: 'Hacer una tarea',
    weatherChoices: 'Cambiar la hoja Clima',
    follow: 'Que Temporada siga al registro',
    succession: 'Sembrar otra vez una parcela',
    putPlot: 'Cambiar una parcela',
    copyPlot: 'Duplicar una parcela',
    movePlot: 'Mover una parcela',
    removePlot: 'Quitar una parcela',
  },
  undone: {
    undo: {
      named: 'Deshecho: {title}.',
      typed: 'Deshecho en las hojas.',
      none: 'No hay nada que deshacer.',
    },
    redo: {
      named: 'Hecho otra vez: {title}.',
      typed: 'Hecho otra vez en las hojas.',
      none: 'No hay nada que hacer otra vez.',
    },
  },
  plan: {
    heading: 'Su plan',
    keeping: {
      kept: 'Se guarda en este navegador mientras usted escribe (por última vez: {at}).',
      otherTab:
        'Este plan está abierto en otra pestaña, que lo guarda. Los cambios de esta pestaña no se guardan: ciérrela, o guárdelo como .xlsx.',
      otherTabClosed:
        'La otra pestaña está cerrada, y los cambios de esta aún no se guardan. Abra lo que guardó la otra; lo de esta pasa a ser el plan anterior.',
      storageFull:
        'A este navegador no le queda espacio, así que los últimos cambios no se guardan. Guarde el plan como .xlsx y luego borre lo que otras páginas guardan en este navegador.',
      noStorage:
        'Este navegador no guarda nada para esta página: puede ser una ventana privada. Guarde el plan como .xlsx antes de cerrarla.',
      brokenOff:
        'Este navegador se interrumpió al guardar los últimos cambios, así que no están guardados. Guarde el plan como .xlsx y cargue esta página de nuevo.',
    },
    demo: 'Este huerto es inventado, para mirar. Escriba encima, o empiece abajo con un plan vacío.',
    unreadable:
      'El plan guardado en este navegador no se pudo abrir: está dañado, o lo hizo una versión más nueva de esta página. Se apartó, no se tiró: vea abajo. Este es el huerto inventado.',
    save: 'Guardar como .xlsx',
    fileName: 'plan-de-cucurbitaceas.xlsx',
    fileHelp:
      'El archivo contiene la temporada, las parcelas, precios y paquetes, el calendario con sus notas, el registro diario con lo que pide la hoja Clima, y las cifras de cultivos que escribió sobre las nuestras, todo calculado de nuevo. No contiene gráficas, hojas suyas ni lo que escribió sobre una fórmula de Parcelas.',
    saving: 'Escribiendo el archivo…',
    saved: 'Guardado como archivo, donde este navegador pone lo que descarga.',
    ownSheets: 'No está en él: {sheets}.',
    ownColumns: 'No está en él, por ser columna suya: {columns}.',
    ownColumn: '{header} en {sheet}',
    typedOver: 'No está en él, por estar escrito sobre una fórmula: {cells}.',
    typedCell: '{header} de {plot}',
    noPlan: 'En este libro no hay hojas nuestras, así que no hay qué guardar. Llene primero las hojas.',
    open: 'Abrir un plan',
    opening: 'Leyendo el archivo…',
    opened:
      '{file} está abierto, con {count} {count|parcela|parcelas}. Lo que estaba abierto antes se puede recuperar abajo.',
    tooManyPlots:
      '{file} tiene {count} parcelas, y esta página acepta {most}. Divídalo, o haga con npm run plan un libro de él.',
    more: 'Y {count} más del mismo tipo.',
    take: 'Abrir lo que guardó la otra pestaña',
    tookOver: 'Esto es lo que guardó la otra pestaña. Desde ahora lo guarda esta.',
    notTaken: 'Otra pestaña lo tiene abierto otra vez, y lo guarda.',
    aside: {
      there:
        '{count} {count|plan guardado en este navegador no se pudo abrir y está apartado|planes guardados en este navegador no se pudieron abrir y están apartados}. Inténtelo de nuevo cuando esta página se haya renovado, o {count|guárdelo como está|guárdelos como están}, para alguien que {count|lo|los} pueda arreglar.',
      save: 'Guardar lo apartado',
      fileName: 'plan-de-cucurbitaceas-apartado.json',
      open: 'Intentar abrirlo de nuevo',
      opened: 'Lo apartado está abierto. Lo que estaba abierto antes se puede recuperar abajo.',
      still:
        'Lo apartado sigue sin poder abrirse. Queda apartado; guárdelo, para que no se pierda con lo que guarda este navegador.',
    },
    again: 'Empezar de nuevo',
    againHelp: 'Otro plan en lugar de este. Este se puede recuperar hasta que el siguiente tome su lugar.',
    demoAgain: {
      button: 'El huerto inventado',
      done: 'El huerto inventado está abierto. Lo que estaba abierto antes se puede recuperar abajo.',
    },
    emptyAgain: {
      button: 'Un plan vacío',
      done: 'Un plan vacío está abierto: dé las fechas de helada y luego escriba una línea por parcela en Parcelas. Lo que estaba abierto antes se puede recuperar abajo.',
    },
    ask: '¿Apartar este plan? Se puede recuperar, hasta que se aparte el siguiente. Lo que ahora se puede deshacer no se podrá deshacer entonces.',
    yes: 'Sí: {action}',
    no: 'No, seguir con este',
    back: 'Recuperar el plan anterior',
    broughtBack: 'El plan anterior está abierto otra vez.',
  },
  season: {
    heading: 'Temporada',
    lead: 'Las cifras que lee cada hoja. Cámbielas aquí o en la hoja; una sigue a la otra.',
    seldom: 'Cambian rara vez',
    put: 'Poner en la hoja',
    back: 'Descartar mis cambios',
    noSheet: 'Aún no hay hoja Temporada. "{fill}" abajo la hace con estas cifras.',
    damaged: 'La hoja Temporada no se puede leer, así que desde aquí no se le puede poner nada.',
    percent: '%',
    choose: 'elija',
    inSheet: 'La hoja dice {value}. Su valor aún no está en la hoja.',
    inSheetBlank: 'La celda está en blanco. Su valor aún no está en la hoja.',
    follows: 'De la hoja Clima, con el riesgo de abajo. Escriba una fecha para tener esa en su lugar.',
    results: 'Resultados',
    errorWord: 'Error',
    nothingDiffers: 'La hoja ya dice lo mismo. No se escribió nada.',
    written: 'Puesto en la hoja: {labels}.',
    kept: 'Se dejó, pues hay una fórmula: {labels}. Para reemplazarla, escriba encima en la hoja.',
    dropped: 'Sus cambios se descartaron.',
    toMend: 'No se escribió nada. Corrija primero {count|el campo marcado|los campos marcados}.',
    otherMeanwhile:
      'No se escribió nada. La hoja cambió mientras tanto en el mismo lugar: vea los campos marcados y ponga lo suyo de nuevo.',
  },
  takenAs: '{name} (tomado como {crop})',
  choice: '{word} ({choice})',
  wrong: {
    notADate: 'Esta no es una fecha completa. Dé día, mes y año.',
    notANumber:
      '"{given}" no es un número. Escriba solo cifras, sin unidad ni signo de moneda: millares sin marca (1000), decimales con punto (4.50).',
    notWhole: '{given} no es un número entero. Redondéelo.',
    notAChoice: 'La hoja dice "{given}". Elija uno de estos: {choices}.',
    notKnown: '"{given}" no se conoce. Elija uno de la lista.',
    notKnownNear: '"{given}" no se conoce. Parecidos: {names}. O elija uno de la lista.',
    outOfRange: '{given} no cabe. Debe ser {limits}.',
    shareForPercent: 'Este campo va en por ciento: para {given} como fracción, escriba {percent}.',
    sheetDate: 'La hoja dice "{given}", que no es una fecha. Dé día, mes y año.',
    sheetError: 'La hoja tiene aquí un error: {given}. Dé un valor en su lugar.',
    frostsReversed:
      'La primera helada de otoño ({firstFrost}) debe venir después de la última de primavera ({lastFrost}). Al sur del ecuador cae en el año siguiente: escriba también su año.',
    frostsApart:
      'Entre las heladas hay {days} días, más de un año. Revise el año de cada una: entre ellas hay una sola temporada.',
  },
  sheets: {
    heading: 'Hojas',
    lead: 'Hace las hojas que faltan y renueva las fórmulas de las que están. Lo que usted escribió se queda.',
    fill: 'Llenar las hojas',
    refresh: 'Renovar las hojas',
    missing: 'aún no está',
    notAsked: 'no está; se hace cuando se pide',
    there: 'en este libro',
    thereAs: 'en este libro, llamada "{name}"',
    locked: 'en este libro, pero protegida',
    progress: 'Llenando las hojas',
    working: 'Trabajando en las hojas…',
    workedPercent: 'Trabajando en las hojas: {percent} % hecho.',
    made: 'Hechas: {sheets}.',
    madeNext: 'Siguiente: escriba una línea por parcela en {sheet}.',
    madeNextDates:
      'Siguiente: dé esto arriba, pues sin ello no se puede calcular ninguna fecha: {labels}. Luego escriba una línea por parcela en {sheet}.',
    refreshed: 'Renovadas: {sheets}.',
    kept: '{count} {count|celda tiene|celdas tienen} algo escrito sobre una fórmula y {count|se dejó|se dejaron}.',
    gone: 'Ya no están: {rows}. Si hacen falta, deshaga lo que las quitó; o borre la hoja y llene las hojas de nuevo.',
    goneRow: '{row} en {sheet}',
    goneMore: '{more} más',
    seasonFirst: 'No se llenó nada. Corrija primero los campos marcados de la temporada.',
  },
  tools: {
    heading: 'Reparar y entregar',
    formulas: {
      button: 'Volver a introducir nuestras fórmulas',
      help: 'Para celdas que dicen #NAME?: se calcularon o guardaron donde estas funciones no se conocían. Se introduce de nuevo toda fórmula que las usa, también en sus propias hojas. No se toca nada más.',
      working: 'Introduciendo las fórmulas…',
    },
    entered: '{count} {count|fórmula se introdujo|fórmulas se introdujeron} de nuevo. No se tocó nada más.',
    noneToEnter: 'Ninguna fórmula de este libro usa nuestras funciones, así que no se introdujo ninguna.',
    enteringCut: 'No toda fórmula se pudo introducir de nuevo; las demás están como estaban. {problem}',
    copy: {
      button: 'Hacer una copia solo de valores',
      help: 'Para alguien sin este complemento: junto a cada hoja nuestra una nueva con sus valores, fechas y notas, y sin fórmulas. Sus hojas quedan como están.',
      working: 'Copiando los valores…',
    },
    copyName: '{sheet} valores',
    copyLine:
      'Solo valores, de las cifras del {day}. Nada de esta hoja calcula: un cambio en una celda no cambia otra.',
    copied: 'Hechas: {sheets}. Los cambios posteriores no {made|la|las} alcanzan.',
    copiedErrors:
      '{count} {count|celda tiene un error y se copió|celdas tienen un error y se copiaron} así: vea "Para revisar".',
    nothingToCopy: 'Aún no hay hojas nuestras en este libro. Llene primero las hojas.',
    copyUnsettled:
      'No se copió nada, porque {cells} {count|se está|se están} calculando. Espere a que {count|termine|terminen} e inténtelo de nuevo.',
    andMore: ' y {more} más',
    leftLocked: 'Protegidas, y por eso intactas: {sheets}. Quite la protección e inténtelo de nuevo.',
  },
  calendar: {
    heading: 'Calendario',
    lead: 'El trabajo de cada parcela por fecha, y las semanas de la temporada en barras. Lo que escribió en Hecho y Mi nota se queda.',
    noSheets: 'Sus hojas aún no están: "{fill}" arriba las hace.',
    unreadable: 'El calendario no se puede leer: corrija primero lo que se dice arriba.',
    notMade: 'Aún no se ha hecho. Complete sus parcelas y hágalo.',
    current: 'Está al día con Parcelas.',
    outdated: 'Parcelas cambió desde que se hizo el calendario, o cambiaron filas de él. Hágalo de nuevo.',
    make: 'Hacer el calendario',
    again: 'Hacer el calendario de nuevo',
    working: 'Haciendo el calendario…',
    tasks: {
      heading: 'Tareas de la hoja',
      help: 'Pulse una tarea para verla en la hoja, donde se escribe en Hecho.',
      all: 'todo',
      thisWeek: 'esta semana ({monday})',
      count: '{shown} de {count} {count|tarea|tareas}',
      first: 'Las primeras {shown} de {count} {count|tarea|tareas}',
      more: 'Elija una parcela, un cultivo o una semana para ver las demás.',
      days: '{date} a {until}',
      separator: ' · ',
      done: 'Hecho: {done}',
      nameless: 'Una fila sin fecha, parcela ni tarea',
    },
    file: {
      button: 'Archivo de calendario para un teléfono (.ics)',
      help: 'Envíelo a su teléfono o ábralo en un programa de calendario. Si se recibe de nuevo, cada tarea se reemplaza a sí misma. Dentro de un programa de hojas de cálculo no toda ventana deja que una página entregue un archivo: entonces abra el plan en un navegador.',
      working: 'Escribiendo el archivo de calendario…',
      saved: 'El archivo está donde su navegador pone lo que descarga.',
      name: 'calendario.ics',
    },
    unsettled:
      'No se hizo nada, porque {cells} {count|se está|se están} calculando. Espere a que {count|termine|terminen} e inténtelo de nuevo.',
  },
  homework: {
    heading: 'Tarea escolar',
    lead: 'Problemas para practicar, en una hoja que dice qué está bien y dónde pudo estar el error. El mismo número y las mismas unidades dan a todos los mismos problemas.',
    question: 'Hacer una hoja de problemas',
    what: {
      label: 'Qué hacer',
      help: 'Cada vez una hoja propia: una con respuestas queda como está.',
      choices: ['la tarea', 'la clave, para quien enseña'],
    },
    number: { label: 'Número de la tarea', help: 'De 1 a 9999.' },
    count: { label: 'Cuántos problemas', help: 'De 1 a 100.' },
    units: {
      label: 'Unidades de los problemas',
      help: 'us: pies, pulgadas, libras. metric: metros, centímetros, kilos.',
    },
    make: 'Hacer la hoja',
    wanted: 'Complete esto.',
    working: 'Haciendo la hoja…',
    made: 'Hecha: {sheet}, {count} {count|problema|problemas}. Escriba las respuestas en Respuesta.',
    keyMade: 'Hecha: {sheet}, las respuestas a {count} {count|problema|problemas}. Contiene solo valores.',
  },
  findings: {
    heading: 'Para revisar',
    headingCount: 'Para revisar ({count})',
    selected: 'Celda elegida {cell}: {message}',
    circle:
      'Esta fórmula, o una que ella lee, vuelve a su propia celda, así que no tiene resultado. Haga que una de ellas lea otras celdas.',
    noMessage:
      '{error}. Si el programa no dice más en la celda, una celda que ella lee tiene error, o se cambió su fórmula.',
    stray:
      'La fila {row} de {sheet} no está en la tabla, así que no se calcula nada para ella. Si es una parcela, súbala debajo de la última línea.',
    errors: 'Errores',
    remarks: 'Observaciones',
    group: '{heading} ({count})',
    item: '{header}: {text}',
    unnamedRow: 'Fila {row}, sin nombre',
    nothing: 'Nada que revisar: ningún error, ninguna observación.',
    noSheet: 'Aquí estarán los errores y observaciones de sus parcelas cuando las hojas estén llenas.',
    more: 'y {count} más. Se muestran los primeros {shown}.',
    announceNothing: 'Nada que revisar.',
    announce: 'Para revisar: {errors} {errors|error|errores}, {remarks} {remarks|observación|observaciones}.',
    unsettled:
      '{count} {count|celda se está|celdas se están} calculando. La lista sigue cuando {count|termine|terminen}.',
    goneThere: 'La celda no se pudo mostrar. {problem}',
  },
  cautions: {
    heading: 'Antes de sembrar, aplicar, comer o envasar',
  },
  problems: {
    sheetNameTaken: 'Ya hay una hoja llamada "{sheet}". Cámbiele el nombre e inténtelo de nuevo.',
    noSuchSheet: 'La hoja "{sheet}" ya no está. Deshaga su borrado o llene las hojas de nuevo.',
    noSuchTable:
      'La tabla "{table}" ya no está. Deshaga su borrado, o borre su hoja y llene las hojas de nuevo.',
    nameTaken:
      'El libro usa el nombre "{name}" para otra cosa. Cambie el suyo en la lista de nombres e inténtelo de nuevo.',
    tableNameTaken:
      'El libro tiene otra tabla llamada "{table}". Cambie el nombre de esa tabla e inténtelo de nuevo.',
    changedMeanwhile:
      'La hoja "{sheet}" cambió mientras tanto. Termine de escribir en ella e inténtelo de nuevo.',
    sheetLocked: 'La hoja "{sheet}" está protegida. Quite la protección e inténtelo de nuevo.',
    cellsInTheWay: 'La celda {cell} de "{sheet}" estorba. Mueva lo que hay allí e inténtelo de nuevo.',
    sheetDamaged:
      'Falta una parte de la hoja "{sheet}": "{missing}". Deshaga lo que la quitó. O copie a otro lado lo que escribió, borre la hoja y llene las hojas de nuevo.',
    columnGone:
      'La tabla de la hoja "{sheet}" no tiene columna "{missing}": se borró o cambió de nombre, o una versión anterior hizo la hoja sin ella. Deshágalo si puede. Si no, donde el panel tiene Guardar como .xlsx, guarde el plan y abra ese archivo, que le da todas las columnas; en Excel, escriba {missing} justo al lado del último título de la tabla y renueve de nuevo.',
    workbookLocked:
      'El libro está protegido, así que no se puede agregar ninguna hoja. Quite la protección de su estructura e inténtelo de nuevo.',
    notWritable:
      'No se puede escribir en el libro. Está protegido o abierto solo para lectura: quite la protección o guarde una copia, e inténtelo de nuevo.',
    daysFrom1904:
      'Este libro cuenta sus días desde 1904: nuestras fechas quedarían cuatro años y un día corridas. Use un libro nuevo. O quite esa opción en este (Archivo, Opciones, Avanzadas, "Usar sistema de fechas 1904"; en Mac Preferencias, Cálculo), revise las fechas que escribió, pues se mueven otro tanto, e inténtelo de nuevo.',
    cellBeingEdited: 'Se está editando una celda. Pulse Intro o Esc e inténtelo de nuevo.',
    noAnswer: 'El programa de hojas de cálculo no responde. Revise la conexión e inténtelo de nuevo.',
    notInFront: 'Otro libro está al frente. Haga clic en una celda de este e inténtelo de nuevo.',
    changedByOthers: 'Otra persona cambió el libro al mismo tiempo. Inténtelo de nuevo.',
    cellsJoined:
      'Estorban un filtro, celdas combinadas o una tabla dinámica. Quite el filtro, separe las celdas o mueva la tabla dinámica, e inténtelo de nuevo.',
    tooLarge:
      'Es más de lo que el programa acepta de una vez. Cierre otros libros e inténtelo de nuevo; o divida una lista larga de parcelas en dos libros.',
    programTooOld: 'Esta versión del programa es demasiado vieja para eso. Actualícela e inténtelo de nuevo.',
    cutOff:
      '"{action}" se interrumpió a la mitad. Lo que había antes está guardado en el libro: abra de nuevo este panel y póngalo.',
    fileExists: 'Ya hay un archivo {file}. Elija otro nombre.',
    fileNotWritable:
      'El archivo {file} no se puede escribir. Revise que su carpeta exista, que pueda escribir en ella y que ningún otro programa lo tenga abierto.',
    fileDamaged:
      'El archivo no se puede leer: está dañado o incompleto. Ábralo en un programa de hojas de cálculo, guárdelo como .xlsx con otro nombre e inténtelo con ese.',
    fileTooBig:
      'El archivo contiene mucho más que un plan, así que no se leyó hasta el fin. Copie las hojas del plan a un libro propio e inténtelo con ese.',
    fileLongList:
      'El archivo es mucho mayor que una lista de parcelas o un registro de días, así que no se leyó. Conserve las líneas y columnas que hacen falta, borre las demás, guárdelo como CSV e inténtelo con ese.',
    fileEmptyRows:
      'Una hoja del plan en este archivo sigue muy por debajo de la última fila llena, casi toda con filas vacías con color, borde o formato, así que no se leyó hasta el fin. Abra el archivo en su programa, marque todas las filas debajo de la última llena, hasta el fin de la hoja, bórrelas, guarde el archivo e inténtelo de nuevo.',
    fileEncrypted:
      'El archivo está cerrado con contraseña. Ábralo en su programa, guárdelo sin contraseña e inténtelo de nuevo.',
    fileOtherKind:
      'El archivo es de la clase {kind}. Ábralo en su programa, guárdelo como .xlsx e inténtelo con ese.',
    fileNoWorkbook:
      'El archivo no es un libro, diga lo que diga su nombre. Dé un .xlsx guardado aquí o escrito por npm run plan, o una lista de parcelas en CSV.',
    fileNotOurs:
      'El libro no tiene hojas de esta herramienta. Dé un .xlsx guardado aquí o escrito por npm run plan, o una lista de parcelas en CSV.',
    fileOtherLanguage:
      'Las hojas de este plan están en inglés. Tome primero el inglés ("All in English" arriba en el panel, o --language en de npm run plan) y ábralo entonces.',
    failed:
      'El programa de hojas de cálculo no pudo terminar "{action}". Salga de la celda en que escribe e inténtelo de nuevo.',
    unforeseen: 'Algo imprevisto salió mal. Inténtelo de nuevo; si se repite, abra otra vez el libro.',
  },
  nothingChanged: 'No se cambió nada.',
  detail: 'El programa dijo: {detail}',
};
