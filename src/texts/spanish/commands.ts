/** In Spanish: what the commands print. Options and their words stay as they are. */
import type { Translated } from '../translated';

export const commands: Translated['commands'] = {
  formula: {
    usage:
      "Uso: npm run -s formula -- '=CUCURBIT.PLANTS.DENSITY(2,36)' ... Cada fórmula da un valor JSON por línea.",
    faults: {
      unknownFunction: 'No hay función {name}. {advice}',
      unknownWord: 'La fórmula no se puede leer en "{word}". {advice}',
      missingBrackets:
        'La fórmula no se puede leer: {count} {count|paréntesis falta|paréntesis faltan} por cerrar.',
      unreadable: 'La fórmula no se puede leer. {advice}',
    },
    near: 'Parecidas: {names}.',
    noneNear: 'README da las funciones por tarea.',
    shape:
      'Escríbala como =CUCURBIT.SEED.PERHILL(3,0.8), con comas entre los argumentos y comillas en los textos.',
  },
  plan: {
    usage:
      'Uso: npm run -s plan -- plots.csv --last-frost 2026-05-02 --first-frost 2026-10-10 --out plan.xlsx\n' +
      'Uso: npm run -s plan -- plots.csv --weather record.csv --frost-risk 0.1 --out plan.xlsx\n' +
      '  --frost-risk 0.5   el riesgo de esas fechas (0.5 si son medias)\n' +
      '  --weather FILE     un registro diario (fecha, máxima, mínima) del que se toman las heladas a ese riesgo\n' +
      '  --year 2026        con --weather: el año de la temporada; si no, el que sigue al fin del registro\n' +
      '  --weather-units us con --weather: us (F) o metric (C), donde el registro no lo dice\n' +
      '  --hemisphere south con --weather: dónde está el lugar; si no, north\n' +
      '  --units us         us o metric\n' +
      '  --assurance 0.9    la probabilidad de que la semilla dada baste\n' +
      '  --place NAME       se imprime en la hoja Temporada\n' +
      '  --seed-prices FILE una lista de precios de semilla (Cultivo, Semillas por sobre, Precio del sobre) para Pedido de semilla\n' +
      '  --prices FILE      precios del presupuesto: líneas de Concepto y Primero, de Medida y Valor, o de Cultivo y Precio;\n' +
      '                     se puede dar otra vez para otra de las tres\n' +
      '  --calendar FILE    además, las tareas como .ics que un teléfono recibe\n' +
      '  --language es      lo que dice el libro está en inglés (en) o español (es)\n' +
      '  --replace          escribir sobre un archivo que ya existe\n' +
      'Un plan.xlsx de esta herramienta puede ir en lugar de plots.csv; vale su temporada donde ninguna opción diga otra cosa.',
    unknownOption: 'No hay opción {option}. npm run -s plan -- --help las enumera.',
    noFile: 'Dé un archivo con las parcelas, como plots.csv. npm run -s plan -- --help muestra cómo.',
    secondFile: '"{given}" es un archivo de más. Dé uno solo y ponga entre comillas un nombre con espacios.',
    missingOption: 'Falta {option}. Dela como {option} {example}.',
    noValueWanted: '{option} va sola. Quite "{given}".',
    badDate: '{option} es "{given}". Dé un día del calendario como año-mes-día, por ejemplo {example}.',
    beyondMonth:
      '{option} es "{given}", y {month} tiene {days} días. Dé un día que exista, por ejemplo {example}.',
    dateInWords: '{date} de {month} de {year}',
    dateTaken: '{option} {given} se tomó como {date}.',
    listDateTaken: '{file}, línea {line}: {given} se tomó como {date}, y así cada fecha escrita de ese modo.',
    frostsReversed:
      '--first-frost ({first}) debe venir después de --last-frost ({last}). Al sur del ecuador la primera helada del otoño cae en el año siguiente: dé también su año.',
    frostsApart:
      '--first-frost ({first}) está {days} días después de --last-frost ({last}). Revise el año de cada una: la primera helada del otoño es la siguiente a la última.',
    badShare: '{option} es "{given}". Dé un número mayor que 0 y menor que 1, como {example}.',
    badUnits: '{option} es "{given}". Dé us (pies, pulgadas, libras, Fahrenheit) o metric.',
    badWeatherUnits: '{option} es "{given}". Dé us (para un registro en Fahrenheit) o metric (en Celsius).',
    badLanguage: 'El valor de --language es "{given}". Dé en (inglés) o es (español).',
    badHemisphere: '--hemisphere es "{given}". Dé north o south.',
    badYear: '{option} es "{given}". Dé un año de 1900 a 2199, como {example}.',
    datesOrWeather:
      '--weather saca del registro ambas fechas de helada. Quite {option}, o quite --weather y dé ambas fechas.',
    noWeather: '{option} va con --weather. Quítela, o dé el registro como --weather record.csv.',
    weatherLine: '{file}, línea {line}: {sentence}',
    weatherRefused: 'No se puede tomar ninguna fecha de helada de {file}: {problem}',
    weatherApart:
      'Con un riesgo de {risk} hay {days} días de la última helada ({last}) a la primera ({first}) en {file}, más de un año: así de rara es allí la helada. Dé un riesgo menor, o ambas fechas sin --weather.',
    weatherFound: '{file}: {found}',
    weatherDates:
      'Helada con un riesgo de {risk}: última {last}, primera {first}, de {springs} {springs|primavera|primaveras} y {falls} {falls|otoño|otoños}.',
    yearTaken: 'Para {year}, el año que sigue al fin del registro; --year da otro.',
    calendarExtension: '--calendar es "{given}". Dé un nombre que termine en .ics.',
    calendarWritten:
      'Se escribió {file} para un teléfono: si se recibe otra vez, cada tarea se reemplaza a sí misma.',
    calendarEmpty: 'El calendario no tiene tareas, así que no se escribió {file}.',
    calendarNotWritten: 'El plan está escrito, pero no su calendario. {problem}',
    outExtension: '--out es "{given}". Dé un nombre que termine en .xlsx.',
    notUtf8: 'El texto de {file} no es UTF-8 ni UTF-16. Guárdelo como "CSV UTF-8".',
    cannotRead: {
      ENOENT: 'No hay archivo {file}. Revise su nombre y su carpeta.',
      EACCES: 'No tiene permiso para leer {file}. Pida acceso a su dueño o cópielo a una carpeta suya.',
      EISDIR: '{file} es una carpeta. Dé el archivo con las parcelas.',
      other: 'El archivo {file} no se puede leer: {reason}. Cópielo a otro lugar e inténtelo de nuevo.',
    },
    nothingWritten: 'No se escribió nada.',
    tooManyLines: '{file} tiene {count} líneas, y un plan acepta a lo sumo {most}. Divídalo.',
    emptyList: '{file} no tiene parcelas: dé una línea de títulos y al menos una línea debajo.',
    leftOut: 'La hoja calcula estas por sí misma, así que se dejaron fuera: {headers}.',
    typedOver:
      '{count} {count|cifra|cifras} de Cultivos {count|es distinta de la nuestra y se tomó|son distintas de las nuestras y se tomaron} como escritas por usted.',
    written: 'Se escribió {file} con {count} {count|parcela|parcelas}.',
    replaceHint: 'O agregue --replace para escribir encima.',
    toMend: '{count} {count|cosa|cosas} que corregir en {file}:',
    line: '{file}, línea {line}{problem}',
    cell: '{file}, hoja {sheet}, celda {cell}{problem}',
    problems: {
      empty: ': el archivo está vacío. Dé una línea de títulos y una línea por parcela.',
      raggedLine:
        ': la línea tiene {found} celdas para {expected} {expected|columna|columnas}. Corrija los separadores: uno dentro de un nombre o un número hace dos celdas de una. Escriba 0.04 en vez de 0,04, y entre comillas un nombre con coma. La línea se dejó fuera.',
      longCell:
        ', columna {column}: {length} caracteres, y una celda acepta a lo sumo {most}. Acórtela; la línea se dejó fuera.',
      openQuote: ': unas comillas se abren y no se cierran. Corríjalas; la línea se dejó fuera.',
      duplicateHeader:
        ': las columnas {firstColumn} y {column} tienen ambas el título "{header}". Quite una o cámbiele el nombre.',
      unknownHeader: ': la columna "{header}" no es de Parcelas y se dejó fuera. {advice}',
      unnamedColumn: ': la columna {column} no tiene título y se dejó fuera. Póngale uno o vacíela.',
      missingHeader: ': falta la columna "{header}". Dé a cada parcela un nombre.',
      noName: ', columna {header}: la parcela no tiene nombre. Dé a cada parcela un nombre propio.',
      sameName:
        ', columna {header}: "{given}" está también en la línea {firstLine}. Dé a cada parcela su propio nombre.',
      notAChoice: ', columna {header}: "{given}" no se conoce. {advice} {spoiled}',
      notANumber:
        ', columna {header}: "{given}" no es un número. Escriba solo cifras, con punto decimal y sin unidad. {spoiled}',
      commaInNumber:
        ', columna {header}: la coma de "{given}" estorba. Escriba los millares sin marca (1000) y los decimales con punto (0.85). {spoiled}',
      maybeThousands:
        ', columna {header}: "{given}" puede querer decir millares. Escriba los millares sin marca (1234), y tres decimales con un 0 detrás (1.2340). {spoiled}',
      currencySign:
        ', columna {header}: quite el signo de moneda de "{given}"; escriba los millares sin marca (1000) y los decimales con punto (4.50), y nada más. {spoiled}',
      outOfRange: ', columna {header}: {given} no cabe. Debe ser {limits}. {spoiled}',
      notWhole: ', columna {header}: {given} no es un número entero. Redondéelo. {spoiled}',
      percentForShare: ', columna {header}: escriba {given} por ciento como {given}% o {fraction}. {spoiled}',
      notADate:
        ', columna {header}: "{given}" no es una fecha como 2026-05-02, 2/5/2026 o 2 may 2026. {spoiled}',
    },
    spoiled: 'Solo esta parcela queda afectada.',
    emptyPriceList:
      '{file} no tiene sobres: dé una línea de títulos con Cultivo, Semillas por sobre y Precio del sobre, y debajo una línea por sobre.',
    seedPrices: {
      spoiled: 'Hasta entonces no se calculan los sobres de este cultivo.',
      noName: 'sobre sin cultivo',
      problems: {
        empty:
          ': el archivo está vacío. Dé una línea de títulos con Cultivo, Semillas por sobre y Precio del sobre, y debajo una línea por sobre.',
        unknownHeader: ': la columna "{header}" no es de la lista de precios y se dejó fuera. {advice}',
        missingHeader: ': falta la columna "{header}". Dé a cada sobre su cultivo.',
      },
    },
    prices: {
      spoiled: 'Hasta entonces cuenta como blanco.',
      noName: 'línea sin nombre',
      see: 'Los nombres están en la hoja Precios.',
      problems: {
        empty: ': el archivo está vacío. Dé una línea de títulos y una línea por precio.',
        unknownHeader: ': la columna "{header}" no es de esta tabla de Precios y se dejó fuera. {advice}',
        noName: ', columna {header}: la línea no tiene nombre. Dé el que está en la hoja Precios.',
        sameName:
          ', columna {header}: "{given}" está también en la línea {firstLine}, y vale la primera. Quite una.',
      },
    },
    noPriceTable:
      '{file} no tiene ninguna de las columnas {headers}. Dé una línea de títulos que empiece con una de ellas, y debajo los nombres como están en la hoja Precios.',
    sameList: '{file} tiene una columna {header} como {other}. Haga una lista de las dos.',
    noPrices: '{file} no tiene precios: dé una línea de títulos y al menos una línea debajo.',
    near: 'Parecidos: {names}.',
    choose: 'Elija uno de estos: {names}.',
    columns: 'Columnas: {names}.',
    seeCrops: 'Los nombres están en la hoja Cultivos.',
    finding: ', {plot}, {header}: {text}',
    noName: 'parcela sin nombre',
    findings: 'Para revisar:',
  },
};
