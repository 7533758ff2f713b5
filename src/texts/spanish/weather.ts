/** In Spanish: what the Weather sheets say. Headers are also the names that formulas use. */
import type { Translated } from '../translated';

export const weather: Translated['weather'] = {
  sheet: 'Clima',
  title: 'Clima',
  lead: [
    'Heladas y calor del registro diario de la hoja Registro del clima. Cambie las celdas de color; lo demás sigue.',
    'Lo que pasó en esos años no promete nada del siguiente. Decide el suelo: siembre cuando esté cálido.',
  ],
  lines: {
    place: {
      label: 'Registro de',
      remark:
        'El lugar de la estación. Las hondonadas hielan hasta más tarde en primavera. Nada se calcula de él.',
    },
    units: {
      label: 'Temperaturas en',
      remark: '"us": °F. "metric": °C. Del registro, tenga lo que tenga Temporada.',
    },
    frostAt: { label: 'Helada a o bajo', remark: 'En los grados del registro. En blanco: 32 °F o 0 °C.' },
    rule: {
      label: 'Regla de las heladas',
      remark:
        '"inc" (inclusiva) como PERCENTILE.INC, "exc" (exclusiva) como PERCENTILE.EXC. Difieren en días.',
    },
    hemisphere: { label: 'Hemisferio', remark: '"north" (norte) o "south" (sur) del ecuador.' },
    crop: {
      label: 'Cultivo que suma calor',
      remark: 'Uno de la tabla de abajo, o con base propia cualquiera de Cultivos.',
    },
    sowing: { label: 'Sembrado el', remark: 'En blanco: el día desde el que se siembra, en Temporada.' },
    base: {
      label: 'Temperatura base',
      remark: 'Bajo ella nada crece. En blanco: la del cultivo, de la tabla de abajo.',
    },
    ceiling: {
      label: 'Temperatura techo',
      remark: 'Sobre ella más calor no ayuda. En blanco: la del cultivo; "none" si ninguna.',
    },
    method: {
      label: 'Método',
      remark:
        'mean (media), modified (modificado), sine (seno), o reduced (reducido), que necesita techo. En blanco: el del cultivo.',
    },
    heatWanted: {
      label: 'Calor buscado al primer corte',
      remark: 'Grados día de sus notas. En blanco: los de los días a cosecha desde pleno verano.',
    },
    gap: {
      label: 'Días entre siembras de verano',
      remark: 'Por calendario; cada siembra viene tras tanto calor como tienen esos días. Criterio nuestro.',
    },
    soil: {
      label: 'Temperatura del suelo',
      remark: 'A la profundidad de la semilla. En blanco: la que hay que esperar.',
    },
    firstDay: { label: 'Primer día del registro', remark: '' },
    lastDay: { label: 'Último día del registro', remark: '' },
    missing: {
      label: 'Días sin ambas temperaturas',
      remark: 'Entre esos dos días. Diez en una temporada anulan su fecha de helada.',
    },
    seasons: {
      label: 'Años con ambas heladas',
      remark: 'Sus días sin helada se cuentan abajo.',
    },
    counted: {
      label: 'Temporadas tras las fechas',
      remark: 'Primaveras completas, u otoños si son menos; las que no tienen helada también cuentan.',
    },
    caution: {
      label: 'Cuánto fiarse de las fechas',
      remark:
        'Con menos de 20 temporadas una más puede mover una fecha una semana. De una no se puede decir riesgo: la fecha es la suya.',
    },
    lastFrost: {
      label: 'Última helada de primavera',
      remark: 'CUCURBIT.FROST.SPRINGDATE con el riesgo y el año de Temporada.',
    },
    firstFrost: {
      label: 'Primera helada de otoño',
      remark:
        'CUCURBIT.FROST.FALLDATE. Para que Temporada siga: allí =WEATHER_LAST_FROST y =WEATHER_FIRST_FROST.',
    },
    freeDays: {
      label: 'Días entre esas fechas',
      remark:
        'CUCURBIT.SEASON.DAYS. Como ambas llevan el riesgo, no es un año medio. "sin fecha de helada": falta una.',
    },
    least: {
      label: 'Días sin helada, menos',
      remark: 'De los años de abajo. "ningún año cuenta": ninguno tiene ambas heladas.',
    },
    middle: { label: 'Días sin helada, medio', remark: 'Tantos años tuvieron más como menos.' },
    most: { label: 'Días sin helada, más', remark: '' },
    chanceAfter: {
      label: 'Helada tras la última de Temporada',
      remark: 'CUCURBIT.FROST.CHANCE: fracción de primaveras con una posterior.',
    },
    chanceBefore: {
      label: 'Antes de la primera de Temporada',
      remark: 'CUCURBIT.FROST.CHANCE: fracción de otoños con una anterior.',
    },
    soilUsed: {
      label: 'Temperatura del suelo usada',
      remark: 'CUCURBIT.SOIL.RANGE donde se deja en blanco.',
    },
    emergence: {
      label: 'Días a emergencia',
      remark:
        'CUCURBIT.EMERGENCE.DAYS. "no hay tabla": calabazas no están en ella; vale la temperatura del suelo.',
    },
    seedlings: {
      label: 'Fracción que nace bien',
      remark: 'CUCURBIT.EMERGENCE.PERCENT: plántulas normales a esa temperatura.',
    },
    sowingUsed: { label: 'Siembra que se compara', remark: '' },
    days: { label: 'Días a cosecha', remark: 'De la hoja Cultivos.' },
    baseUsed: { label: 'Base usada', remark: '' },
    ceilingUsed: { label: 'Techo usado', remark: '' },
    methodUsed: { label: 'Método usado', remark: '' },
    target: {
      label: 'Calor al primer corte',
      remark:
        'Los días a cosecha son para tiempo cálido: contados desde el día más largo. Criterio nuestro. "ningún año cuenta": en ninguno están todos los días.',
    },
    calendarPick: {
      label: 'Primer corte por calendario',
      remark: 'CUCURBIT.DATE.FIRSTPICK, con los días de otoño de una siembra tardía.',
    },
    heatPick: {
      label: 'Primer corte por calor, año medio',
      remark: 'De CUCURBIT.HEAT.DATES abajo. "ningún año cuenta": ninguno lo alcanza.',
    },
    heatPickEarly: { label: 'Primer corte por calor, más temprano', remark: '' },
    heatPickLate: { label: 'Primer corte por calor, más tardío', remark: 'De los años que lo alcanzan.' },
    lastSowing: {
      label: 'Última siembra',
      remark: 'CUCURBIT.DATE.LASTSOWING con las cifras del cultivo, antes de la primera helada de Temporada.',
    },
    sowingInRecord: {
      label: 'Esa siembra en el registro',
      remark:
        'En el último año que el registro tiene de allí a la última siembra. Su calor reparte las siembras. "no está": no tiene tal año.',
    },
    heatBetween: {
      label: 'Calor de siembra a siembra',
      remark:
        'CUCURBIT.HEAT.YEARS: el de esos días desde el día más largo, en el año medio. "no se puede decir": vea las listas de abajo.',
    },
  },
  heatByCrop: {
    heading: 'Calor al primer corte: en los días a cosecha desde el día más largo, en el año medio',
    crop: {
      header: 'Cultivo',
      note: 'Donde difieren las fuentes un cultivo está dos veces; la primera cuenta arriba.',
    },
    publisher: { header: 'Publicado por', note: 'Distingue las filas de un cultivo.' },
    base: { header: 'Base', note: 'Bajo ella nada crece.' },
    ceiling: { header: 'Techo', note: 'Sobre él más calor no ayuda.' },
    method: { header: 'Método', note: 'El método de CUCURBIT.HEAT.DAY con que se publicó.' },
    days: { header: 'Días', note: 'Días a cosecha de la hoja Cultivos.' },
    heat: {
      header: 'Calor',
      note: 'CUCURBIT.HEAT.YEARS en esos días: el medio de los años. Grados día de la escala del registro. "no se puede decir": ningún año tiene todos esos días, o una lista de abajo dice qué está mal.',
    },
    source: { header: 'Fuente', note: 'Dónde está la base.' },
  },
  frostYears: {
    heading: 'Heladas, año por año',
    year: {
      header: 'Año',
      note: 'De la primavera. CUCURBIT.FROST.YEARS llena esta lista, una fórmula en su primera celda.',
    },
    lastFrost: {
      header: 'Última helada',
      note: '"none": no heló. "void": faltan diez días o más donde podía haber helada.',
    },
    firstFrost: { header: 'Primera helada', note: 'Del otoño que sigue a esa primavera.' },
    freeDays: { header: 'Días sin helada', note: 'De la última helada a la primera.' },
  },
  heatYears: {
    heading: 'Calor al primer corte, año por año',
    year: {
      header: 'Año',
      note: 'CUCURBIT.HEAT.YEARS llena esta lista, una fórmula en su primera celda.',
    },
    heat: {
      header: 'Calor',
      note: 'Grados día en los días a cosecha desde el día más largo. "void": falta un día.',
    },
  },
  picks: {
    heading: 'Primer corte por calor',
    year: {
      header: 'Año',
      note: 'CUCURBIT.HEAT.DATES llena esta lista, una fórmula en su primera celda.',
    },
    date: {
      header: 'Primer corte',
      note: 'El día que alcanza el calor. "none": no en doce meses. "void": falta un día.',
    },
    days: { header: 'Días', note: 'Desde la siembra. Por calendario: los días a cosecha de arriba.' },
    noHeat:
      'No hay calor que alcanzar: ningún año del registro tiene todos los días desde el más largo hasta el primer corte.',
  },
  sowings: {
    heading: 'Siembras de igual calor',
    sown: {
      header: 'Sembrar el',
      note: 'CUCURBIT.HEAT.SUCCESSION llena esta lista, con el calor del año de arriba, hasta la última siembra.',
    },
    notInRecord: 'En ningún año va el registro de la siembra que se compara hasta la última.',
    noHeat: 'No hay calor con que repartirlas: ningún año del registro tiene esos días desde el más largo.',
  },
  degreeDays: { us: '°F día', metric: '°C día' },
  none: 'none',
  noTable: 'no hay tabla',
  trust: {
    none: 'ninguna temporada',
    one: 'una sola temporada',
    few: 'pocas temporadas',
    enough: 'suficiente',
  },
  noYear: 'ningún año cuenta',
  noFrostDate: 'sin fecha de helada',
  noSeasonDate: 'sin fecha en Temporada',
  notInRecord: 'no está',
  notTold: 'no se puede decir',
  recordSheet: 'Registro del clima',
  recordLead: [
    'Una línea por día; deje en blanco la celda que el registro no tiene. Un día escrito bajo la última línea le pertenece.',
    'Las listas de la hoja Clima siguen. Las funciones CUCURBIT dicen qué día está repetido o tiene mínima sobre máxima.',
  ],
  record: {
    date: { header: 'Fecha', note: 'Cada día una vez.' },
    high: { header: 'Máxima', note: 'Temperatura más alta del día. En blanco si falta.' },
    low: { header: 'Mínima', note: 'Temperatura más baja del día. En blanco si falta.' },
  },
};
