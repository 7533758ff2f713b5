/** In Spanish: what the working of a calculation says. Long because it is one list of sentences. */
import type { remarks as englishRemarks, steps as englishSteps } from '../english/workings';
import type { WithOtherWords } from '../translated';
import { cautions } from './reference';

export const steps: WithOtherWords<typeof englishSteps> = {
  cropFigureLow: { name: 'extremo bajo del rango', formula: '{trait} de {crop}: {low} a {high}' },
  cropFigureMid: { name: 'medio del rango', formula: '(bajo + alto) ÷ 2, {trait} de {crop}' },
  cropFigureHigh: { name: 'extremo alto del rango', formula: '{trait} de {crop}: {low} a {high}' },
  figureInMetric: { name: 'en unidades métricas', formula: 'convertido de unidades de EE. UU.' },
  heatByMean: {
    name: 'calor del día',
    formula: '(máxima + mínima) ÷ 2, a lo sumo el techo, menos la base; no bajo 0',
  },
  heatByModified: {
    name: 'calor del día',
    formula: 'máxima y mínima llevadas cada una entre base y techo, su media menos la base',
  },
  heatBySine: {
    name: 'calor del día',
    formula: 'área entre base y techo bajo un seno que pasa por mínima y máxima',
  },
  heatByReduced: {
    name: 'calor del día',
    formula: 'máxima menos la base; una máxima sobre el techo cuenta otro tanto por debajo de él; no bajo 0',
  },
  heatSum: { name: 'calor de todos los días', formula: 'suma del calor de {days} días' },
  heatReached: { name: 'calor de ese día', formula: 'suma desde el comienzo, con su propio calor' },
  heatDate: { name: 'fecha', formula: 'primer día en que la suma llega al calor buscado o lo pasa' },
  heatYears: {
    name: 'años con todos esos días',
    formula: 'en cada uno, la suma del calor de {days} días desde el comienzo',
  },
  heatDates: {
    name: 'años que llegan al calor buscado',
    formula: 'en cada uno, el primer día en que la suma llega al calor buscado o lo pasa',
  },
  heatSowing: {
    name: 'siguiente siembra',
    formula: 'primera mañana que tiene detrás el calor entre siembras',
  },
  lastFrosts: {
    name: 'primaveras con última helada',
    formula: 'última mínima igual o menor que el umbral',
  },
  firstFrosts: { name: 'otoños con primera helada', formula: 'primera mínima igual o menor que el umbral' },
  frostShare: {
    name: 'fracción de temporadas con helada',
    formula: 'heladas contadas ÷ temporadas contadas',
  },
  springQuantile: {
    name: 'cuantil de las últimas heladas',
    formula: '1 − riesgo ÷ fracción de temporadas con helada',
  },
  fallQuantile: {
    name: 'cuantil de las primeras heladas',
    formula: 'riesgo ÷ fracción de temporadas con helada',
  },
  frostQuantile: {
    name: 'días desde el día en que se empieza a contar',
    formula:
      'la más temprana de las dos heladas junto al cuantil + parte del camino a la más tardía × días entre ellas − día en que se empieza a contar',
  },
  frostDate: { name: 'fecha', formula: 'día en que se empieza a contar + días' },
  chanceAfter: {
    name: 'probabilidad de helada después',
    formula: 'últimas heladas después de la fecha ÷ temporadas',
  },
  chanceBefore: {
    name: 'probabilidad de helada antes',
    formula: 'primeras heladas antes de la fecha ÷ temporadas',
  },
  emergenceRate: {
    name: 'parte del camino en un día',
    formula: '1 ÷ días de la tabla, en línea recta entre sus temperaturas',
  },
  daysToEmergence: { name: 'días a emergencia', formula: '1 ÷ parte del camino en un día' },
  normalSeedlings: {
    name: 'fracción de plántulas normales',
    formula: 'fracciones de la tabla, en línea recta entre sus temperaturas',
  },
  cropText: { name: 'de la referencia', formula: '{trait} de {crop}' },
  seedKind: { name: 'clase de semilla en el reglamento', formula: 'clase de {crop}' },
  seedStandard: { name: 'germinación mínima', formula: 'norma federal para semilla de {kind}' },
  crossing: {
    name: 'veredicto',
    formula:
      'las plantas de una especie se cruzan; las de especies distintas no, y las calabazas entre sí rara vez',
  },
  malesPerFemale: {
    name: 'flores masculinas por cada femenina',
    formula: '(1 − fracción de flores femeninas) ÷ fracción de flores femeninas',
  },
  chanceOfNoPollenizer: {
    name: 'probabilidad de que no haya planta polinizadora',
    formula: '(1 − fracción) elevado al número de plantas',
  },
  groupWithPollenizer: {
    name: 'plantas del grupo',
    formula: 'el menor número de plantas de las que una es polinizadora con la probabilidad pedida',
  },
  hivesNeeded: {
    name: 'colmenas',
    formula:
      'superficie ÷ superficie de un acre o de una hectárea × colmenas en ella, redondeado hacia arriba',
  },
  femaleShare: {
    name: 'fracción de flores femeninas',
    formula:
      'fracción de polinizadoras × fracción femenina de las monoicas + (1 − fracción de polinizadoras) × fracción femenina de las ginoicas',
  },
  ratioAsShare: {
    name: 'fracción de todas las plantas',
    formula: 'polinizadoras ÷ (polinizadoras + demás)',
  },
  pollenizersOfTotal: {
    name: 'polinizadoras, del total de plantas',
    formula: 'plantas × fracción ÷ (fracción + (1 − pérdidas) × (1 − fracción)), redondeado hacia arriba',
  },
  pollenizersBetween: {
    name: 'polinizadoras, puestas entre las demás',
    formula: 'plantas × fracción ÷ (1 − fracción) ÷ (1 − pérdidas), redondeado hacia arriba',
  },
  cucumbersWithPollen: { name: 'otros pepinos con polen', formula: 'contados en la hoja' },
  seededWatermelons: { name: 'sandías con semilla', formula: 'contadas en la hoja' },
  isolationVerdict: {
    name: 'veredicto',
    formula: 'el pepino partenocárpico no quiere polen, la sandía triploide lo necesita',
  },
  areaPerPlant: {
    name: 'superficie por planta',
    formula: 'distancia entre surcos × distancia entre plantas ÷ {spacingPerLength}',
  },
  rowsInset: { name: 'surcos que caben', formula: 'ancho ÷ distancia entre surcos' },
  rowsOnEdge: {
    name: 'surcos que caben, el primero en el borde',
    formula: 'ancho ÷ distancia entre surcos, y uno más',
  },
  plantsInRowInset: {
    name: 'plantas en un surco',
    formula: 'largo × {spacingPerLength} ÷ distancia entre plantas',
  },
  plantsInRowOnEdge: {
    name: 'plantas en un surco, la primera en el borde',
    formula: 'largo × {spacingPerLength} ÷ distancia entre plantas, y una más',
  },
  plantsInRows: { name: 'plantas en la parcela', formula: 'surcos × plantas en un surco' },
  rowsOfHills: { name: 'surcos de golpes', formula: 'ancho ÷ distancia entre surcos' },
  hillsInRow: { name: 'golpes en un surco', formula: 'largo ÷ distancia entre golpes' },
  hillsSquare: { name: 'golpes en la parcela', formula: 'surcos × golpes en un surco' },
  staggeredPitch: {
    name: 'distancia entre surcos al tresbolillo',
    formula: 'distancia entre golpes × raíz de 3 ÷ 2, para que los vecinos queden a igual distancia',
  },
  rowsStaggered: {
    name: 'surcos al tresbolillo',
    formula: '(ancho − distancia entre golpes) ÷ distancia entre surcos, y uno más',
  },
  hillsInEvenRow: {
    name: 'golpes en un surco desplazado',
    formula: 'largo ÷ distancia entre golpes − un medio',
  },
  hillsStaggered: {
    name: 'golpes en la parcela',
    formula: 'surcos completos × golpes en un surco + surcos desplazados × golpes en un surco desplazado',
  },
  plantsInHills: { name: 'plantas en la parcela', formula: 'golpes × plantas por golpe' },
  bedsInWidth: {
    name: 'camas que caben',
    formula: '(ancho + ancho del pasillo) ÷ (ancho de la cama + ancho del pasillo)',
  },
  plantsInBeds: {
    name: 'plantas en la parcela',
    formula: 'camas × surcos por cama × plantas en un surco',
  },
  standChance: {
    name: 'fracción de semillas que se establecen',
    formula: 'germinación × emergencia en campo',
  },
  seedsOnAverage: {
    name: 'semillas que sembrar, en promedio',
    formula: 'plantas ÷ fracción de semillas que se establecen',
  },
  seedsForAssurance: {
    name: 'semillas que sembrar para esa seguridad',
    formula:
      'el menor número de semillas de las que se establecen tantas plantas con la probabilidad pedida (binomial)',
  },
  seedsForAssuranceTested: {
    name: 'semillas que sembrar para esa seguridad, con la duda de la prueba',
    formula:
      'el menor número de semillas de las que se establecen tantas plantas con la probabilidad pedida, cuando la germinación solo se conoce por una prueba de tantas semillas (beta-binomial)',
  },
  seedsPerHill: {
    name: 'semillas por golpe',
    formula: 'el menor número de semillas que llena un golpe con la probabilidad pedida (binomial)',
  },
  chanceOfStand: {
    name: 'probabilidad de que se establezcan',
    formula: 'la probabilidad de que al menos tantas semillas se establezcan (binomial)',
  },
  testedShare: {
    name: 'germinación en la prueba',
    formula: 'semillas que germinaron ÷ semillas probadas',
  },
  testedLow: {
    name: 'extremo bajo',
    formula: 'la germinación más baja con la que tantas o más no son demasiado improbables (Clopper-Pearson)',
  },
  testedHigh: {
    name: 'extremo alto',
    formula:
      'la germinación más alta con la que tantas o menos no son demasiado improbables (Clopper-Pearson)',
  },
  meanInPercent: {
    name: 'media en por ciento entero',
    formula: 'germinación media × 100, redondeada, el medio hacia arriba',
  },
  replicateTolerance: {
    name: 'rango más ancho antes de repetir la prueba',
    formula: 'tabla federal para {replicates} repeticiones a {meanInPercent} %',
  },
  packsOfSize: {
    name: 'costo de un tamaño',
    formula: 'sobres de {pack_size} semillas × precio de un sobre',
  },
  cheapestPacks: {
    name: 'costo del pedido',
    formula:
      'los sobres más baratos que contienen las semillas; entre iguales, menos semillas de más, luego menos sobres',
  },
  seedLife: {
    name: 'años que dura la semilla',
    formula: 'de semilla de {kind} bien guardada, de {low} a {high} según la fuente: el menor',
  },
  seedLifeLeft: {
    name: 'años que quedan',
    formula: 'años que dura la semilla − (año − año de envasado), no bajo 0',
  },
  seedWeight: { name: 'peso de la semilla', formula: 'semillas ÷ semillas por unidad de peso' },
  cellSprouts: {
    name: 'fracción de celdas con un brote',
    formula: '1 − (1 − germinación) elevado a las semillas por celda',
  },
  cellStands: {
    name: 'fracción de celdas con una planta para trasplantar',
    formula: 'fracción de celdas con un brote × (1 − fracción de descarte)',
  },
  cellsOnAverage: {
    name: 'celdas que sembrar, en promedio',
    formula: 'plantas ÷ fracción de celdas con una planta para trasplantar',
  },
  cellsForAssurance: {
    name: 'celdas que sembrar para esa seguridad',
    formula:
      'el menor número de celdas de las que tantas tienen una planta con la probabilidad pedida (binomial)',
  },
  plantsInArea: { name: 'plantas como máximo', formula: 'superficie ÷ superficie por planta' },
  plantsForYield: { name: 'plantas', formula: 'rendimiento deseado ÷ rendimiento por planta' },
  areaForPlants: { name: 'superficie', formula: 'plantas × superficie por planta' },
  areaFrom: { name: 'superficie', formula: '{value} × superficie de un {unit}' },
  rowForPlants: {
    name: 'largo de surco',
    formula: 'plantas × distancia entre plantas ÷ {spacingPerLength}',
  },
  rowInArea: { name: 'largo de surco', formula: 'superficie ÷ distancia entre surcos' },
  wantedInSeason: {
    name: 'demanda de la temporada',
    formula: 'demanda de una semana × semanas de corte',
  },
  rowForDemand: {
    name: 'largo de surco',
    formula:
      'demanda de la temporada ÷ rendimiento de {rowLengthOfYield} de surco en la temporada × {rowLengthOfYield}',
  },
  plantsMeant: {
    name: 'plantas previstas',
    formula: 'largo de surco × {spacingPerLength} ÷ distancia entre plantas',
  },
  standingShare: { name: 'fracción establecida', formula: 'plantas en pie ÷ plantas previstas' },
  replantVerdict: {
    name: 'veredicto',
    formula:
      'conserve lo que llegue a la fracción que vale la pena; si no, llene huecos hasta la última fecha de siembra',
  },
  traysNeeded: { name: 'bandejas', formula: 'celdas ÷ celdas por bandeja' },
  mixForCells: { name: 'sustrato', formula: 'celdas × volumen de celda ÷ {cellVolumePerMixVolume}' },
  sowings: {
    name: 'número de siembras',
    formula: '(última fecha − primera fecha) ÷ días entre ellas, y una más',
  },
  lastOfSuccession: {
    name: 'última de las siembras',
    formula: 'primera fecha + (número de siembras − 1) × días entre ellas',
  },
  answerOff: { name: 'diferencia', formula: 'respuesta − respuesta correcta' },
  plantsPerLand: {
    name: 'plantas por acre o por hectárea',
    formula: 'superficie de un acre o de una hectárea ÷ superficie por planta',
  },
  setOut: { name: 'trasplante', formula: 'última helada + días después' },
  firstSowing: { name: 'primera siembra', formula: 'última helada + días después' },
  transplantStart: { name: 'siembra del almácigo', formula: 'trasplante − semanas × {daysPerWeek}' },
  hardeningStart: { name: 'comienzo del endurecimiento', formula: 'trasplante − días de endurecimiento' },
  daysBeforeFrost: {
    name: 'días que se cuentan hacia atrás desde la primera helada',
    formula: 'días a cosecha + días de cosecha + días de otoño + margen de helada',
  },
  lastSowing: { name: 'última siembra', formula: 'primera helada − días hacia atrás' },
  daysFromSettingOut: {
    name: 'días del trasplante al primer corte',
    formula: 'días a cosecha (contados desde la siembra) − ganancia del trasplante',
  },
  daysFromSowing: {
    name: 'días de la siembra al primer corte',
    formula: 'días a cosecha (contados desde el trasplante) + ganancia del trasplante',
  },
  firstPick: {
    name: 'primer corte',
    formula: 'siembra o trasplante + días al primer corte + días de otoño',
  },
  harvestEnd: { name: 'fin de la cosecha', formula: 'primer corte + días de cosecha' },
  lastPick: {
    name: 'último corte',
    formula: 'fin de la cosecha, o la víspera de la primera helada si llega antes',
  },
  coverOff: { name: 'quitar la cubierta', formula: 'primer corte − días de la flor al corte' },
  seasonDays: { name: 'días de la temporada', formula: 'primera helada − última helada' },
  seasonSpare: { name: 'días de sobra', formula: 'días de la temporada − días necesarios' },
  rowYield: {
    name: 'rendimiento del surco',
    formula:
      'largo de surco ÷ {rowLengthOfYield} × rendimiento de {rowLengthOfYield} de surco × fracción comercial',
  },
  hillAsMound: {
    name: 'tierra de un montículo',
    formula: 'casquete de esfera: π × altura × (3 × radio² + altura²) ÷ 6',
  },
  hillAsDisc: { name: 'tierra de un montículo', formula: 'π × radio² × altura' },
  hillSoil: {
    name: 'tierra de todos los montículos',
    formula: 'número de montículos × tierra de uno ÷ {cellVolumePerMixVolume}',
  },
  nutrientForArea: {
    name: 'nutriente para el campo',
    formula: 'superficie ÷ superficie de un acre o de una hectárea × dosis',
  },
  fertilizerForArea: { name: 'fertilizante', formula: 'nutriente para el campo ÷ riqueza' },
  waterForDepth: {
    name: 'agua',
    formula: 'superficie × lámina × agua de una unidad de lámina sobre una unidad de superficie',
  },
  waterUsed: {
    name: 'agua que usa el cultivo',
    formula: 'evapotranspiración de referencia × coeficiente de cultivo × días',
  },
  waterNeed: { name: 'agua que dar', formula: 'agua que usa el cultivo − lluvia, no bajo 0' },
  waterOnBed: {
    name: 'agua sobre la cama a lo largo de la cinta',
    formula:
      'lámina × ancho mojado ÷ {spacingPerLength} × {dripFlowLength} × agua de una unidad de lámina sobre una unidad de superficie',
  },
  dripRunTime: { name: 'horas de riego', formula: 'agua ÷ (caudal × líneas de cinta)' },
  coverLength: {
    name: 'cubierta',
    formula: 'surcos × (largo de surco + 2 × largo enterrado en un extremo)',
  },
  postsInRow: {
    name: 'postes en un surco',
    formula: 'largo de surco ÷ distancia entre postes, y uno más',
  },
  trellisPosts: { name: 'postes', formula: 'surcos × postes en un surco' },
  picksInHarvest: {
    name: 'cortes',
    formula: '(último corte − primer corte) ÷ días entre ellos, y uno más',
  },
  harvestForecast: {
    name: 'cosecha en las plantas',
    formula: 'frutos por planta × plantas × peso de un fruto',
  },
  bushelWeight: { name: 'peso de un bushel', formula: 'de {crop}' },
  otherBushelWeight: { name: 'peso de un bushel en otra fuente', formula: 'de {crop}, según otra fuente' },
  bushelsOf: { name: 'bushels', formula: 'peso de la fruta ÷ peso de un bushel' },
  pickingSizeLow: { name: 'el menor que se corta', formula: '{measured} de {crop}' },
  pickingSizeHigh: { name: 'el mayor que se corta', formula: '{measured} de {crop}' },
  sizeVerdict: {
    name: 'veredicto',
    formula: 'listo del menor al mayor, ambos incluidos',
  },
  usualPerJar: {
    name: 'pepinos por frasco',
    formula: 'peso de una carga de la olla de conservas ÷ sus frascos',
  },
  mostPerJar: {
    name: 'pepinos por frasco, como máximo',
    formula: 'peso de un bushel ÷ el menor número de frascos que da',
  },
  usualJars: { name: 'frascos', formula: 'peso de la fruta ÷ pepinos por frasco' },
  fewestJars: {
    name: 'como mínimo',
    formula: 'peso de la fruta ÷ pepinos por frasco, como máximo',
  },
  usualPounds: { name: 'pepinos', formula: 'frascos × pepinos por frasco' },
  mostPounds: { name: 'hasta', formula: 'frascos × pepinos por frasco, como máximo' },
  budgetReturn: { name: 'retorno sobre los costos', formula: 'ingreso − costos' },
  breakEvenPrice: { name: 'precio que paga el costo', formula: 'costo total ÷ rendimiento' },
  leftOfPrice: { name: 'lo que queda del precio', formula: 'precio − costo de cosecha de una unidad' },
  breakEvenYield: {
    name: 'rendimiento que paga los costos',
    formula: 'costo no ligado al rendimiento ÷ lo que queda del precio',
  },
  returnAtYieldAndPrice: {
    name: 'retorno con el primer rendimiento y el primer precio',
    formula: 'rendimiento × (precio − costo de cosecha de una unidad) − costo no ligado al rendimiento',
  },
  pickingHours: { name: 'horas', formula: 'largo de surco × cortes ÷ surco cortado en una hora' },
  wiltProne: { name: 'propenso a la marchitez bacteriana', formula: 'de {crop}' },
  beetleThreshold: {
    name: 'umbral',
    formula: '1 escarabajo por planta donde traen marchitez bacteriana, 5 donde no',
  },
  beetlesPerPlant: { name: 'escarabajos por planta', formula: 'escarabajos ÷ plantas revisadas' },
  beetleVerdict: {
    name: 'umbral alcanzado',
    formula: 'escarabajos por planta iguales o mayores que el umbral',
  },
  seasonsFree: {
    name: 'temporadas completas libres',
    formula: 'año − último año de cucurbitáceas − 1',
  },
  pickAfterSpray: {
    name: 'primer corte permitido',
    formula: 'día de la aplicación + días de la etiqueta',
  },
  manureWait: {
    name: 'días de espera',
    formula: 'los días de la regla para fruto que toca el suelo, o para el que no lo toca',
  },
  harvestAfterManure: {
    name: 'primera cosecha permitida',
    formula: 'día de incorporación del estiércol + días de espera',
  },
};

export const remarks: WithOtherWords<typeof englishRemarks> = {
  fewSeasons:
    'Menos de 20 temporadas con helada: un año más puede mover esta fecha una semana. Dé un registro más largo donde lo haya.',
  fewNormalSeedlings:
    'A esta temperatura del suelo menos de tres de cada cuatro semillas dan plántulas normales: espere un suelo más cálido.',
  noFieldLossAssumed:
    'Sin pérdida en campo: se toma que toda semilla que germina en la prueba se establece. El suelo frío, mojado o encostrado se lleva algunas: dé una emergencia en campo.',
  lotsDiffer:
    'Los lotes de un cultivo difieren: nueve líneas de pepino tenían de 904 a 1,291 semillas por onza. Guíese por el sobre o pese 100 semillas.',
  testIsOneSample:
    'Los dos extremos cuentan con el azar de qué semillas se probaron, nada más: el campo tiene sus propias pérdidas. Diez semillas no distinguen un lote malo de uno bueno; lo usual son 400.',
  testStoredSeed:
    'La duración no es una promesa: pruebe unas semillas antes de usarlas. La germinación y el vigor de la semilla de pepino bajan pasado un año, aun fría y seca.',
  seedOutlived:
    'Esta semilla ha pasado su duración usual: pruebe unas semillas antes de usarlas o compre semilla nueva.',
  hivesByFlowers:
    'Para pepino se publica una colmena por acre. Los pepinos partenocárpicos no quieren ninguna: dé 0. La sandía triploide necesita cerca del doble de visitas: dé el doble.',
  smallFieldsHaveBees:
    'Un campo de menos de 3 acres junto a monte puede tener abejas silvestres suficientes. Meta las colmenas 3 a 4 días después de abrir las primeras flores y no aplique insecticidas sobre las flores.',
  averageFallsShort:
    'Es un promedio: casi la mitad de estas siembras puede quedar corta. Dé una seguridad como 0.95 para una población de plantas segura.',
  belowStandardMayBeSold:
    'La semilla por debajo de la norma se puede vender, marcada "Below Standard" con su germinación: pruébela y siembre más densa.',
  femalesIfAllFlowerEqually: 'Vale si todas las plantas dan el mismo número de flores.',
  monoeciousFemaleVaries:
    'Cerca de la mitad es práctica común, sin fuente; de los tipos viejos se dice que dan 10 a 25 masculinas por femenina (de memoria, por verificar). Cuente las suyas.',
  lossesFallOnPollenizers: 'Se toma que las pérdidas caen solo sobre las plantas polinizadoras.',
  betweenDisplacesNone:
    'Las polinizadoras puestas entre las plantas no quitan el lugar a ninguna sin semilla; se suman a ellas.',
  neighborsUnknown: 'Lo que cultivan los vecinos no está en la hoja.',
  waitBelongsToMean:
    'La espera acostumbrada corresponde a la fecha media (50 %) de la última helada. Tras una fecha de menor riesgo espere menos. Está publicada para sandía; para otras cucurbitáceas es práctica común.',
  beforeLastFrost: 'Este día es anterior a la última helada: solo bajo cubierta que proteja de ella.',
  soilDecides:
    'Decide el suelo, no la fecha: guíese por un termómetro y la temperatura de siembra del cultivo (hoja Cultivos).',
  transplantWeeksDiffer:
    'Lo común son 3 a 4 semanas, y los cultivos difieren: la sandía triploide tarda más. Las plántulas pasadas rinden menos que las jóvenes.',
  hardenNotCold: 'Endurezca las cucurbitáceas en lugar abrigado, no por debajo de unos 60 °F (16 °C).',
  harvestIsForManyPicks:
    'La cosecha supuesta es para cultivos que se cortan una y otra vez. Dé 0 días de cosecha para los que se cortan una vez.',
  frostEndsHarvest: 'La helada termina esta cosecha antes de tiempo.',
  noFrostGiven: 'No se dio primera helada, así que no se buscó ninguna.',
  goByFlowers:
    'Guíese por las primeras flores femeninas abiertas, no por esta fecha: las abejas deben llegar a ellas. Antes temprano que tarde.',
  seasonTooShort: 'La temporada es demasiado corta: elija un tipo más precoz o empiece con almácigo.',
  edgesLoseSome: 'Lo más que puede haber: los bordes y rincones de una forma irregular pierden algunas.',
  edgesTakeMore: 'Lo menos que debe haber: los bordes y rincones de una forma irregular piden más.',
  lossesComeOnTop:
    'Son plantas que llegan a dar fruto. Agregue las que se perderán por el tiempo, escarabajos, marchitez y mildiu.',
  picksAreUneven:
    'El rendimiento es de toda la temporada de corte, tomado parejo en sus semanas. Las primeras y últimas dan menos y las del medio más: varias siembras lo emparejan.',
  countInSeveralPlaces:
    'Cuente en varios lugares del campo, con todo y huecos: un buen tramo dice poco del resto.',
  whyPlantsAreMissing:
    'Vea primero por qué faltan plantas: lo que se las llevó (suelo frío o encostrado, pudrición, insectos, ratones) se llevará las siguientes. Pocos huecos largos pesan más que muchos cortos.',
  mixSettles: 'El sustrato se asienta al apretarlo y regarlo: tenga algo de más.',
  sowingsDrawTogether:
    'Siembras a intervalos parejos no dan cortes parejos: en primavera las tardías alcanzan a las otras, en otoño se retrasan.',
  yieldIsMarketable:
    'Los rendimientos que publican los servicios de extensión ya son comerciales. Dé una fracción solo para un rendimiento que cuenta todo lo cortado.',
  soilDrawnUp: 'Tierra que se junta alrededor de los montículos tal como está: no se compra, y se asienta.',
  gradeAsOnTheBag:
    'Los tres números del saco son por ciento de N, de P2O5 y de K2O. Dosis y riqueza deben ser del mismo.',
  soilTestFirst:
    'Analice primero el suelo y reste lo que dejan el estiércol y las leguminosas. En arena dé el nitrógeno en dos partes, la segunda cuando corren las guías.',
  waterLostComesOnTop: 'Lo que escurre, se lleva el viento o se fuga viene aparte.',
  coefficientsByStage:
    'Coeficientes del estudio 56 de la FAO (1998) para cucurbitáceas: 0.4 a 0.6 al principio, 0.85 a 1.05 a media temporada (pepino, calabaza de Halloween y sandía 1.00, calabacín 0.95), 0.6 a 0.9 al final. La revisión de 2025 da al calabacín 1.00 y a la de Halloween 0.95.',
  plasticShedsRain: 'Bajo acolchado plástico la lluvia no cuenta: no la ponga y dé toda el agua por goteo.',
  splitTheRun:
    'Más de 6 horas seguidas mandan el agua por debajo de las raíces: reparta el riego en varios días.',
  coverWidthApart:
    'Este es el largo. El ancho debe abarcar la cama, los arcos y los dos bordes enterrados; pida algo de más para las uniones.',
  leftFruitStopsSet:
    'Corte cada vez todo lo que tenga tamaño: el fruto que se deja crecer detiene el cuajado de otros.',
  countedFruitOnly:
    'Lo que cuelga ahora: lo que cuaje después se suma, y algo de esto caerá o se descartará. Cuente plantas en varios lugares.',
  bushelsDiffer:
    'Un bushel es un volumen, y los pesos legales son viejos y difieren por estado: pregunte a su comprador cuánto pesa un bushel o una caja. Texas cuenta el calabacín en bushels de 25 lb, que Michigan llama lug.',
  sizeIsNotRipeness:
    'El tamaño no es la madurez: corte cuando la cáscara tenga todo su color y la uña no la raye.',
  cucumbersByThickness:
    'Por grosor: Carolina del Norte corta el pepino de rebanar por debajo de 2 in (5 cm) de grueso, y el de encurtir entre ½ in (1.3 cm) y 2 in.',
  cucumbersOnly:
    'Solo para pepinos: la guía tiene otros pesos para otros productos, y no se halló ninguno para calabacín ni melones.',
  canning: cautions.canning,
  noIncome: 'No se puso ingreso: esto es lo que se pierde si no se vende nada.',
  aboveTheseCosts:
    'Lo que queda sobre los costos puestos, nada más: sus propias horas, tierra y maquinaria cuentan solo si están entre ellos.',
  whatIsSoldPays: 'Solo paga lo que se vende: no cuente el descarte ni lo que se queda en el campo.',
  harvestCostLeftOut:
    'No se dio costo de cosecha de una unidad. Cortar, empacar y vender varían casi siempre con el rendimiento: póngalos aquí y no entre los demás costos.',
  otherCellsLikewise:
    'Las demás celdas igual, cada una con el rendimiento de su fila y el precio de su columna.',
  timeYourOwnPicking:
    'Mida una hora de su propio corte: los primeros y los últimos van más rápido que los del apogeo. Caminar, lavar, clasificar y empacar vienen aparte.',
  pesticides: cautions.pesticides,
  squashDiffer:
    'Las calabazas difieren por tipo y por fuente: Purdue dice que la mayoría no es propensa a la marchitez y actúa con 5, Ontario actúa con 1. Diga que su tipo no es propenso donde lo sepa.',
  beetlesMatterEarly:
    'Los escarabajos importan sobre todo desde los cotiledones hasta unas 5 hojas (hasta 3, Wisconsin). Revise temprano en el día, plantas de todo el campo, también de sus bordes.',
  restsAdvised:
    'Descansos que se aconsejan: 2 años para pepino de rebanar y calabaza de Halloween, 3 para calabaza (Carolina del Norte); nunca dos años seguidos (Cornell). Cuentan todas las cucurbitáceas, también las voluntarias.',
  countAsTheLabelDoes:
    'Tome los días de la etiqueta de lo aplicado, para su cultivo; de varias aplicaciones cuenta el día más tardío.',
  vinesLieOnSoil:
    'El fruto de guías en el suelo toca el suelo; el de un tutor quizá no, y la tierra salpicada cuenta.',
  manureRules:
    'Esta es la regla orgánica de Estados Unidos para estiércol crudo. Las reglas de inocuidad, su certificadora, su estado y su comprador pueden pedir más. La composta tiene reglas propias.',
};
