/** In Spanish: what the sheets say. Headers are also the names that formulas use. Long: one list of sentences. */
import type { Translated } from '../translated';

export const sheets: Translated['sheets'] = {
  scratch: 'Borrador',
  season: {
    sheet: 'Temporada',
    title: 'Temporada',
    lead: [
      'Todo esto lo leen las demás hojas. Cambie las celdas de color; lo demás sigue.',
      'Una fecha de helada es un riesgo, no una promesa. Decide el suelo: siembre cuando esté cálido, diga lo que diga la fecha.',
    ],
    lines: {
      place: { label: 'Lugar', remark: 'El lugar de estas fechas de helada. Nada se calcula de él.' },
      year: {
        label: 'Año de la última helada',
        remark: 'Se compara con las fechas, para que no queden las del año pasado.',
      },
      lastFrost: {
        label: 'Última helada de primavera',
        remark: 'De su registro o su servicio meteorológico, con su año.',
      },
      firstFrost: {
        label: 'Primera helada de otoño',
        remark: 'Con su año: al sur del ecuador cae en el siguiente.',
      },
      frostRisk: {
        label: 'Riesgo de esas fechas',
        remark:
          '50% si es una fecha media: en la mitad de las primaveras hiela más tarde. Léalo en la tabla de donde salen las fechas.',
      },
      units: {
        label: 'Unidades',
        remark:
          '"us": ft, in, oz, lb. "metric": m, cm, g, kg. Cambiadas en la hoja, los números escritos pasan a las nuevas; en el panel se pueden convertir.',
      },
      assurance: {
        label: 'Seguridad de todas las plantas',
        remark:
          'La probabilidad de que la semilla baste. 90%: faltarán plantas en una de cada diez parcelas. Criterio nuestro.',
      },
      trayCulls: {
        label: 'Plántulas descartadas',
        remark: 'Fracción del almácigo demasiado débil para trasplantar. Criterio nuestro.',
      },
      seedsPerCell: {
        label: 'Semillas por celda de bandeja',
        remark: '1, o 2 raleadas a 1. Práctica común, sin fuente.',
      },
      monoeciousFemale: {
        label: 'Fracción femenina, monoicas',
        remark:
          'Cerca de la mitad por práctica común, sin fuente; en tipos viejos se cuenta mucho menos. Ponga su propio conteo.',
      },
      pollenizerLosses: {
        label: 'Polinizadoras perdidas',
        remark:
          'Fracción de plantas polinizadoras que mueren o se atrasan; por ello se ponen más. Criterio nuestro.',
      },
      frostMargin: {
        label: 'Margen antes de helada de otoño',
        remark: 'En blanco: los de cada cultivo (los tiernos deben terminar unas 2 semanas antes).',
      },
      yearCheck: { label: '¿Corresponden las fechas al año?', remark: '' },
      frostFreeDays: { label: 'Días entre las heladas', remark: 'CUCURBIT.SEASON.DAYS' },
      setOutWait: {
        label: 'Trasplante: días tras la helada',
        remark:
          '14 tras una fecha media, ninguno si la fecha es tan segura como 10%, en línea recta entre ambas (criterio nuestro); redondeado hacia arriba.',
      },
      sowingWait: {
        label: 'Siembra: días tras la helada',
        remark:
          '7 tras una fecha media, ninguno si la fecha es tan segura como 10%, en línea recta entre ambas (criterio nuestro); redondeado hacia arriba.',
      },
      setOut: {
        label: 'Trasplantar desde',
        remark: 'CUCURBIT.DATE.SETOUT. Solo en suelo cálido: vea Suelo mínimo en Parcelas.',
      },
      hardenOff: {
        label: 'Endurecer desde',
        remark: 'CUCURBIT.DATE.HARDENOFF. No con menos de unos 60 °F (16 °C).',
      },
      firstSowing: {
        label: 'Sembrar al aire libre desde',
        remark: 'CUCURBIT.DATE.FIRSTSOWING. Solo en suelo cálido: vea Suelo mínimo en Parcelas.',
      },
      longestDay: {
        label: 'Día más largo',
        remark: 'Las siembras posteriores crecen más despacio: se suman los días de otoño del cultivo.',
      },
      spacingPerLength: {
        label: 'in en un ft, o cm en un m',
        remark: 'Convierte la distancia entre plantas en largo de surco.',
      },
    },
    yearFits: 'sí',
    yearDiffers: 'La última helada es de otro año: escriba de nuevo las fechas o el año',
  },
  plots: {
    sheet: 'Parcelas',
    title: 'Parcelas',
    lead: [
      'Las celdas de color, aquí y a la derecha, son suyas; en blanco vale la cifra del cultivo. Parcela nueva: bajo la última línea.',
      'La semilla basta con la seguridad de Temporada. Las fechas salen de sus heladas; el suelo cálido va primero.',
    ],
    cautions: [
      'Semilla tratada y fruto amargo no son alimento ni forraje. Aplicaciones: la etiqueta es la ley; pregunte a extensión.',
    ],
    mayStay: 'puede quedarse',
    isShared: 'repetido',
    /** What FLOWER.ISOLATE calls clear. */
    isClear: 'libre',
    columns: {
      plot: { header: 'Parcela', note: 'Un nombre suyo, cada uno una vez.' },
      crop: {
        header: 'Cultivo',
        note: 'Un tipo de la lista; se entienden otros nombres, como zapallito o patilla, también en inglés.',
      },
      layout: {
        header: 'Disposición',
        note: 'rows (surcos), hills (golpes) o beds (camas). En blanco: rows.',
      },
      length: { header: 'Largo', note: 'Largo de la parcela, a lo largo de los surcos. ft o m.' },
      width: { header: 'Ancho', note: 'Ancho de la parcela, a través de los surcos. ft o m.' },
      rowSpacing: {
        header: 'Entre surcos',
        note: 'Distancia entre surcos, o entre surcos de golpes. ft o m. En blanco: la del cultivo.',
      },
      plantSpacing: {
        header: 'Entre plantas',
        note: 'Distancia entre plantas en el surco. in o cm. En blanco: la del cultivo.',
      },
      hillSpacing: {
        header: 'Entre golpes',
        note: 'Distancia entre golpes en el surco. ft o m. En blanco: la del cultivo.',
      },
      plantsPerHill: {
        header: 'Plantas por golpe',
        note: 'Las que quedan tras ralear. En blanco: las del cultivo.',
      },
      bedWidth: { header: 'Ancho de cama', note: 'Para camas. ft o m.' },
      pathWidth: { header: 'Ancho de pasillo', note: 'Entre camas. ft o m.' },
      rowsPerBed: { header: 'Surcos por cama', note: 'Para camas.' },
      start: {
        header: 'Inicio',
        note: 'seed (siembra directa): sembrado donde crece. transplant (trasplante): de almácigo. En blanco: seed.',
      },
      germination: {
        header: 'Germinación',
        note: 'Fracción de semillas que germina, del sobre o de su prueba. En blanco: el mínimo federal del cultivo.',
      },
      fieldEmergence: {
        header: 'Emergencia en campo',
        note: 'Fracción de las semillas viables que se establece en el campo. En blanco: sin pérdida en campo.',
      },
      flowerType: {
        header: 'Tipo de flor',
        note: 'monoecious (monoica), gynoecious (ginoica), parthenocarpic (partenocárpica), andromonoecious (andromonoica) o triploid (triploide): del sobre. En blanco: el usual del cultivo.',
      },
      pollenizerShare: {
        header: 'Fracción polinizadora',
        note: 'Fracción de plantas que son polinizadoras: 1 por 3 es 25%. En blanco: 10% en lotes ginoicos (práctica común, sin fuente), 25% en sandía triploide (1:3, University of Delaware).',
      },
      daysToMaturity: { header: 'Días a cosecha', note: 'Del sobre. En blanco: los del cultivo.' },
      harvestDays: {
        header: 'Días de cosecha',
        note: 'Del primer al último corte. En blanco: los del cultivo; 0 si se corta una vez.',
      },
      yieldPer100: {
        header: 'Rendimiento por 100',
        note: 'lb comerciales por 100 ft de surco, o kg por 100 m. En blanco: el extremo bajo del rango publicado.',
      },
      price: {
        header: 'Precio',
        note: 'Dinero por lb o kg, 0 o más. Presupuesto lo toma donde Precios no tiene precio del cultivo.',
      },
      startsOn: {
        header: 'Sembrar o trasplantar el',
        note: 'Un día suyo, para una siembra o trasplante posterior. En blanco: la primera fecha, de Temporada.',
      },
      lastCucurbits: {
        header: 'Últimas cucurbitáceas',
        note: 'Año en que hubo aquí por última vez cucurbitáceas, como 2024: Notas cuenta las temporadas completas entre medio. En blanco: no se sabe, y no se dice nada.',
      },
      takenAs: {
        header: 'Tomado como',
        note: 'El cultivo de la hoja Cultivos, por su nombre allí, cuyas cifras valen por los blancos. #N/A: el nombre no se conoce.',
      },
      plants: {
        header: 'Plantas',
        note: 'Plantas que caben. CUCURBIT.PLANTS.INROWS, INHILLS o INBEDS, según la disposición.',
      },
      seedToSow: {
        header: 'Semilla que sembrar',
        note: 'Semillas para tantas plantas con la seguridad de Temporada. Surcos y camas: CUCURBIT.SEED.NEEDED. Golpes: golpes x CUCURBIT.SEED.PERHILL. Almácigo: CUCURBIT.TRAY.CELLS x semillas por celda.',
      },
      seedWeight: {
        header: 'Peso de semilla',
        note: 'Semilla que sembrar entre las semillas por oz o g del cultivo, como CUCURBIT.SEED.WEIGHT. Los lotes varían: pese 100 de las suyas.',
      },
      startTransplants: {
        header: 'Sembrar almácigo',
        note: 'Sembrar bajo techo. CUCURBIT.DATE.STARTTRANSPLANTS',
      },
      setOutOrSow: {
        header: 'Trasplante o siembra',
        note: 'Su día en Sembrar o trasplantar el; si no, la primera fecha, de Temporada. El suelo cálido va primero.',
      },
      soilAtLeast: {
        header: 'Suelo mínimo',
        note: 'Temperatura del suelo a la profundidad de siembra que hay que esperar.',
      },
      coverOff: {
        header: 'Quitar cubierta',
        note: 'Fuera la cubierta antes de que abran las flores femeninas, antes temprano que tarde. Guíese por las primeras flores femeninas, no por la fecha. CUCURBIT.DATE.COVEROFF',
      },
      firstPick: { header: 'Primer corte', note: 'CUCURBIT.DATE.FIRSTPICK' },
      lastPick: {
        header: 'Último corte',
        note: 'El fin de los días de cosecha o la víspera de la helada. Cómo guardar el fruto y cuánto dura: Cultivos. CUCURBIT.DATE.LASTPICK',
      },
      lastSowing: {
        header: 'Última siembra',
        note: 'Última fecha para semilla al aire libre, contada hacia atrás desde la helada de otoño. CUCURBIT.DATE.LASTSOWING',
      },
      daysToSpare: {
        header: 'Días de sobra',
        note: 'Entre el fin de los días de cosecha y la helada de otoño. Negativo: no alcanza. CUCURBIT.SEASON.SPARE',
      },
      femaleShare: {
        header: 'Fracción femenina',
        note: 'Fracción de flores femeninas, si todas las plantas florecen igual. CUCURBIT.FLOWER.FEMALESHARE',
      },
      pollenizers: {
        header: 'Polinizadoras',
        note: 'De las plantas, cuántas deben ser polinizadoras. CUCURBIT.FLOWER.POLLENIZERS',
      },
      area: { header: 'Superficie', note: 'Largo x ancho. ft² o m².' },
      rows: {
        header: 'Surcos',
        note: 'Surcos plantados; con golpes los surcos de golpes; con camas los de todas las camas.',
      },
      rowLength: {
        header: 'Largo de surco',
        note: 'Surco plantado en total: plantas x distancia entre plantas, o golpes x distancia entre golpes. ft o m.',
      },
      keepApart: {
        header: 'Separar',
        note: 'Del cultivo y tipo de flor de todas las parcelas: libre, o qué hace el polen y qué hacer. CUCURBIT.FLOWER.ISOLATE',
      },
      yield: {
        header: 'Rendimiento',
        note: 'Comercial. lb o kg. De todo el surco: entre sandías sin semilla cuenta también las polinizadoras. CUCURBIT.HARVEST.YIELD',
      },
      posts: {
        header: 'Postes',
        note: 'Para un tutor en todos sus surcos, donde Precios tiene su cultivo con tutor y una distancia entre postes. CUCURBIT.SUPPLY.TRELLIS',
      },
      income: {
        header: 'Ingreso',
        note: 'Rendimiento x precio; 0 donde la helada llega antes del primer corte. Donde acorta la cosecha se cuenta entero: lo dice Notas.',
      },
      assumed: {
        header: 'Supuesto',
        note: 'Celdas en blanco: sus cifras son de la hoja Cultivos, o lo que aquí se dice.',
      },
      sameName: { header: 'Mismo nombre', note: 'repetido: otra parcela tiene este nombre.' },
      notes: { header: 'Notas', note: 'Qué revisar antes de plantar.' },
    },
    noFieldLoss: 'Sin pérdida en campo',
    remarks: {
      noCrop: 'Elija un cultivo.',
      cropUnknown: 'Cultivo no conocido: elija uno de la lista.',
      otherYear: '{date} no está en la temporada de {year}. Revise el año, aquí y en la hoja Temporada.',
      wholeShare: 'Aquí 1 es 100%. Como fracción escriba 0.85, en por ciento 85%.',
      sameName: 'Otra parcela tiene este nombre: dé a cada una el suyo.',
      layoutUnknown: 'Disposición no conocida: elija rows (surcos), hills (golpes) o beds (camas).',
      startUnknown: 'Inicio no conocido: elija seed (siembra directa) o transplant (trasplante).',
      misfit:
        'Un resultado de esta línea es un error: revise lo escrito en ella, luego Temporada y Cultivos.',
      startsEarly:
        'Empieza antes de la fecha de Temporada: helada y suelo frío son más probables. Cubra o espere.',
      shortSeason: 'Temporada demasiado corta: vea Días de sobra. Elija un tipo más precoz o almácigo.',
      sowsTooLate: 'Sembrado después de la última fecha: vea Última siembra.',
      belowStandard:
        'Germinación bajo la norma federal: esa semilla se vende marcada Below Standard. Pruébela.',
      pollenizerSeed:
        'Semilla que sembrar cuenta también las polinizadoras: para su parte pida semilla de una sandía con semilla.',
      pollenizerYield:
        'El rendimiento es de todo el surco: la parte de las polinizadoras son sandías con semilla.',
      wideYield:
        'Los rendimientos publicados difieren a más del triple y se usa el extremo bajo: ponga el suyo.',
      priceUnfit: 'Precio: dé 0 o más, solo con cifras, como 1.20.',
      priceElsewhere: 'Presupuesto toma el precio de Precios, no este.',
      noYield: 'Un rendimiento de 0 cuenta como ninguno. En blanco toma el publicado, si lo hay.',
      seasonsBetween: 'Temporadas completas sin cucurbitáceas (se aconsejan {low} a {high}): ',
      lastCucurbitsUnfit:
        'Últimas cucurbitáceas debe ser un año anterior a esta siembra, como 2024; déjelo en blanco si no se sabe.',
      storesLong: 'Se guarda meses: prevea el curado y un lugar seco, vea almacenamiento en Cultivos.',
      takenByFrost: 'La helada llega antes del primer corte: no se cuenta su rendimiento ni su ingreso.',
      cutShort: 'La helada acorta la cosecha: rendimiento e ingreso se cuentan enteros igual.',
      noFigure: 'Cultivo sin dato de {figure}: complete {header}.',
    },
  },
  crops: {
    sheet: 'Cultivos',
    title: 'Cultivos',
    lead: [
      'Estas cifras valen por los blancos de Parcelas, en las unidades de Temporada. Escriba la suya encima: los blancos siguen.',
      'Las fuentes difieren: los rangos y de dónde viene cada uno están en la hoja Rangos.',
    ],
    usual:
      'Cifras que se usan donde Parcelas está en blanco: el medio de cada rango; el extremo bajo en rendimiento y días de guarda',
    rangesSheet: 'Rangos',
    rangesLead: [
      'Lo que dicen las publicaciones, de bajo a alto, y dónde está.',
      '«Práctica común, sin fuente» y «criterio nuestro» son lo que dicen; «de memoria» pide verificarse.',
    ],
    names: 'Nombres que se entienden',
    range: '{low} a {high}',
    practice: 'Notas de cultivo: práctica común, sin fuente, donde no se nombra ninguna',
    practiceNotes: [
      ['Tipos de guía', '{viningRoom} ft (unos 2 m) de espacio por planta.'],
      ['Tipos arbustivos', '{bushRoom} ft (60 a 90 cm) de espacio por planta.'],
      ['Golpes', '{hillWidth} ft (60 cm) de ancho y {hillHeight} in (15 a 20 cm) de alto.'],
      ['Golpes de plántulas', '{hillTransplants} por golpe, a unas {hillTransplantGap} in (8 cm) entre sí.'],
      [
        'Siembra en macetas',
        '{seedsPerPot} semillas por maceta plantable, a {pottingDepth} in (2.5 cm) de hondo.',
      ],
      [
        'Edad de las plántulas',
        'Primera hoja verdadera a unas {firstTrueLeaf} semanas; unas {leavesAtSettingOut} hojas al trasplantar.',
      ],
      ['Semilla ginoica', 'Cerca de {gynoeciousPollenizers} de un lote es semilla monoica, a menudo teñida.'],
      [
        'Cubiertas',
        'Fuera cuando abren las primeras flores femeninas, para que entren las abejas (Cornell). Los pepinos partenocárpicos pueden seguir cubiertos.',
      ],
      [
        'Fruto deforme',
        'Pocas visitas de abejas (un buen pepino pide cerca de {visitsForFruit}: North Carolina State), sequía, o escarabajos en el fruto tierno.',
      ],
      [
        'Oídio y mildiu',
        'Tipos resistentes, espacio y aire entre plantas, agua al suelo y no sobre las hojas. Actúe según el consejo local.',
      ],
      [
        'Rotación',
        '{seasonsFree} temporadas completas sin cucurbitáceas (Carolina del Norte); nunca dos años seguidos (Cornell).',
      ],
      [
        'Curado',
        'Calabazas de invierno y de Halloween, no las de bellota: {curing} días a {curingWarmth} °F (27 a 29 °C), luego fresco (Alabama).',
      ],
      [
        'Almacenamiento',
        'Pepinos, calabazas de Halloween y de invierno: no bajo 50 °F (10 °C). Cifras arriba; por publicación en Rangos.',
      ],
    ],
    traits: {
      'row spacing': 'distancia entre surcos',
      'plant spacing': 'distancia entre plantas',
      'hill spacing': 'distancia entre golpes',
      'hill row spacing': 'entre surcos de golpes',
      'seeds per hill': 'semillas por golpe',
      'plants per hill': 'plantas por golpe',
      'sowing depth': 'profundidad de siembra',
      'seeds per weight': 'semillas por peso',
      'germination standard': 'norma de germinación',
      'days to maturity': 'días a cosecha',
      'days counted from': 'días contados desde',
      'harvest days': 'días de cosecha',
      'picking interval': 'intervalo de corte',
      'fall days': 'días de otoño',
      'frost margin': 'margen de helada',
      'flower to pick': 'de la flor al corte',
      'picking size': 'tamaño de corte',
      'size measured': 'tamaño medido',
      'transplant weeks': 'semanas de almácigo',
      'soil minimum': 'suelo mínimo',
      'soil optimum low': 'suelo óptimo bajo',
      'soil optimum high': 'suelo óptimo alto',
      'soil maximum': 'suelo máximo',
      'soil at planting': 'suelo al sembrar',
      'storage temperature': 'temperatura de guarda',
      'storage humidity': 'humedad de guarda',
      'storage days': 'días de guarda',
      'flower type': 'tipo de flor',
      species: 'especie',
      'yield per 100': 'rendimiento por 100',
    },
    values: {
      seed: 'la siembra',
      length: 'el largo',
      diameter: 'el diámetro',
      ripeness: 'por la madurez',
      monoecious: 'monoica',
      parthenocarpic: 'partenocárpica',
      andromonoecious: 'andromonoica',
      triploid: 'triploide',
      'Cucurbita pepo or C. maxima': 'Cucurbita pepo o C. maxima',
      'Cucurbita maxima, C. moschata or C. pepo': 'Cucurbita maxima, C. moschata o C. pepo',
      'Cucurbita pepo (small ornamental) or Lagenaria siceraria (hard-shell)':
        'Cucurbita pepo (pequeña, de adorno) o Lagenaria siceraria (de cáscara dura)',
    },
    noFigure: 'escriba la suya',
    columns: {
      crop: 'Cultivo',
      figure: 'Cifra',
      low: 'Bajo',
      high: 'Alto',
      unit: 'Unidad',
      source: 'Fuente',
      name: 'Nombre',
      of: 'De',
      note: 'Nota de cultivo',
      yieldHigh: 'rendimiento por 100, alto',
    },
  },
};
