/**
 * Every sentence a person reads, in Spanish, by the keys of English. Words that a function takes or gives back stay as
 * they are, like its id, so that a workbook means the same in every language. Long because it is one list of sentences.
 */
import { calendar } from './spanish/calendar';
import { commands } from './spanish/commands';
import { grid } from './spanish/grid';
import { homework } from './spanish/homework';
import { plotPictures } from './spanish/plotPictures';
import { slips } from './spanish/slips';
import { money } from './spanish/money';
import { pane } from './spanish/pane';
import { pictures } from './spanish/pictures';
import { record } from './spanish/record';
import {
  beetles,
  budgets,
  cautions,
  citations,
  cropNotes,
  crossings,
  judgements,
  orders,
  ripeness,
  rotation,
  sizeVerdicts,
  standVerdicts,
  verdicts,
} from './spanish/reference';
import { seedOrder } from './spanish/seedOrder';
import { sheets } from './spanish/sheets';
import { weather } from './spanish/weather';
import type { Translated } from './translated';

export const spanish: Translated = {
  calendar,
  commands,
  grid,
  homework,
  plotPictures,
  slips,
  money,
  pane,
  pictures,
  record,
  seedOrder,
  sheets,
  weather,
  beetles,
  budgets,
  cautions,
  citations,
  cropNotes,
  crossings,
  judgements,
  orders,
  ripeness,
  rotation,
  sizeVerdicts,
  standVerdicts,
  verdicts,
  noYear: {
    season:
      'Este registro no contiene ninguna temporada de cultivo: dé uno que vaya de antes de una última helada a después de una primera.',
    start: 'Ningún año de este registro tiene ese día: dé un registro más largo.',
  },
  quantities: {
    homework_number: 'número de la tarea',
    homework_count: 'número de problemas',
    low: 'extremo bajo',
    high: 'extremo alto',
    figure: 'cifra',
    kind: 'clase de semilla',
    trait: 'nombre de la cifra',
    pollenizers: 'número de plantas polinizadoras',
    losses: 'fracción de pérdidas',
    set_out: 'día del trasplante',
    units: 'sistema de unidades',
    others: 'número de las demás plantas',
    plants: 'número de plantas',
    pollenizer_share: 'fracción de plantas polinizadoras',
    share: 'fracción de plantas polinizadoras',
    monoecious_female: 'fracción femenina de las plantas monoicas',
    gynoecious_female: 'fracción femenina de las plantas ginoicas',
    female_share: 'fracción de flores femeninas',
    area: 'superficie del campo',
    hives_per_acre: 'densidad de colmenas',
    crop_a: 'primer cultivo',
    crop_b: 'segundo cultivo',
    saving_seed: 'guardar semilla',
    flower_type: 'tipo de flor',
    all_crops: 'rango de todos los cultivos',
    all_flower_types: 'rango de todos los tipos de flor',
    screened: 'protección contra abejas',
    length: 'largo de la parcela',
    width: 'ancho de la parcela',
    edge: 'borde',
    hill_spacing: 'distancia entre golpes',
    plants_per_hill: 'número de plantas por golpe',
    pattern: 'disposición',
    bed_width: 'ancho de la cama',
    path_width: 'ancho del pasillo',
    rows_per_bed: 'número de surcos por cama',
    rows: 'número de surcos',
    plantsInRow: 'plantas en un surco',
    hills: 'número de golpes',
    hillsInRow: 'golpes en un surco',
    pitch: 'distancia entre surcos al tresbolillo',
    oddRows: 'surcos completos',
    evenRows: 'surcos desplazados',
    inEvenRow: 'golpes en un surco desplazado',
    beds: 'camas',
    germination: 'germinación',
    field_emergence: 'emergencia en campo',
    assurance: 'seguridad',
    tested: 'número de semillas probadas',
    standChance: 'fracción de semillas que se establecen',
    seeds: 'número de semillas',
    germinated: 'número de semillas que germinaron',
    mean: 'germinación media',
    replicates: 'número de repeticiones',
    pack_sizes: 'rango de tamaños de sobre',
    pack_prices: 'rango de precios de sobre',
    pack_size: 'tamaño de un sobre',
    pack_price: 'precio de un sobre',
    packs: 'sobres',
    seedsOver: 'semillas de más',
    seedLife: 'años que dura la semilla',
    year_packed: 'año de envasado',
    seeds_per_unit: 'número de semillas por unidad de peso',
    seeds_per_cell: 'número de semillas por celda',
    culls: 'fracción de descarte',
    cellSprouts: 'fracción de celdas con un brote',
    cellStands: 'fracción de celdas con una planta para trasplantar',
    row_spacing: 'distancia entre surcos',
    plant_spacing: 'distancia entre plantas',
    spacingPerLength: 'unidades de distancia en una unidad de largo',
    areaPerLand: 'superficie de un acre o de una hectárea',
    areaPerPlant: 'superficie por planta',
    days: 'número de días',
    weeks: 'número de semanas',
    daysPerWeek: 'días de una semana',
    days_after: 'número de días después de la última helada',
    days_to_maturity: 'número de días a cosecha',
    harvest_days: 'número de días de cosecha',
    fall_days: 'número de días de otoño',
    days_needed: 'número de días necesarios',
    start: 'día de siembra o de trasplante',
    flower_to_pick: 'número de días de la flor al corte',
    daysBeforeFrost: 'días antes de la primera helada',
    growingDays: 'días desde el comienzo hasta el primer corte',
    harvestEnd: 'fin de la cosecha',
    seasonDays: 'días de la temporada',
    yield_per_100: 'rendimiento por 100 de surco',
    rowLengthOfYield: 'largo de surco al que se refiere el rendimiento',
    marketable: 'fracción comercial',
    base: 'temperatura base',
    ceiling: 'temperatura techo',
    method: 'método',
    highs: 'rango de máximas',
    lows: 'rango de mínimas',
    dates: 'rango de fechas',
    target: 'calor buscado',
    heat: 'calor entre ellas',
    heat_between: 'calor de siembra a siembra',
    sowing: 'siembra anterior',
    threshold: 'umbral de helada',
    hemisphere: 'hemisferio',
    last_dates: 'rango de últimas heladas',
    first_dates: 'rango de primeras heladas',
    frost_dates: 'rango de fechas de helada',
    season: 'lado del año',
    risk: 'riesgo',
    rule: 'regla del cuantil',
    none: 'temporadas sin helada',
    void: 'temporadas con demasiados días sin dato',
    frosts: 'heladas contadas',
    seasons: 'temporadas contadas',
    frostShare: 'fracción de temporadas con helada',
    quantileAt: 'cuantil',
    countingStart: 'día desde el que se cuenta',
    soil_temperature: 'temperatura del suelo',
    coolerDays: 'días a la temperatura más fría de la tabla',
    warmerDays: 'días a la temperatura más cálida de la tabla',
    cooler: 'fracción a la temperatura más fría de la tabla',
    warmer: 'fracción a la temperatura más cálida de la tabla',
    part: 'parte del camino de la más fría a la más cálida',
    emergenceRate: 'parte del camino en un día',
    wanted_yield: 'rendimiento deseado',
    value: 'superficie en su propia unidad',
    areaOfUnit: 'superficie de una unidad',
    unit: 'unidad de superficie',
    wanted_per_week: 'demanda de una semana',
    picking_weeks: 'número de semanas de corte',
    plants_standing: 'número de plantas en pie',
    plantsMeant: 'número de plantas previstas',
    stand: 'fracción de plantas establecidas',
    today: 'fecha de hoy',
    last_planting: 'última fecha de siembra',
    least_stand: 'fracción que vale la pena conservar',
    cells: 'número de celdas',
    cells_per_tray: 'número de celdas por bandeja',
    cellVolumePerMixVolume: 'unidades de volumen de celda en una de sustrato',
    first: 'primera fecha',
    last: 'última fecha',
    every_days: 'número de días entre una y otra',
    correct: 'respuesta correcta',
    function_name: 'nombre de la función',
    diameter: 'diámetro de un montículo',
    height: 'altura de un montículo',
    shape: 'forma de un montículo',
    hillVolume: 'tierra de un montículo',
    rate: 'dosis',
    grade: 'riqueza del fertilizante',
    depth: 'lámina de agua',
    waterPerAreaAndDepth: 'agua de una unidad de lámina sobre una unidad de superficie',
    reference_et: 'evapotranspiración de referencia',
    crop_coefficient: 'coeficiente de cultivo',
    wetted_width: 'ancho mojado de la cama',
    flow: 'caudal de la cinta',
    lines: 'número de líneas de cinta',
    dripFlowLength: 'largo para el que se indica el caudal',
    end_tuck: 'largo enterrado en un extremo',
    fruit_per_plant: 'número de frutos por planta',
    fruit_weight: 'peso de un fruto',
    pounds: 'peso de la fruta',
    size: 'tamaño del fruto',
    use: 'uso',
    measured: 'medido por',
    jar: 'tamaño del frasco',
    jars: 'número de frascos',
    loadPounds: 'pepinos de una carga de la olla de conservas',
    loadJars: 'frascos de una carga de la olla de conservas',
    bushel: 'peso de un bushel',
    fewestJars: 'menor número de frascos',
    income: 'ingreso',
    costs: 'suma de los costos',
    total_cost: 'costo total',
    total_yield: 'rendimiento',
    costs_not_tied_to_yield: 'costo no ligado al rendimiento',
    price: 'precio',
    harvest_cost: 'costo de cosecha de una unidad',
    prices: 'rango de precios',
    yields: 'rango de rendimientos',
    picks: 'número de cortes',
    beetles: 'número de escarabajos',
    stage: 'etapa de las plantas',
    wilt_prone: 'riesgo de marchitez bacteriana',
    past_years: 'rango de años pasados',
    lastYear: 'último año de cucurbitáceas',
    spray_date: 'día de la aplicación',
    label_days: 'número de días de la etiqueta',
    manure_date: 'día de incorporación del estiércol',
    touches_soil: 'contacto del fruto con el suelo',
  },
  units: {
    ft: 'ft',
    in: 'in',
    sqFt: 'ft²',
    acre: 'acre',
    oz: 'oz',
    lb: 'lb',
    cuIn: 'in³',
    cuFt: 'ft³',
    gallon: 'gal',
    m: 'm',
    cm: 'cm',
    sqM: 'm²',
    hectare: 'ha',
    g: 'g',
    kg: 'kg',
    ml: 'ml',
    litre: 'L',
    mm: 'mm',
    perAcre: 'por acre',
    perHectare: 'por hectárea',
    seedsPerOz: 'semillas/oz',
    seedsPerG: 'semillas/g',
    lbPer100Ft: 'lb por 100 ft',
    kgPer100M: 'kg por 100 m',
    perLb: 'por lb',
    perKg: 'por kg',
    perFt: 'por ft',
    perM: 'por m',
    perCuFt: 'por ft³',
    perLitre: 'por L',
    perThousandGallons: 'por 1,000 gal',
    perCuM: 'por m³',
    inOfWater: 'in',
    beetlesPerPlant: 'por planta',
    lbPerAcre: 'lb por acre',
    kgPerHectare: 'kg por hectárea',
    gphPer100Ft: 'gal por hora y 100 ft',
    lphPerM: 'L por hora y m',
    F: '°F',
    C: '°C',
    degrees: 'grados',
    degreeDays: 'grados día',
    plants: 'plantas',
    seeds: 'semillas',
    hills: 'golpes',
    rows: 'surcos',
    beds: 'camas',
    cells: 'celdas',
    hives: 'colmenas',
    trays: 'bandejas',
    posts: 'postes',
    picks: 'cortes',
    bushels: 'bushels',
    jars: 'frascos',
    hours: 'horas',
    days: 'días',
    weeks: 'semanas',
    years: 'años',
    date: '',
    share: '',
    none: '',
  },
  unitsOfOne: {
    plants: 'planta',
    seeds: 'semilla',
    hills: 'golpe',
    rows: 'surco',
    beds: 'cama',
    cells: 'celda',
    hives: 'colmena',
    trays: 'bandeja',
    posts: 'poste',
    picks: 'corte',
    bushels: 'bushel',
    jars: 'frasco',
    hours: 'hora',
    days: 'día',
    weeks: 'semana',
    years: 'año',
    degrees: 'grado',
    degreeDays: 'grado día',
  },
  limits: {
    above: 'mayor que {limit}',
    atLeast: '{limit} o más',
    atMost: '{limit} o menos',
    below: 'menor que {limit}',
    and: ' y ',
  },
  rowOfRange: '{name}, fila {row}',
  errors: {
    outOfRange: 'Valor dado ({name}): {value}. Debe ser {limits}.',
    notWhole: 'Valor dado ({name}): {value}. Dé un número entero.',
    percentForShare:
      'Valor dado ({name}): {value}, que es {percent}%. Una fracción es a lo sumo 100%: escriba {value} por ciento como {value}% o {fraction}.',
    percentForShareNearOne:
      'Valor dado ({name}): {value}, que es {percent}%. Una fracción es a lo sumo 100%. Dé a lo sumo 100%.',
    missing: 'Falta un dato: {name}. Complételo.',
    notANumber:
      'Dato dado ({name}): "{given}", que no es un número. Escriba cifras con punto decimal y sin unidad.',
    currencySign:
      'Dato dado ({name}): "{given}". Quite el signo de moneda; escriba los millares sin marca (1000) y los decimales con punto (4.50).',
    commaInNumber:
      'Dato dado ({name}): "{given}", y la coma estorba. Escriba los millares sin marca (1000) y los decimales con punto (0.85).',
    notADate:
      'Dato dado ({name}): "{given}", que no es una fecha a partir de marzo de 1900. Escriba una fecha como 2026-05-02.',
    numberForDate:
      'Dato dado ({name}, fila {row}): {given}, que no es una fecha: es un número demasiado pequeño. Dé la columna con las fechas.',
    notText: 'No se puede leer el dato ({name}). Dé una sola celda con un número o una palabra.',
    notYesOrNo: 'Dato dado ({name}): "{given}". Responda yes o no (TRUE o FALSE).',
    oneCellWanted: 'El dato ({name}) es un rango de varias celdas. Dé una sola celda.',
    errorInside: 'El dato ({name}) es a su vez un error ({error}). Corrija primero esa celda.',
    notAChoice: 'Dato dado ({name}): "{given}". Elija uno de estos: {choices}.',
    unknownName: 'La referencia no tiene «{given}» ({kind}). Parecidos: {nearest}.',
    unknownNameNoneNear: 'La referencia no tiene «{given}» ({kind}). Los nombres están en la hoja Cultivos.',
    noFigure: 'La referencia no tiene una cifra publicada ({trait}) para {crop}. Escriba la suya.',
    unequalLists:
      'Un rango ({name}) tiene {count} {count|celda|celdas} y el otro ({otherName}) tiene {otherCount}. Dé rangos del mismo largo.',
    noRowFits:
      'No cabe ningún surco: la parcela tiene {width} {unit} de ancho y cada surco necesita {rowSpacing} {unit}. Dé una distancia menor entre surcos; o, para un solo surco a lo largo de una cerca o cama, escriba una fórmula propia con el borde "onedge".',
    noPlantFits:
      'No cabe ninguna planta: el surco tiene {length} {unit} de largo y cada planta necesita {plantSpacing} {spacingUnit}. Dé una distancia menor entre plantas o revise el largo de la parcela.',
    noPlantInArea:
      'No cabe ninguna planta: la superficie es de {area} {unit} y cada planta necesita {areaPerPlant} {unit}. ¿Estaba la superficie en otra unidad? 1 {landUnit} son {areaPerLand} {unit}.',
    noHillFits:
      'No cabe ningún golpe: un lado de la parcela mide {side} {unit} y cada golpe necesita {hillSpacing} {unit}. La distancia entre golpes está en {unit}; ¿se quería una unidad menor?',
    noBedFits:
      'No cabe ninguna cama: la parcela tiene {width} {unit} de ancho y una cama tiene {bedWidth} {unit}. Dé una cama más angosta o revise el ancho de la parcela.',
    rowsTooClose:
      '{rows} surcos en una cama de {bedWidth} {unit} quedan a {apart} {spacingUnit} entre sí. Dé menos surcos, para que haya al menos {least} {spacingUnit} entre ellos, o revise el ancho de la cama.',
    noHillRowFits:
      'No cabe ningún surco de golpes: la parcela tiene {width} {unit} de ancho y los surcos están a {rowSpacing} {unit}. Dé una distancia menor entre surcos o revise el ancho de la parcela; ambos están en {unit}.',
    assuranceOfOne:
      'La seguridad es 1 (100%). Nada de lo que crece es seguro: dé una seguridad menor que 1, como 0.95.',
    tooManyForAssurance:
      'Con esta seguridad hace falta un número mayor que {most}, el más grande que aquí se calcula. Revise si hay un error en alguna cifra o divida la siembra.',
    tooManyForTested:
      'El número de plantas es {plants}. Con un número de semillas probadas puede ser a lo sumo {most} con esta emergencia en campo. Divida la siembra u omita el número de semillas probadas.',
    tooFewTested:
      'Una prueba de {tested} {tested|semilla|semillas} dice muy poco para una seguridad de {assurance}: ni 1,000,000,000 de semillas podrían bastar. Pruebe más semillas (400 es lo usual) o dé una seguridad menor.',
    testedWithoutAssurance:
      'El número de semillas probadas solo cuenta junto con una seguridad. Dé una seguridad como 0.95.',
    tooManyRowsToPlace:
      'Esta parcela tiene {rows} surcos; una imagen muestra a lo sumo {most}. Revise el ancho y la distancia entre surcos, o haga dos parcelas de ella.',
    listOfAnswers:
      '{id} da varias filas. Compruebe una celda de ellas con CHECK.ANSWER e INDEX, como =CUCURBIT.CHECK.ANSWER(A1,INDEX(CUCURBIT.{id}(…),1,1)).',
    lastBeforeFirst:
      'La última fecha ({lastDay}) es anterior a la primera ({firstDay}). Revise el año de cada una.',
    tooManyDates:
      'Son {count} fechas y se dan a lo sumo {most}. Revise el año de cada fecha o ponga más días entre ellas.',
    unknownFunction: 'No hay función «{given}» cuyos pasos se puedan mostrar. Parecidas: {nearest}.',
    unknownFunctionNoneNear:
      'No hay función «{given}» cuyos pasos se puedan mostrar. Escriba un nombre como SEED.NEEDED.',
    tooManyArguments: '{id} acepta {most} {most|argumento|argumentos}. Quite los demás.',
    frostDatesReversed:
      'La primera helada ({firstFrost}) debe venir después de la última ({lastFrost}). Al sur del ecuador la primera helada del otoño cae en el año siguiente: escriba también su año.',
    frostYearsApart:
      'Entre la última helada ({lastFrost}) y la primera ({firstFrost}) hay {days} días, un año entero o más. Revise el año de cada fecha: la primera helada es la siguiente a la última.',
    frostComesFirst:
      'La helada llega antes: el primer corte sería el {firstPick} y la primera helada es el {firstFrost}. Siembre antes o elija un tipo más precoz.',
    mayStayCovered: 'Un tipo partenocárpico no necesita abejas y puede quedar cubierto.',
    noTolerance:
      'Aquí no hay rango tolerado para una media de {percent}%: la tabla que se guarda, de 7 CFR 201.55, va de {from}% a {to}% con {replicates} repeticiones. Búsquelo en el reglamento o repita la prueba.',
    noSeedLife:
      'Las listas no dan duración para la semilla de {crop}. Pruebe unas cuantas semillas antes de sembrarla.',
    packedLater: 'El año de envasado ({packed}) es posterior al de siembra ({year}). Revise los dos.',
    noPackListed:
      'No hay ningún sobre de {crop} en la lista de precios. Agregue uno con sus semillas y su precio.',
    tooManyPackSizes:
      'Hay {count} sobres para elegir. Dé a lo sumo {most}: quite los que cuestan más por semilla que uno menor.',
    priceTooFine: 'El precio de un sobre es {price}. Délo con a lo sumo {decimals} decimales, como 3.95.',
    areaInLandUnits:
      'La superficie del campo es {area} {unit}. ¿Se quería en otra unidad? 1 {landUnit} son {areaPerLand} {unit}.',
    noSeedStandard:
      'El reglamento federal no da norma de germinación para {crop}. Guíese por el sobre o pruebe su propia semilla.',
    noDays: 'No hay ningún día en este registro. Dé los rangos con las fechas y las temperaturas.',
    dayMissingInRow:
      'A la fila {row} de los rangos le falta la máxima o la mínima. Una suma sobre un hueco sería demasiado baja: complete la fila o sume las partes.',
    dayMissing: 'El registro no tiene temperaturas del {day}, que aquí hacen falta. Complete ese día.',
    dateMissing: 'La fila {row} de los rangos tiene una temperatura y no tiene fecha. Complete la fecha.',
    sameDayTwice:
      'El {day} está dos veces en el registro, la segunda en la fila {row}. Deje una fila por día.',
    recordEnds: 'El registro termina el {lastDay}, antes de la respuesta. Dé un registro más largo.',
    lowAboveHigh: 'La mínima, {low}, es mayor que la máxima, {high}. Intercámbielas.',
    lowAboveHighInRow:
      'En la fila {row} de los rangos la mínima, {low}, es mayor que la máxima, {high}. Corrija esa fila.',
    notATemperature:
      'Dato ({name}, fila {row}): {value}, que no es una temperatura del aire. Si señala un dato que falta, vacíe esa celda.',
    lowsInCelsius:
      'La noche más cálida de este registro tiene {warmest}, que es frío para un año en °F. Si las mínimas están en °C, dé "metric" como sistema de unidades.',
    lowsInFahrenheit:
      'Una mínima de este registro es {warmest} °C, que no es de ninguna noche. Si las mínimas están en °F, dé "us" como sistema de unidades.',
    baseInOtherScale:
      'La máxima más alta es {warmest} y la base es {base}: no están en la misma escala. Dé la base en la escala de las temperaturas; 10 °C son 50 °F.',
    ceilingWanted: 'El método "reduced" necesita un techo: 90 °F (32 °C) para el pepino.',
    ceilingUnderBase: 'El techo es {ceiling}, no mayor que la base, {base}. Dé un techo más alto.',
    sameSeasonTwice:
      '{firstDay} y {lastDay} son heladas de una misma temporada. Dé la última o la primera helada de cada temporada, una fecha con su propio año.',
    noSeasons: 'No se puede contar ninguna temporada: entre los datos no hay fecha de helada ni "none".',
    lastFrostsInFall:
      'Las {seasons} heladas caen antes del invierno, como las primeras del otoño. Dé las últimas heladas de la primavera, o pida el otoño; en la otra mitad del mundo dé su hemisferio.',
    firstFrostsInSpring:
      'Las {seasons} heladas caen después del invierno, como las últimas de la primavera. Dé las primeras heladas del otoño, o pida la primavera; en la otra mitad del mundo dé su hemisferio.',
    neverFroze: 'No heló en {seasons} {seasons|temporada|temporadas}: no hay fecha que dar.',
    riskAboveFrost:
      'Hiela en menos años: en {sharePercent}% de ellos, y se pidió {riskPercent}%. Dé un riesgo menor.',
    tooFewSeasons:
      'La regla "exc" necesita {needed} temporadas con helada para este riesgo y hay {seasons}. Dé más años o la regla "inc".',
    noEmergence:
      'No hay tabla de días a emergencia para {crop}: tiene pepino, melón y sandía. Guíese por la temperatura del suelo al sembrar.',
    outsideEmergence:
      'La tabla de {crop} va de {from} a {to} {unit}. Suelo más frío o más caliente no se probó: espere uno mejor.',
    hillTooSteep:
      'Un montículo de {height} {unit} de alto pasa de la mitad de su diámetro de {diameter} {unit}, y la tierra no se sostiene tan empinada. Dé un montículo más bajo o más ancho.',
    flowPerMinute:
      'El caudal es {flow} {unit}, menos de lo que da una cinta de goteo. ¿Estaba por minuto? Entonces es {perHour}.',
    tooManyPicks:
      'Son {count} cortes y se dan a lo sumo {most}. Revise el año de cada fecha o ponga más días entre ellos.',
    noBushel:
      'No hay peso publicado de un bushel de {crop}: se vende por pieza, por cajón o por libra. Divida entre las libras que caben en el envase de su comprador.',
    judgedByRipeness: 'No hay tamaño de corte para {crop}: se juzga por la madurez. Córtelo cuando {sign}.',
    noSizeForUse:
      'No hay tamaño de corte publicado de {crop} para el uso "{use}". Omita el uso o guíese por su comprador.',
    noYieldBreaksEven:
      'Ningún rendimiento cubre los costos: una unidad se vende a {price} y cuesta {harvestCost} cosecharla y venderla. Busque mejor precio o cosecha más barata, o deje el cultivo.',
    tooManyFigures: 'El dato ({name}) tiene {count} números. Dé a lo sumo {most}.',
    pastYearNotPast:
      'El año pasado {pastYear} no es anterior al año de siembra, {year}. Quítelo del rango o corrija el año.',
    tooLarge: 'El resultado no es un número finito. Busque una cifra demasiado grande o demasiado pequeña.',
  },
  steps: {
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
      formula:
        'máxima menos la base; una máxima sobre el techo cuenta otro tanto por debajo de él; no bajo 0',
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
      formula: 'ese cuantil de las heladas, en línea recta entre dos de ellas',
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
      formula:
        'la germinación más baja con la que tantas o más no son demasiado improbables (Clopper-Pearson)',
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
  },
  working: {
    assumed: 'supuesto: {name}',
    numberPutIn: '{name} {value}',
    and: ', ',
    rounded: { up: 'redondeado hacia arriba', down: 'redondeado hacia abajo' },
    yes: 'sí',
    no: 'no',
    remark: 'nota',
    source: 'fuente',
    cells: '{rows} {rows|fila|filas} por {columns} {columns|columna|columnas}',
    noSteps: 'Esto se consulta, no se calcula: no hay pasos.',
  },
  remarks: {
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
      'Es un promedio: casi la mitad de estas siembras puede quedar corta. Dé una seguridad como 0.95 para una población segura.',
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
      'Coeficientes del estudio 56 de la FAO (1998) para cucurbitáceas: 0.4 a 0.6 al principio, 0.85 a 1.05 a media temporada (pepino, pumpkin y sandía 1.00, calabacín 0.95), 0.6 a 0.9 al final. La revisión de 2025 da al calabacín 1.00 y a pumpkin 0.95.',
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
      'Las calabazas difieren por tipo y por fuente: Purdue dice que la mayoría no toma la marchitez y actúa con 5, Ontario actúa con 1. Diga que su tipo no es propenso donde lo sepa.',
    beetlesMatterEarly:
      'Los escarabajos importan sobre todo desde los cotiledones hasta unas 5 hojas (hasta 3, Wisconsin). Revise temprano en el día, plantas de todo el campo, también de sus bordes.',
    restsAdvised:
      'Descansos que se aconsejan: 2 años para pepino de rebanar y pumpkin, 3 para calabaza (Carolina del Norte); nunca dos años seguidos (Cornell). Cuentan todas las cucurbitáceas, también las voluntarias.',
    countAsTheLabelDoes:
      'Tome los días de la etiqueta de lo aplicado, para su cultivo; de varias aplicaciones cuenta el día más tardío.',
    vinesLieOnSoil:
      'El fruto de guías en el suelo toca el suelo; el de un tutor quizá no, y la tierra salpicada cuenta.',
    manureRules:
      'Esta es la regla orgánica de Estados Unidos para estiércol crudo. Las reglas de inocuidad, su certificadora, su estado y su comprador pueden pedir más. La composta tiene reglas propias.',
  },
};
