/** In Spanish: the Seed order sheet. Headers are also the names that formulas use. */
import type { Translated } from '../translated';

export const seedOrder: Translated['seedOrder'] = {
  sheet: 'Pedido de semilla',
  title: 'Pedido de semilla',
  lead: [
    'Semilla de todas las parcelas por cultivo. La de cada parcela basta por sí sola; la suma es algo más que suficiente.',
    'Las celdas de color son suyas: semilla en existencia y su año, y debajo la lista de precios, una línea por sobre.',
  ],
  cautions: [
    'Semilla tratada no es alimento, forraje ni aceite; su etiqueta dice con qué se trató (7 CFR 201.31a). Obedézcala.',
    'Nunca coma, dé de comer ni composte la semilla tratada que sobre: pregunte a extensión a dónde va.',
  ],
  lines: {
    seeds: { label: 'Semillas necesarias', remark: 'De todos los cultivos, antes de restar existencias.' },
    cost: { label: 'Costo de los sobres', remark: 'De los cultivos con precio: vea la línea siguiente.' },
    unpriced: {
      label: 'Cultivos por comprar sin precio',
      remark: 'Observación dice por qué. Su semilla no está en el costo.',
    },
    uncounted: {
      label: 'Parcelas no contadas',
      remark:
        'Parcelas con error o sin cultivo: la hoja Parcelas dice por qué. Su semilla no está en ninguna suma.',
    },
  },
  noneYet: 'ninguna aún',
  noPriceYet: 'aún sin precio',
  noStandard: 'ninguna',
  noLife: 'no hay dato',
  columns: {
    crop: {
      header: 'Cultivo',
      note: 'Una fila por tipo de la hoja Cultivos. En blanco donde ninguna parcela lo lleva.',
    },
    plots: { header: 'Parcelas', note: 'Parcelas del cultivo, según la columna Tomado como.' },
    seedsNeeded: {
      header: 'Semillas necesarias',
      note: 'Suma de Semilla que sembrar de Parcelas, cada una con la seguridad de Temporada: juntas, del lado seguro.',
    },
    weight: {
      header: 'Peso',
      note: 'Semillas necesarias entre las semillas por oz o g del cultivo, como CUCURBIT.SEED.WEIGHT. Los lotes varían: pese 100 de las suyas. En blanco: Cultivos no tiene la cuenta.',
    },
    germination: {
      header: 'Germinación más baja',
      note: 'La más baja que declara una parcela del cultivo. En blanco: ninguna, y se calcula con la germinación de Cultivos.',
    },
    standard: {
      header: 'Norma federal',
      note: 'Germinación mínima de semilla no marcada Below Standard (7 CFR 201.31). La de menos puede venderse así marcada. CUCURBIT.SEED.STANDARD',
    },
    onHand: {
      header: 'En existencia',
      note: 'Semillas que le quedan. Dé también el año, o no se cuentan.',
    },
    packedIn: { header: 'Envasada en', note: 'El año del sobre, como 2025. De varios, el más viejo.' },
    yearsLeft: {
      header: 'Años que quedan',
      note: 'Años que debe durar aún, según la menor duración publicada. No es promesa: pruebe algunas antes. CUCURBIT.SEED.STORAGELEFT',
    },
    toBuy: {
      header: 'Por comprar',
      note: 'Semillas necesarias menos las que hay y aún duran.',
    },
    packs: {
      header: 'Sobres por comprar',
      note: 'Los sobres más baratos de la lista que contienen las semillas por comprar: cuántos de cada tamaño. CUCURBIT.SEED.PACKLIST',
    },
    cost: { header: 'Costo', note: 'De esos sobres. CUCURBIT.SEED.PACKCOST' },
    remark: { header: 'Observación', note: 'Qué revisar antes de pedir.' },
  },
  units: { seeds: 'semillas', oz: 'oz', g: 'g', packs: 'sobres de semillas', years: 'años' },
  remarks: {
    uncounted: 'Parcelas no contadas: ',
    uncountedEnd: ', vea Parcelas.',
    ofPlants: ' de las plantas son polinizadoras: ',
    pollenizersMixed:
      'vea si su semilla viene en el sobre, a menudo teñida; si no, pida para ellas semilla monoica.',
    pollenizersApart: 'pida su parte de las semillas como sandía con semilla.',
    onHandNotNumber: 'La existencia no se cuenta: dé semillas enteras, solo con cifras, 0 o más.',
    noYear: 'La existencia no se cuenta: dé el año en que se envasó.',
    packedUnfit:
      'Envasada en: dé un año de cuatro cifras, no posterior al de Temporada; hasta entonces la existencia no se cuenta.',
    noSeasonYear: 'La existencia no se cuenta: dé el año en Temporada.',
    outlived: 'La existencia pasó los años publicados y no se cuenta: pruébela.',
    noLife:
      'La existencia no se cuenta: no hay duración publicada. Pruébela y escriba los años en que confíe sobre Años que quedan.',
    packSize: 'Sin costo: dé a cada sobre de la lista sus semillas, un número entero mayor que 0.',
    packPrice: 'Sin costo: dé a cada sobre de la lista un precio mayor que 0, solo con cifras.',
    packOther:
      'Sin costo: un sobre de la lista tiene parte de una semilla, o su precio tiene más de 4 decimales o pasa de 100,000.',
    beyondReach: 'Sin costo: se calcula hasta 20 sobres de un cultivo y 1,000,000 de semillas.',
    noPack: 'No hay ningún sobre: agregue uno a la lista de precios.',
  },
  prices: {
    heading: 'Lista de precios: una línea por sobre ofrecido',
    columns: {
      crop: {
        header: 'Cultivo',
        note: 'El tipo o un nombre comercial, como en Parcelas. Varios sobres de un cultivo, varias líneas.',
      },
      size: {
        header: 'Semillas por sobre',
        note: 'Un número entero de semillas. Sobre vendido por peso: su peso por las semillas por oz o g de la etiqueta.',
      },
      price: {
        header: 'Precio del sobre',
        note: 'Cifras con punto decimal, como 4.50; sin signo de moneda ni coma. En la misma moneda en todas las líneas.',
      },
      perThousand: {
        header: 'Por 1,000 semillas',
        note: 'Para comparar sobres. Un error dice qué está mal en la línea. CUCURBIT.SEED.PACKCOST',
      },
      takenAs: {
        header: 'Tomado como',
        note: 'El cultivo de la hoja Cultivos. #N/A: el nombre no se conoce.',
      },
      lot: {
        header: 'Lote o nota',
        note: 'Sus palabras: el lote del vendedor, tratada o no, cuándo llega.',
      },
    },
  },
};
