/** In Spanish: what is said of a daily record of temperatures that somebody gives. */
import type { Translated } from '../translated';

export const record: Translated['record'] = {
  hemispheres: { north: 'norte', south: 'sur' },
  measures: { date: 'fecha', high: 'máxima', low: 'mínima' },
  and: ' y ',
  units: { us: 'Fahrenheit', metric: 'Celsius' },
  sides: { spring: 'primavera', fall: 'otoño' },
  found:
    '{count} {count|día|días}, del {first} al {last}, en {units} ({unitsBy}). Fecha de "{date}", mínima de "{low}"{high}.',
  highFrom: ', máxima de "{header}"',
  placeFound: 'Estación: {place}.',
  unitsBy: {
    asked: 'como usted eligió',
    header: 'como dice el título',
    cells: 'como dicen sus celdas',
    temperatures: 'por las temperaturas, pues el título no lo dice',
  },
  doubts: {
    nothingThere: 'No hay nada. Dé una línea de títulos, como Fecha,Máxima,Mínima, y una línea por día.',
    tooManyLines: 'Hay {count} líneas, y {most} es lo máximo. Dé los días de una sola estación.',
    noHeader:
      'Ninguna línea nombra las columnas. Ponga una sobre los días, con coma, punto y coma o tabulador entre los nombres, como Fecha,Máxima,Mínima.',
    headerLacks:
      'Esta línea parece nombrar las columnas, y ninguno de sus nombres se conoce para {measures}. Llámelas Fecha, Máxima y Mínima.',
    columnMissing: 'Ninguna columna tiene la {measure}. Nómbrela en el título, como Fecha, Máxima o Mínima.',
    highMissing:
      'Ninguna columna tiene la máxima. Las heladas se pueden sacar de las mínimas solas; el calor y los cortes por calor, no.',
    columnTwice:
      '"{header}" y "{otherHeader}" parecen ambas la columna de la {measure}. Cambie de nombre o quite la que no es.',
    linesBefore: '{count} {count|línea sobre el título se pasó|líneas sobre el título se pasaron} por alto.',
    openQuote: 'Unas comillas se abren y no se cierran. Corríjalas.',
    raggedLine:
      'La línea tiene {found} {found|celda|celdas} y el título tiene {expected}. La línea se dejó fuera; corrija sus separadores.',
    mostlyRagged:
      '{count} de {lines} líneas no tienen tantas celdas como el título. Si las temperaturas llevan coma decimal, exporte el registro con punto y coma o tabuladores entre las celdas.',
    otherStation:
      'Esta línea es de la estación "{station}", la línea {otherLine} de "{otherStation}". Dé las líneas de una sola estación.',
    notADay:
      '"{given}" no es una fecha que se pueda leer. La línea se dejó fuera; escriba las fechas como año-mes-día, por ejemplo 2026-05-02.',
    noSuchDay: 'El calendario no tiene {given}. La línea se dejó fuera.',
    dayOrMonthFirst:
      'En "{given}", como en todas las demás fechas, cualquiera de los dos números puede ser el mes. Escriba las fechas como año-mes-día, por ejemplo 2026-05-02.',
    dayAndMonthFirst:
      'En "{given}" el día y el mes están al revés que en "{other}" de la línea {otherLine}. Escriba todas las fechas como año-mes-día, por ejemplo 2026-05-02.',
    tooEarly:
      '{given} es anterior al 1 de marzo de 1900, donde empiezan los días de las hojas de cálculo. La línea se dejó fuera.',
    futureDay: '{day} está aún por venir. La línea se dejó fuera: un pronóstico no es un registro.',
    notATemperature:
      '"{given}" no es una temperatura. La {measure} se dejó vacía; escriba solo cifras, sin unidad ni marca.',
    estimated: '"{given}" está marcado como estimación. La {measure} se tomó como está.',
    cellOfOtherScale:
      '"{given}" está en otra escala que {units}, la que nombran usted, el título u otra celda. Lleve todos los días a una sola.',
    impossible: 'Ninguna {measure} es de {degrees} grados {units} donde crecen cucurbitáceas. Se dejó vacía.',
    scalesDiffer:
      'Los títulos "{header}" y "{otherHeader}" nombran escalas distintas. Dé ambas temperaturas en una.',
    scaleUnknown:
      '¿Fahrenheit o Celsius? El título no lo dice, y de {days} {days|día|días} el más caluroso tiene {hottest}. Diga cuál, o escriba (F) o (C) en el título.',
    otherScale:
      'El día más caluroso de {year} tiene {hottest} grados {units}, que ningún año tiene donde crecen cucurbitáceas. Si ese año, o todo, está en la otra escala, dígalo o lleve todo a una.',
    askedScale:
      'Usted dijo {units}, y entonces muchos días de {year} serían más calientes de lo que el aire fue jamás: el más caluroso tiene {hottest}. Diga la otra escala o déjelo al registro.',
    monthsOfOtherScale:
      'De {from} a {to} las temperaturas ({measure}) parecen de la otra escala: al principio {mean} grados en promedio, y {usual} en ese mes de otros años. Lleve todos los días a {units}. Si están bien como están, diga usted que el registro está en {units}.',
    otherLows:
      'La noche más cálida tiene {warmest} grados {units}, que ningún año tiene donde crecen cucurbitáceas. Elija la otra escala o lleve el registro a una.',
    noScale:
      'Ningún lugar tiene días de {hottest} grados, ni en Fahrenheit ni en Celsius. Si son décimas de grado, escríbalo en ambos títulos: Máxima (décimas de grado C), Mínima (décimas de grado C).',
    lowAboveHigh:
      'La mínima ({low}) es mayor que la máxima ({high}). Ambas se dejaron vacías: no se sabe cuál es la correcta.',
    columnsSwapped:
      'En {count} de {days} líneas la mínima es mayor que la máxima. Intercambie los títulos de las dos columnas.',
    sameDayTwice: '{day} está también en la línea {otherLine} y dice lo mismo. Se tomó una vez.',
    sameDayDiffers:
      '{day} está también en la línea {otherLine}, con otras temperaturas. El día se dejó vacío; borre la línea equivocada.',
    twoRecords:
      '{day} está también en la línea {otherLine}, con otras temperaturas, y {count} líneas son como esta. ¿Son dos estaciones, u horas? Dé una estación, una línea por día.',
    noDays: 'Debajo del título no hay ningún día con temperatura. Dé una línea por día.',
    otherHemisphere:
      'La mitad cálida del año es la del {hemisphere}. Diga que el lugar está en el {hemisphere}, o vea si mes y día cambiaron de lugar.',
    notInOrder: 'Los días no están en el orden del calendario. Se ordenaron.',
    gap: '{count} {count|día falta|días faltan}, del {from} al {to}.',
    noHigh:
      'Ningún día tiene una máxima que sirva, así que el calor y los cortes por calor no se pueden decir. Corrija la columna de máximas.',
    noLow: '{count} {count|día no tiene|días no tienen} mínima, este es el primero. Cuentan como sin dato.',
    voidSeason:
      'No cuenta el lado de {side} de {year}: faltan diez días o más donde una helada cambiaría su fecha.',
    fewSeasons:
      '{springs} {springs|primavera cuenta|primaveras cuentan} y {falls} {falls|otoño|otoños}. Con menos de {enough} un año más puede mover una fecha de helada una semana, y de un año no se puede decir ningún riesgo. Dé un registro más largo donde lo haya.',
    andMore: '{count} más de esta clase.',
  },
};
