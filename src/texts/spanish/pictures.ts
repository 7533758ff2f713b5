/** In Spanish: what the pictures of the weather record say. */
import type { Translated } from '../translated';

export const pictures: Translated['pictures'] = {
  months: ['ene', 'feb', 'mar', 'abr', 'may', 'jun', 'jul', 'ago', 'sep', 'oct', 'nov', 'dic'],
  date: '{date} {month}',
  percent: '{percent} %',
  at: '{title}: {place}',
  chance: {
    title: 'Probabilidad de helada por fecha',
    spring: 'helada aún por venir',
    fall: 'helada ya venida',
    counted: 'Se cuentan: {springs} {springs|primavera|primaveras} y {falls} {falls|otoño|otoños}.',
    left: 'No se cuentan, por días sin dato: {springs} y {falls}.',
    springAlt:
      'Todavía hiela en {share} de las primaveras después del {first}, en {risk} después del {at}, en ninguna después del {last}.',
    springTooMuch:
      'Hiela en {share} de las primaveras: ninguna fecha tiene un riesgo de {risk}. En ninguna después del {last}.',
    springNone: 'En ninguna primavera heló.',
    springVoid: 'No se puede contar ninguna primavera.',
    fallAlt:
      'En ningún otoño ha helado antes del {first}, en {risk} antes del {at}, en {share} antes del {last}.',
    fallTooMuch:
      'Hiela en {share} de los otoños: ninguna fecha tiene un riesgo de {risk}. En ninguno ha helado antes del {first}.',
    fallNone: 'En ningún otoño heló.',
    fallVoid: 'No se puede contar ningún otoño.',
    columns: ['Temporada', 'Fecha', 'Probabilidad de helada'],
    rows: { spring: 'primavera, después', fall: 'otoño, antes' },
  },
  heat: {
    title: 'Calor de la siembra al primer corte',
    remark:
      'Grados día sobre {base} {degrees}, sumados desde cada siembra con el tiempo de {year}. Primer corte con {target}.',
    thinned: 'Se dibujan {count} de las {all} siembras, repartidas por igual de la primera a la última.',
    path: '{sowing} a {pick}',
    open: '{sowing}: no se alcanza',
    alt: '{reached} de {count} {count|siembra|siembras} {reached|alcanza|alcanzan} {target} grados día.',
    pathAlt: 'Sembrado el {sowing}, primer corte el {pick}, a los {days} {days|día|días}.',
    openAlt:
      'Sembrado el {sowing}, {heat} grados día hasta el {end}, donde el registro termina o le falta un día.',
    openAtOnce: 'Sembrado el {sowing}, día que falta en el registro.',
    columns: ['Siembra', 'Primer corte', 'Días', 'Grados día'],
    notReached: 'no se alcanza',
  },
  years: {
    title: 'Días sin helada, año por año',
    counted:
      'De la última helada de primavera a la primera de otoño; {count} {count|temporada tiene|temporadas tienen} ambas.',
    middle: 'En negrita: la del medio, {days} {days|día|días}.',
    middleTwo: 'En negrita: las dos del medio, {days} {days|día|días}.',
    open: 'Hueco: sin helada en un extremo abierto.',
    gap: 'Punteado: faltan días.',
    days: '{days} {days|día|días}',
    season: '{spring}/{fall}',
    alt: 'De {all} {all|temporada|temporadas}, {count} {count|tiene|tienen} ambas heladas.',
    spread: 'Días sin helada: menos {least} ({leastSeason}), medio {middle}, más {most} ({mostSeason}).',
    openAlt: 'Sin helada en primavera u otoño: {seasons}.',
    gapAlt: 'Faltan días: {seasons}.',
    columns: ['Temporada', 'Última helada', 'Primera helada', 'Días sin helada'],
    none: 'sin helada',
    void: 'faltan días',
  },
  pane: {
    heading: 'Gráficas',
    draw: 'Dibujar las gráficas',
    put: 'Poner las gráficas en una hoja',
    drawn: '{count} {count|gráfica dibujada|gráficas dibujadas} de las hojas de clima.',
    done: '{count} {count|gráfica puesta|gráficas puestas} en la hoja {sheet}.',
    nothing: 'No hay qué dibujar: las hojas de clima no tienen registro, o Temporada no tiene año o riesgo.',
    figures: '{title}, en cifras',
    older: 'Las gráficas de la hoja son de cifras que ya cambiaron: póngalas de nuevo.',
    olderHere: 'Las hojas cambiaron desde que se dibujaron: dibújelas de nuevo.',
    undo: 'Gráficas del clima',
  },
  sheet: {
    name: 'Gráficas del clima',
    lead: 'Dibujadas del registro de la hoja Registro del clima. Después de un cambio allí, dibújelas de nuevo.',
    state: {
      label: 'Dibujadas de las hojas como están',
      remark: '"no": cambió el registro, o lo que se le pide. Ponga de nuevo las gráficas en la hoja.',
    },
    stands: 'sí',
    older: 'no',
  },
};
