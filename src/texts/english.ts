/**
 * Every sentence a person reads, in English. Placeholders in braces are filled by functions/wording and the pane.
 * Long because it is one list of sentences.
 */
import { calendar } from './english/calendar';
import { commands } from './english/commands';
import { grid } from './english/grid';
import { homework } from './english/homework';
import { money } from './english/money';
import { pane } from './english/pane';
import { pictures } from './english/pictures';
import { plotPictures } from './english/plotPictures';
import { record } from './english/record';
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
} from './english/reference';
import { seedOrder } from './english/seedOrder';
import { sheets } from './english/sheets';
import { slips } from './english/slips';
import { weather } from './english/weather';

export const english = {
  calendar,
  commands,
  grid,
  homework,
  money,
  pane,
  pictures,
  plotPictures,
  record,
  seedOrder,
  sheets,
  slips,
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
  /** In place of a list of years that has none. */
  noYear: {
    season: 'This record holds no growing season: give one from before a last frost to after a first one.',
    start: 'No year of this record has that day: give a longer record.',
  },
  /** Names of quantities: arguments of the functions, and the steps' inputs that are no argument. */
  quantities: {
    low: 'low end',
    high: 'high end',
    figure: 'figure',
    kind: 'kind of seed',
    trait: 'name of the figure',
    pollenizers: 'number of pollenizers',
    losses: 'share of losses',
    set_out: 'day of setting out',
    units: 'unit system',
    others: 'number of other plants',
    plants: 'number of plants',
    pollenizer_share: 'share of pollenizers',
    share: 'share of pollenizers',
    monoecious_female: 'female share of monoecious plants',
    gynoecious_female: 'female share of gynoecious plants',
    female_share: 'share of female flowers',
    area: 'area of the field',
    hives_per_acre: 'density of hives',
    crop_a: 'first crop',
    crop_b: 'second crop',
    saving_seed: 'saving of seed',
    flower_type: 'flower type',
    all_crops: 'range of all crops',
    all_flower_types: 'range of all flower types',
    screened: 'screening against bees',
    length: 'length of the plot',
    width: 'width of the plot',
    edge: 'edge',
    hill_spacing: 'hill spacing',
    plants_per_hill: 'number of plants per hill',
    pattern: 'pattern',
    bed_width: 'bed width',
    path_width: 'path width',
    rows_per_bed: 'number of rows per bed',
    rows: 'number of rows',
    plantsInRow: 'plants in a row',
    homework_number: 'number of the homework',
    homework_count: 'number of problems',
    hills: 'number of hills',
    hillsInRow: 'hills in a row',
    pitch: 'distance between staggered rows',
    oddRows: 'full rows',
    evenRows: 'shifted rows',
    inEvenRow: 'hills in a shifted row',
    beds: 'beds',
    germination: 'germination',
    field_emergence: 'field emergence',
    assurance: 'assurance',
    tested: 'number of seeds tested',
    standChance: 'share of seeds that stand',
    seeds: 'number of seeds',
    germinated: 'number of seeds that germinated',
    mean: 'average germination',
    replicates: 'number of replicates',
    pack_sizes: 'range of pack sizes',
    pack_prices: 'range of pack prices',
    pack_size: 'size of a pack',
    pack_price: 'price of a pack',
    packs: 'packs',
    seedsOver: 'seeds over',
    seedLife: 'years that seed keeps',
    year_packed: 'year of packing',
    seeds_per_unit: 'number of seeds per unit of weight',
    seeds_per_cell: 'number of seeds per cell',
    culls: 'share of culls',
    cellSprouts: 'share of cells with a sprout',
    cellStands: 'share of cells with a plant to set out',
    row_spacing: 'row spacing',
    plant_spacing: 'plant spacing',
    spacingPerLength: 'spacing units in one length unit',
    areaPerLand: 'area of an acre or hectare',
    areaPerPlant: 'area per plant',
    days: 'number of days',
    weeks: 'number of weeks',
    daysPerWeek: 'days in a week',
    days_after: 'number of days after the last frost',
    days_to_maturity: 'number of days to maturity',
    harvest_days: 'number of harvest days',
    fall_days: 'number of fall days',
    days_needed: 'number of days needed',
    start: 'day of sowing or setting out',
    flower_to_pick: 'number of days from flower to pick',
    daysBeforeFrost: 'days before the first frost',
    growingDays: 'days from the start to the first pick',
    harvestEnd: 'end of the harvest',
    seasonDays: 'days of the season',
    yield_per_100: 'yield per 100 of row',
    rowLengthOfYield: 'row length that the yield is for',
    marketable: 'marketable share',
    base: 'base temperature',
    ceiling: 'ceiling temperature',
    method: 'method',
    highs: 'range of highs',
    lows: 'range of lows',
    dates: 'range of dates',
    target: 'heat wanted',
    heat: 'heat between them',
    heat_between: 'heat from sowing to sowing',
    sowing: 'sowing before it',
    threshold: 'threshold of a frost',
    hemisphere: 'hemisphere',
    last_dates: 'range of last frosts',
    first_dates: 'range of first frosts',
    frost_dates: 'range of frost dates',
    season: 'side of the year',
    risk: 'risk',
    rule: 'quantile rule',
    none: 'seasons without frost',
    void: 'seasons with too many days missing',
    frosts: 'frosts counted',
    seasons: 'seasons counted',
    frostShare: 'share of seasons with frost',
    quantileAt: 'quantile',
    countingStart: 'day counted from',
    soil_temperature: 'soil temperature',
    coolerDays: 'days at the cooler temperature of the table',
    warmerDays: 'days at the warmer temperature of the table',
    cooler: 'share at the cooler temperature of the table',
    warmer: 'share at the warmer temperature of the table',
    part: 'way from the cooler to the warmer one',
    emergenceRate: 'share of the way in a day',
    wanted_yield: 'yield wanted',
    value: 'area in its own unit',
    areaOfUnit: 'area of one of the unit',
    unit: 'unit of area',
    wanted_per_week: 'demand of a week',
    picking_weeks: 'number of picking weeks',
    plants_standing: 'number of plants standing',
    plantsMeant: 'number of plants meant',
    stand: 'share of the stand',
    today: 'date of today',
    last_planting: 'last planting date',
    least_stand: 'share worth keeping',
    cells: 'number of cells',
    cells_per_tray: 'number of cells per tray',
    cellVolumePerMixVolume: 'cell volume units in one of mix',
    first: 'first date',
    last: 'last date',
    every_days: 'number of days between',
    correct: 'right answer',
    function_name: 'name of the function',
    diameter: 'diameter of a hill',
    height: 'height of a hill',
    shape: 'shape of a hill',
    hillVolume: 'soil of a hill',
    rate: 'rate',
    grade: 'grade of the fertilizer',
    depth: 'depth of water',
    waterPerAreaAndDepth: 'water of a unit of depth on a unit of area',
    reference_et: 'reference evapotranspiration',
    crop_coefficient: 'crop coefficient',
    wetted_width: 'wetted width of the bed',
    flow: 'flow of the tape',
    lines: 'number of lines of tape',
    dripFlowLength: 'length that the flow is told for',
    end_tuck: 'length buried at one end',
    fruit_per_plant: 'number of fruit per plant',
    fruit_weight: 'weight of a fruit',
    pounds: 'weight of the fruit',
    size: 'size of the fruit',
    use: 'use',
    measured: 'measured by',
    jar: 'size of the jar',
    jars: 'number of jars',
    loadPounds: 'cucumbers of a canner load',
    loadJars: 'jars of a canner load',
    bushel: 'weight of a bushel',
    fewestJars: 'fewest jars',
    income: 'income',
    costs: 'sum of the costs',
    total_cost: 'total cost',
    total_yield: 'yield',
    costs_not_tied_to_yield: 'cost not tied to yield',
    price: 'price',
    harvest_cost: 'harvest cost of a unit',
    prices: 'range of prices',
    yields: 'range of yields',
    picks: 'number of picks',
    beetles: 'number of beetles',
    stage: 'stage of the plants',
    wilt_prone: 'risk of bacterial wilt',
    past_years: 'range of past years',
    lastYear: 'last year of cucurbits',
    spray_date: 'day of spraying',
    label_days: 'number of days on the label',
    manure_date: 'day of working in manure',
    touches_soil: 'contact of the fruit with soil',
  },
  units: {
    ft: 'ft',
    in: 'in',
    sqFt: 'sq ft',
    acre: 'acre',
    oz: 'oz',
    lb: 'lb',
    cuIn: 'cu in',
    cuFt: 'cu ft',
    gallon: 'gal',
    m: 'm',
    cm: 'cm',
    sqM: 'sq m',
    hectare: 'ha',
    g: 'g',
    kg: 'kg',
    ml: 'ml',
    litre: 'L',
    mm: 'mm',
    perAcre: 'per acre',
    perHectare: 'per hectare',
    seedsPerOz: 'seeds/oz',
    seedsPerG: 'seeds/g',
    lbPer100Ft: 'lb per 100 ft',
    kgPer100M: 'kg per 100 m',
    perLb: 'per lb',
    perKg: 'per kg',
    perFt: 'per ft',
    perM: 'per m',
    perCuFt: 'per cu ft',
    perLitre: 'per L',
    perThousandGallons: 'per 1,000 gal',
    perCuM: 'per cu m',
    inOfWater: 'in',
    beetlesPerPlant: 'a plant',
    lbPerAcre: 'lb per acre',
    kgPerHectare: 'kg per hectare',
    gphPer100Ft: 'gal an hour per 100 ft',
    lphPerM: 'L an hour per m',
    F: '°F',
    C: '°C',
    degrees: 'degrees',
    degreeDays: 'degree days',
    plants: 'plants',
    seeds: 'seeds',
    hills: 'hills',
    rows: 'rows',
    beds: 'beds',
    cells: 'cells',
    hives: 'hives',
    trays: 'trays',
    posts: 'posts',
    picks: 'picks',
    bushels: 'bushels',
    jars: 'jars',
    hours: 'hours',
    days: 'days',
    weeks: 'weeks',
    years: 'years',
    date: '',
    share: '',
    none: '',
  },
  /** For one of them, where the word differs. */
  unitsOfOne: {
    plants: 'plant',
    seeds: 'seed',
    hills: 'hill',
    rows: 'row',
    beds: 'bed',
    cells: 'cell',
    hives: 'hive',
    trays: 'tray',
    posts: 'post',
    picks: 'pick',
    bushels: 'bushel',
    jars: 'jar',
    hours: 'hour',
    days: 'day',
    weeks: 'week',
    years: 'year',
    degrees: 'degree',
    degreeDays: 'degree day',
  },
  limits: {
    above: 'above {limit}',
    atLeast: 'at least {limit}',
    atMost: 'at most {limit}',
    below: 'below {limit}',
    and: ' and ',
  },
  /** The name of a range, with the row in it that is meant. */
  rowOfRange: '{name}, row {row},',
  errors: {
    outOfRange: 'The {name} is {value}. It must be {limits}.',
    notWhole: 'The {name} is {value}. Give a whole number.',
    percentForShare:
      'The {name} is {value}, which is {percent}%. A share is at most 100%: write {value} percent as {value}% or {fraction}.',
    percentForShareNearOne:
      'The {name} is {value}, which is {percent}%. A share is at most 100%. Give at most 100%.',
    missing: 'The {name} is missing. Fill it in.',
    notANumber:
      'The {name} is "{given}", which is not a number. Type digits with a decimal point and no unit.',
    currencySign:
      'The {name} is "{given}". Take the currency sign out; write thousands without a mark (1000) and decimals with a point (4.50).',
    commaInNumber:
      'The {name} is "{given}", and the comma is in the way. Write thousands without a mark (1000) and decimals with a point (0.85).',
    notADate:
      'The {name} is "{given}", which is not a date from March 1900 on. Type a date such as 2026-05-02.',
    numberForDate:
      'The {name}, row {row}, is {given}, which is no date: it is too small a number. Give the column with the dates.',
    notText: 'The {name} cannot be read. Give one cell with a number or a word.',
    notYesOrNo: 'The {name} is "{given}". Answer yes or no (TRUE or FALSE).',
    oneCellWanted: 'The {name} is a range of several cells. Give one cell.',
    errorInside: 'The {name} is itself an error ({error}). Mend that cell first.',
    notAChoice: 'The {name} is "{given}". Choose one of: {choices}.',
    unknownName: 'There is no {kind} called "{given}" in the reference. Near it: {nearest}.',
    unknownNameNoneNear:
      'There is no {kind} called "{given}" in the reference. See the Crops sheet for the names.',
    noFigure: 'The reference has no published {trait} for {crop}. Type your own figure.',
    unequalLists:
      'The {name} has {count} {count|cell|cells} and the {otherName} has {otherCount}. Give ranges of equal length.',
    noRowFits:
      'No row fits: the plot is {width} {unit} wide and each row needs {rowSpacing} {unit}. Give a smaller row spacing; or, for one row along a fence or bed, write a formula of your own with the edge "onedge".',
    noPlantFits:
      'No plant fits: the row is {length} {unit} long and each plant needs {plantSpacing} {spacingUnit}. Give a smaller plant spacing, or check the length of the plot.',
    noPlantInArea:
      'No plant fits: the area is {area} {unit} and each plant needs {areaPerPlant} {unit}. Was the area meant in another unit? 1 {landUnit} is {areaPerLand} {unit}.',
    noHillFits:
      'No hill fits: a side of the plot is {side} {unit} and each hill needs {hillSpacing} {unit}. Hill spacing is in {unit}; was a smaller unit meant?',
    noBedFits:
      'No bed fits: the plot is {width} {unit} wide and a bed is {bedWidth} {unit}. Give a narrower bed, or check the width of the plot.',
    tooManyRowsToPlace:
      'This plot has {rows} rows; a picture shows at most {most}. Check the width and the row spacing, or make two plots of it.',
    rowsTooClose:
      '{rows} rows in a bed of {bedWidth} {unit} stand {apart} {spacingUnit} apart. Give fewer rows, so that they are at least {least} {spacingUnit} apart, or check the width of the bed.',
    noHillRowFits:
      'No row of hills fits: the plot is {width} {unit} wide and the rows are {rowSpacing} {unit} apart. Give a smaller row spacing, or check the width of the plot; both are in {unit}.',
    assuranceOfOne:
      'The assurance is 1 (100%). Nothing that grows is certain: give an assurance below 1, such as 0.95.',
    tooManyForAssurance:
      'This assurance takes a number above {most}, the largest that is reckoned here. Check each figure for a slip, or split the planting.',
    tooManyForTested:
      'The number of plants is {plants}. With a number of seeds tested it can be at most {most} at this field emergence. Split the planting, or leave the number of seeds tested out.',
    tooFewTested:
      'A test of {tested} {tested|seed|seeds} says too little for an assurance of {assurance}: even 1,000,000,000 seeds might not be enough. Test more seeds (400 is usual) or give a lower assurance.',
    testedWithoutAssurance:
      'The number of seeds tested only counts together with an assurance. Give an assurance such as 0.95.',
    lastBeforeFirst:
      'The last date ({lastDay}) comes before the first date ({firstDay}). Check the year of each.',
    tooManyDates:
      'These are {count} dates, and at most {most} are given. Check the year of each date, or take more days between.',
    unknownFunction: 'There is no function called "{given}" whose steps can be shown. Near it: {nearest}.',
    unknownFunctionNoneNear:
      'There is no function called "{given}" whose steps can be shown. Type a name such as SEED.NEEDED.',
    listOfAnswers:
      '{id} gives several rows. Check one cell of them with CHECK.ANSWER and INDEX, such as =CUCURBIT.CHECK.ANSWER(A1,INDEX(CUCURBIT.{id}(…),1,1)).',
    tooManyArguments: '{id} takes {most} {most|argument|arguments}. Leave the others out.',
    frostDatesReversed:
      'The first frost ({firstFrost}) must come after the last frost ({lastFrost}). South of the equator the first frost of fall is in the next calendar year: type its year too.',
    frostYearsApart:
      'The last frost ({lastFrost}) and the first frost ({firstFrost}) are {days} days apart, a whole year or more. Check the year of each date: the first frost is the next one after the last frost.',
    frostComesFirst:
      'Frost comes first: the first pick would be {firstPick}, the first frost is {firstFrost}. Sow earlier or choose a quicker type.',
    mayStayCovered: 'A parthenocarpic type needs no bees and may stay covered.',
    noTolerance:
      'There is no tolerated range here for an average of {percent}%: the table kept here, out of 7 CFR 201.55, runs from {from}% to {to}% for {replicates} replicates. Look it up in the regulation, or test again.',
    noSeedLife: 'The lists give no storage life for seed of {crop}. Test a few seeds before you sow it.',
    packedLater: 'The year of packing ({packed}) comes after the year of sowing ({year}). Check both years.',
    noPackListed: 'No pack of {crop} is on the price list. Add one with its seeds and its price.',
    tooManyPackSizes:
      'There are {count} packs to choose from. Give at most {most}: leave out those that cost more per seed than a smaller one.',
    priceTooFine: 'The price of a pack is {price}. Give it with at most {decimals} decimals, such as 3.95.',
    areaInLandUnits:
      'The area of the field is {area} {unit}. Was that meant in another unit? 1 {landUnit} is {areaPerLand} {unit}.',
    noSeedStandard:
      'The federal rules list no germination standard for {crop}. Go by the packet, or test your own seed.',
    noDays: 'There is no day in this record. Give the ranges with the dates and temperatures in them.',
    dayMissingInRow:
      'Row {row} of the ranges has no high or no low. A sum over a gap would be too small: fill the row in, or sum the parts.',
    dayMissing: 'The record has no temperatures for {day}, which are needed here. Fill that day in.',
    dateMissing: 'Row {row} of the ranges has a temperature and no date. Fill the date in.',
    sameDayTwice: '{day} is in the record twice, the second time in row {row}. Keep one row for each day.',
    recordEnds: 'The record ends on {lastDay}, before the answer. Give a longer record.',
    lowAboveHigh: 'The low, {low}, is above the high, {high}. Exchange them.',
    lowAboveHighInRow: 'In row {row} of the ranges the low, {low}, is above the high, {high}. Mend that row.',
    notATemperature:
      'The {name}, row {row}, is {value}, which is no temperature of the air. If it marks a missing value, empty that cell.',
    lowsInCelsius:
      'The warmest night of this record is {warmest}, which is cold for a year in °F. If the lows are in °C, give "metric" as the unit system.',
    lowsInFahrenheit:
      'A low of this record is {warmest} °C, which no night is. If the lows are in °F, give "us" as the unit system.',
    baseInOtherScale:
      'The warmest high is {warmest} and the base is {base}: they are not in one scale. Give the base in the scale of the temperatures; 10 °C is 50 °F.',
    ceilingWanted: 'The method "reduced" needs a ceiling: 90 °F (32 °C) for cucumber.',
    ceilingUnderBase: 'The ceiling is {ceiling}, not above the base, {base}. Give a higher ceiling.',
    sameSeasonTwice:
      '{firstDay} and {lastDay} are frosts of one season. Give the last or the first frost of each season, a date with its own year.',
    noSeasons: 'No season can be counted: there is no frost date and no "none" among them.',
    lastFrostsInFall:
      'All {seasons} frosts come before the winter, as the first ones of fall do. Give the last frosts of spring, or ask for the fall; in the other half of the world give its hemisphere.',
    firstFrostsInSpring:
      'All {seasons} frosts come after the winter, as the last ones of spring do. Give the first frosts of fall, or ask for the spring; in the other half of the world give its hemisphere.',
    neverFroze: 'It never froze in {seasons} {seasons|season|seasons}: there is no date to give.',
    riskAboveFrost:
      'Frost comes in fewer years than that: in {sharePercent}% of them, and {riskPercent}% was asked for. Give a smaller risk.',
    tooFewSeasons:
      'The rule "exc" needs {needed} seasons with frost for this risk and there are {seasons}. Give more years, or the rule "inc".',
    noEmergence:
      'There is no table of days to emergence for {crop}: it has cucumber, muskmelon and watermelon. Go by the soil temperature at planting.',
    outsideEmergence:
      'The table for {crop} runs from {from} to {to} {unit}. Colder or hotter soil was not tested: wait for better.',
    hillTooSteep:
      'A hill {height} {unit} high is more than half its diameter of {diameter} {unit}, and soil does not stand so steep. Give a lower or a wider hill.',
    flowPerMinute:
      'The flow is {flow} {unit}, less than drip tape gives. Was it told by the minute? Then it is {perHour}.',
    tooManyPicks:
      'These are {count} picks, and at most {most} are given. Check the year of each date, or take more days between.',
    noBushel:
      'There is no published weight of a bushel for {crop}: it goes by the piece, the bin or the pound. Divide by the pounds that your buyer’s container holds.',
    judgedByRipeness: 'There is no picking size for {crop}: it is judged by ripeness. Pick it when {sign}.',
    noSizeForUse:
      'There is no published picking size of {crop} for the use "{use}". Leave the use out, or go by your buyer.',
    noYieldBreaksEven:
      'No yield breaks even: a unit brings {price} and costs {harvestCost} to harvest and sell. Find a better price or a cheaper harvest, or leave the crop out.',
    tooManyFigures: 'The {name} has {count} numbers. Give at most {most}.',
    pastYearNotPast:
      'The past year {pastYear} does not come before the year of planting, {year}. Take it out of the range, or mend the year.',
    tooLarge: 'The result is not a finite number. Check for a figure that is far too large or too small.',
  },
  /** Each step of a working: its name, and its formula in words. */
  steps: {
    cropFigureLow: { name: 'low end of the range', formula: '{trait} of {crop}: {low} to {high}' },
    cropFigureMid: { name: 'middle of the range', formula: '(low + high) ÷ 2, {trait} of {crop}' },
    cropFigureHigh: { name: 'high end of the range', formula: '{trait} of {crop}: {low} to {high}' },
    figureInMetric: { name: 'in metric units', formula: 'converted from US units' },
    heatByMean: {
      name: 'heat of the day',
      formula: '(high + low) ÷ 2, at most the ceiling, less the base; not under 0',
    },
    heatByModified: {
      name: 'heat of the day',
      formula: 'high and low each brought between base and ceiling, their mean less the base',
    },
    heatBySine: {
      name: 'heat of the day',
      formula: 'area between base and ceiling under a sine through low and high',
    },
    heatByReduced: {
      name: 'heat of the day',
      formula: 'high less the base, a high over the ceiling counting as far below it; not under 0',
    },
    heatSum: { name: 'heat of all days', formula: 'sum of the heat of {days} days' },
    heatReached: { name: 'heat on that day', formula: 'sum from the start, its own heat included' },
    heatDate: { name: 'date', formula: 'first day on which the sum is the heat wanted or more' },
    heatYears: {
      name: 'years with all of those days',
      formula: 'in each, the sum of the heat of {days} days from the start',
    },
    heatDates: {
      name: 'years that reach the heat wanted',
      formula: 'in each, the first day on which the sum is the heat wanted or more',
    },
    heatSowing: {
      name: 'next sowing',
      formula: 'first morning with the heat between sowings behind it',
    },
    lastFrosts: { name: 'springs with a last frost', formula: 'last low at or below the threshold' },
    firstFrosts: { name: 'falls with a first frost', formula: 'first low at or below the threshold' },
    frostShare: { name: 'share of seasons with frost', formula: 'frosts counted ÷ seasons counted' },
    springQuantile: {
      name: 'quantile of the last frosts',
      formula: '1 − risk ÷ share of seasons with frost',
    },
    fallQuantile: { name: 'quantile of the first frosts', formula: 'risk ÷ share of seasons with frost' },
    frostQuantile: {
      name: 'days from the day counted from',
      formula: 'that quantile of the frosts, in a line between two of them',
    },
    frostDate: { name: 'date', formula: 'day counted from + days' },
    chanceAfter: { name: 'chance of frost after it', formula: 'last frosts after the date ÷ seasons' },
    chanceBefore: { name: 'chance of frost before it', formula: 'first frosts before the date ÷ seasons' },
    emergenceRate: {
      name: 'share of the way in a day',
      formula: '1 ÷ days of the table, in a line between its temperatures',
    },
    daysToEmergence: { name: 'days to emergence', formula: '1 ÷ share of the way in a day' },
    normalSeedlings: {
      name: 'share of normal seedlings',
      formula: 'shares of the table, in a line between its temperatures',
    },
    cropText: { name: 'from the reference', formula: '{trait} of {crop}' },
    seedKind: { name: 'kind of seed in the regulation', formula: 'kind for {crop}' },
    seedStandard: { name: 'least germination', formula: 'federal standard for {kind} seed' },
    crossing: {
      name: 'verdict',
      formula: 'plants of one species cross; of different species they do not, squash and pumpkins seldom',
    },
    malesPerFemale: {
      name: 'male flowers per female one',
      formula: '(1 − share of female flowers) ÷ share of female flowers',
    },
    chanceOfNoPollenizer: {
      name: 'chance of no pollenizer',
      formula: '(1 − share) to the power of the number of plants',
    },
    groupWithPollenizer: {
      name: 'plants in the group',
      formula: 'the fewest plants of which one is a pollenizer with the chance asked for',
    },
    hivesNeeded: { name: 'hives', formula: 'area ÷ area of an acre or hectare × hives on it, rounded up' },
    femaleShare: {
      name: 'share of female flowers',
      formula:
        'pollenizer share × female share of monoecious + (1 − pollenizer share) × female share of gynoecious',
    },
    ratioAsShare: { name: 'share of all plants', formula: 'pollenizers ÷ (pollenizers + others)' },
    pollenizersOfTotal: {
      name: 'pollenizers, of all plants',
      formula: 'plants × share ÷ (share + (1 − losses) × (1 − share)), rounded up',
    },
    pollenizersBetween: {
      name: 'pollenizers, set between',
      formula: 'plants × share ÷ (1 − share) ÷ (1 − losses), rounded up',
    },
    cucumbersWithPollen: { name: 'other cucumbers with pollen', formula: 'counted on the sheet' },
    seededWatermelons: { name: 'seeded watermelons', formula: 'counted on the sheet' },
    isolationVerdict: {
      name: 'verdict',
      formula: 'parthenocarpic cucumber wants no pollen, triploid watermelon wants some',
    },
    areaPerPlant: { name: 'area per plant', formula: 'row spacing × plant spacing ÷ {spacingPerLength}' },
    rowsInset: { name: 'rows that fit', formula: 'width ÷ row spacing' },
    rowsOnEdge: {
      name: 'rows that fit, the first on the edge',
      formula: 'width ÷ row spacing, and one more',
    },
    plantsInRowInset: {
      name: 'plants in a row',
      formula: 'length × {spacingPerLength} ÷ plant spacing',
    },
    plantsInRowOnEdge: {
      name: 'plants in a row, the first on the edge',
      formula: 'length × {spacingPerLength} ÷ plant spacing, and one more',
    },
    plantsInRows: { name: 'plants in the plot', formula: 'rows × plants in a row' },
    rowsOfHills: { name: 'rows of hills', formula: 'width ÷ row spacing' },
    hillsInRow: { name: 'hills in a row', formula: 'length ÷ hill spacing' },
    hillsSquare: { name: 'hills in the plot', formula: 'rows × hills in a row' },
    staggeredPitch: {
      name: 'distance between staggered rows',
      formula: 'hill spacing × square root of 3 ÷ 2, so that neighbors are equally far apart',
    },
    rowsStaggered: {
      name: 'staggered rows',
      formula: '(width − hill spacing) ÷ distance between rows, and one more',
    },
    hillsInEvenRow: { name: 'hills in a shifted row', formula: 'length ÷ hill spacing − one half' },
    hillsStaggered: {
      name: 'hills in the plot',
      formula: 'full rows × hills in a row + shifted rows × hills in a shifted row',
    },
    plantsInHills: { name: 'plants in the plot', formula: 'hills × plants per hill' },
    bedsInWidth: { name: 'beds that fit', formula: '(width + path width) ÷ (bed width + path width)' },
    plantsInBeds: { name: 'plants in the plot', formula: 'beds × rows per bed × plants in a row' },
    standChance: { name: 'share of seeds that stand', formula: 'germination × field emergence' },
    seedsOnAverage: { name: 'seeds to sow, on average', formula: 'plants ÷ share of seeds that stand' },
    seedsForAssurance: {
      name: 'seeds to sow for the assurance',
      formula: 'the fewest seeds of which that many plants stand with the chance asked for (binomial)',
    },
    seedsForAssuranceTested: {
      name: 'seeds to sow for the assurance, the test doubted',
      formula:
        'the fewest seeds of which that many plants stand with the chance asked for, when the germination is only known from a test of that many seeds (beta-binomial)',
    },
    seedsPerHill: {
      name: 'seeds per hill',
      formula: 'the fewest seeds that fill a hill with the chance asked for (binomial)',
    },
    chanceOfStand: {
      name: 'chance of the stand',
      formula: 'the chance that at least that many of the seeds stand (binomial)',
    },
    testedShare: { name: 'germination in the test', formula: 'seeds that germinated ÷ seeds tested' },
    testedLow: {
      name: 'low end',
      formula: 'the lowest germination at which that many or more are not too unlikely (Clopper-Pearson)',
    },
    testedHigh: {
      name: 'high end',
      formula: 'the highest germination at which that many or fewer are not too unlikely (Clopper-Pearson)',
    },
    meanInPercent: {
      name: 'average in whole per cent',
      formula: 'average germination × 100, rounded, a half up',
    },
    replicateTolerance: {
      name: 'widest range before a retest',
      formula: 'federal table for {replicates} replicates at {meanInPercent} %',
    },
    packsOfSize: { name: 'cost of one size', formula: 'packs of {pack_size} seeds × price of a pack' },
    cheapestPacks: {
      name: 'cost of the order',
      formula: 'the cheapest packs that hold the seeds; of equals, fewest seeds over, then fewest packs',
    },
    seedLife: {
      name: 'years that seed keeps',
      formula: 'of {kind} seed in good storage, {low} to {high} by source: the shorter',
    },
    seedLifeLeft: {
      name: 'years left',
      formula: 'years that seed keeps − (year − year of packing), not under 0',
    },
    seedWeight: { name: 'seed weight', formula: 'seeds ÷ seeds per unit of weight' },
    cellSprouts: {
      name: 'share of cells with a sprout',
      formula: '1 − (1 − germination) to the power of seeds per cell',
    },
    cellStands: {
      name: 'share of cells with a plant to set out',
      formula: 'share of cells with a sprout × (1 − share of culls)',
    },
    cellsOnAverage: {
      name: 'cells to sow, on average',
      formula: 'plants ÷ share of cells with a plant to set out',
    },
    cellsForAssurance: {
      name: 'cells to sow for the assurance',
      formula: 'the fewest cells of which that many hold a plant with the chance asked for (binomial)',
    },
    plantsInArea: { name: 'plants at most', formula: 'area ÷ area per plant' },
    plantsForYield: { name: 'plants', formula: 'yield wanted ÷ yield per plant' },
    areaForPlants: { name: 'area', formula: 'plants × area per plant' },
    areaFrom: { name: 'area', formula: '{value} × area of one {unit}' },
    rowForPlants: { name: 'row length', formula: 'plants × plant spacing ÷ {spacingPerLength}' },
    rowInArea: { name: 'row length', formula: 'area ÷ row spacing' },
    wantedInSeason: { name: 'demand of the season', formula: 'demand of a week × picking weeks' },
    rowForDemand: {
      name: 'row length',
      formula: 'demand of the season ÷ yield of {rowLengthOfYield} of row in the season × {rowLengthOfYield}',
    },
    plantsMeant: {
      name: 'plants meant to stand',
      formula: 'row length × {spacingPerLength} ÷ plant spacing',
    },
    standingShare: { name: 'share of the stand', formula: 'plants standing ÷ plants meant to stand' },
    replantVerdict: {
      name: 'verdict',
      formula: 'keep a stand of the share worth keeping; else fill gaps up to the last planting date',
    },
    traysNeeded: { name: 'trays', formula: 'cells ÷ cells per tray' },
    mixForCells: { name: 'mix', formula: 'cells × cell volume ÷ {cellVolumePerMixVolume}' },
    sowings: { name: 'number of sowings', formula: '(last date − first date) ÷ days between, and one more' },
    lastOfSuccession: {
      name: 'last of the sowings',
      formula: 'first date + (number of sowings − 1) × days between',
    },
    answerOff: { name: 'difference', formula: 'answer − right answer' },
    plantsPerLand: {
      name: 'plants per acre or hectare',
      formula: 'area of an acre or hectare ÷ area per plant',
    },
    setOut: { name: 'setting out', formula: 'last frost + days after it' },
    firstSowing: { name: 'first sowing', formula: 'last frost + days after it' },
    transplantStart: { name: 'sowing for transplants', formula: 'setting out − weeks × {daysPerWeek}' },
    hardeningStart: { name: 'start of hardening off', formula: 'setting out − days of hardening' },
    daysBeforeFrost: {
      name: 'days to count back from the first frost',
      formula: 'days to maturity + harvest days + fall days + frost margin',
    },
    lastSowing: { name: 'last sowing', formula: 'first frost − days to count back' },
    daysFromSettingOut: {
      name: 'days from setting out to the first pick',
      formula: 'days to maturity (counted from seed) − transplant gain',
    },
    daysFromSowing: {
      name: 'days from sowing to the first pick',
      formula: 'days to maturity (counted from transplants) + transplant gain',
    },
    firstPick: { name: 'first pick', formula: 'sowing or setting out + days to the first pick + fall days' },
    harvestEnd: { name: 'end of the harvest', formula: 'first pick + harvest days' },
    lastPick: {
      name: 'last pick',
      formula: 'end of the harvest, or the day before the first frost if sooner',
    },
    coverOff: { name: 'row cover off', formula: 'first pick − days from flower to pick' },
    seasonDays: { name: 'days of the season', formula: 'first frost − last frost' },
    seasonSpare: { name: 'days to spare', formula: 'days of the season − days needed' },
    rowYield: {
      name: 'yield of the row',
      formula: 'row length ÷ {rowLengthOfYield} × yield of {rowLengthOfYield} of row × marketable share',
    },
    hillAsMound: {
      name: 'soil of a hill',
      formula: 'cap of a ball: π × height × (3 × half the diameter² + height²) ÷ 6',
    },
    hillAsDisc: { name: 'soil of a hill', formula: 'π × half the diameter² × height' },
    hillSoil: {
      name: 'soil of all hills',
      formula: 'number of hills × soil of a hill ÷ {cellVolumePerMixVolume}',
    },
    nutrientForArea: {
      name: 'nutrient for the field',
      formula: 'area ÷ area of an acre or hectare × rate',
    },
    fertilizerForArea: { name: 'fertilizer', formula: 'nutrient for the field ÷ grade' },
    waterForDepth: {
      name: 'water',
      formula: 'area × depth × water of a unit of depth on a unit of area',
    },
    waterUsed: {
      name: 'water that the crop uses',
      formula: 'reference evapotranspiration × crop coefficient × days',
    },
    waterNeed: { name: 'water to give', formula: 'water that the crop uses − rain, not under 0' },
    waterOnBed: {
      name: 'water on the bed along the tape',
      formula:
        'depth × wetted width ÷ {spacingPerLength} × {dripFlowLength} × water of a unit of depth on a unit of area',
    },
    dripRunTime: { name: 'hours to run', formula: 'water ÷ (flow × lines of tape)' },
    coverLength: { name: 'cover', formula: 'rows × (row length + 2 × length buried at one end)' },
    postsInRow: { name: 'posts in a row', formula: 'row length ÷ post spacing, and one more' },
    trellisPosts: { name: 'posts', formula: 'rows × posts in a row' },
    picksInHarvest: {
      name: 'picks',
      formula: '(last pick − first pick) ÷ days between, and one more',
    },
    harvestForecast: {
      name: 'harvest on the plants',
      formula: 'fruit per plant × plants × weight of a fruit',
    },
    bushelWeight: { name: 'weight of a bushel', formula: 'of {crop}' },
    otherBushelWeight: { name: 'weight of a bushel elsewhere', formula: 'of {crop}, by another source' },
    bushelsOf: { name: 'bushels', formula: 'weight of the fruit ÷ weight of a bushel' },
    pickingSizeLow: { name: 'smallest to pick', formula: '{measured} of {crop}' },
    pickingSizeHigh: { name: 'largest to pick', formula: '{measured} of {crop}' },
    sizeVerdict: {
      name: 'verdict',
      formula: 'ready from the smallest to the largest, both included',
    },
    usualPerJar: { name: 'cucumbers a jar', formula: 'weight of a canner load ÷ its jars' },
    mostPerJar: {
      name: 'cucumbers a jar at the most',
      formula: 'weight of a bushel ÷ the fewest jars it gives',
    },
    usualJars: { name: 'jars', formula: 'weight of the fruit ÷ cucumbers a jar' },
    fewestJars: { name: 'as few as', formula: 'weight of the fruit ÷ cucumbers a jar at the most' },
    usualPounds: { name: 'cucumbers', formula: 'jars × cucumbers a jar' },
    mostPounds: { name: 'as much as', formula: 'jars × cucumbers a jar at the most' },
    budgetReturn: { name: 'return above the costs', formula: 'income − costs' },
    breakEvenPrice: { name: 'price that pays the cost', formula: 'total cost ÷ yield' },
    leftOfPrice: { name: 'left of the price', formula: 'price − harvest cost of a unit' },
    breakEvenYield: {
      name: 'yield that pays the costs',
      formula: 'cost not tied to yield ÷ left of the price',
    },
    returnAtYieldAndPrice: {
      name: 'return at the first yield and price',
      formula: 'yield × (price − harvest cost of a unit) − cost not tied to yield',
    },
    pickingHours: { name: 'hours', formula: 'row length × picks ÷ row picked in an hour' },
    wiltProne: { name: 'prone to bacterial wilt', formula: 'of {crop}' },
    beetleThreshold: {
      name: 'threshold',
      formula: '1 beetle a plant where beetles bring bacterial wilt, 5 where they do not',
    },
    beetlesPerPlant: { name: 'beetles a plant', formula: 'beetles ÷ plants looked at' },
    beetleVerdict: { name: 'threshold reached', formula: 'beetles a plant at or above the threshold' },
    seasonsFree: { name: 'full seasons free', formula: 'year − last year of cucurbits − 1' },
    pickAfterSpray: { name: 'earliest pick', formula: 'day of spraying + days on the label' },
    manureWait: {
      name: 'days to wait',
      formula: 'the rule’s days for fruit that touches soil, or for fruit that does not',
    },
    harvestAfterManure: { name: 'earliest harvest', formula: 'day of working in manure + days to wait' },
  },
  /** The frame of a working's lines. */
  working: {
    assumed: 'assumed: {name}',
    numberPutIn: '{name} {value}',
    and: ', ',
    rounded: { up: 'rounded up', down: 'rounded down' },
    yes: 'yes',
    no: 'no',
    remark: 'note',
    source: 'source',
    cells: '{rows} {rows|row|rows} by {columns} {columns|column|columns}',
    noSteps: 'This is looked up, not calculated: there are no steps.',
  },
  /** Remarks that travel with a result. */
  remarks: {
    fewSeasons:
      'Fewer than 20 seasons with frost: one more year can move this date by a week. Give a longer record where there is one.',
    fewNormalSeedlings:
      'At this soil temperature fewer than three seeds in four make normal seedlings: wait for warmer soil.',
    noFieldLossAssumed:
      'No field loss assumed: every seed that germinates in a test is taken to stand. Cold, wet or crusted soil takes some: give a field emergence.',
    lotsDiffer:
      'Lots of one crop differ: nine lines of cucumber had 904 to 1,291 seeds per ounce. Go by the packet, or weigh 100 seeds.',
    testIsOneSample:
      'The two ends allow for the luck of which seeds were tested, no more: a field takes its own losses. Ten seeds cannot tell a poor lot from a good one; 400 are usual.',
    testStoredSeed:
      'Storage life is no promise: test some seeds before use. Germination and vigor of cucumber seed fall after more than a year, even kept cool and dry.',
    seedOutlived:
      'This seed has outlived its usual storage life: test some seeds before use, or buy fresh seed.',
    hivesByFlowers:
      'One hive an acre is published for cucumbers. Parthenocarpic cucumbers want none: give 0. Triploid watermelon needs about twice the visits: give twice as many.',
    smallFieldsHaveBees:
      'A field under 3 acres beside land left wild may have wild bees enough. Move hives in 3 to 4 days after the first flowers open, and keep insecticides off the flowers.',
    averageFallsShort:
      'An average: nearly half of such sowings can fall short. Give an assurance such as 0.95 to sow for a sure stand.',
    belowStandardMayBeSold:
      'Seed below the standard may be sold, marked "Below Standard" with its germination: test it and sow thicker.',
    femalesIfAllFlowerEqually: 'This holds if all plants bear as many flowers.',
    monoeciousFemaleVaries:
      'About half is common practice, no source; older types are said to bear 10 to 25 males a female (from memory, check). Count your own.',
    lossesFallOnPollenizers: 'Losses are taken to fall on pollenizers only.',
    betweenDisplacesNone: 'Pollenizers between the plants take no seedless plant’s place; they come on top.',
    neighborsUnknown: 'What the neighbors grow is not on the sheet.',
    waitBelongsToMean:
      'The customary wait belongs to the mean (50 %) date of the last frost. After a date that carries less risk, wait less. It is published for watermelon; for other cucurbits it is common practice.',
    beforeLastFrost: 'This day is before the last frost: only under covers that keep frost off.',
    soilDecides:
      'Soil decides, not the date: go by a thermometer and the crop’s planting temperature (see the Crops sheet).',
    transplantWeeksDiffer:
      'Common practice is 3 to 4 weeks, and crops differ: triploid watermelon takes longest. Overgrown transplants do worse than young ones.',
    hardenNotCold: 'Harden off cucurbits in a sheltered place, not under about 60 °F (16 °C).',
    harvestIsForManyPicks:
      'The default harvest is for crops picked again and again. Give 0 harvest days for crops picked once.',
    frostEndsHarvest: 'Frost ends this harvest before its time.',
    noFrostGiven: 'No first frost was given, so none was looked for.',
    goByFlowers:
      'Go by the first open female flowers, not by this date: bees must reach them. Rather too early than too late.',
    seasonTooShort: 'The season is too short: choose a quicker type, or start from transplants.',
    edgesLoseSome: 'The most there can be: edges and corners of an odd shape lose some.',
    edgesTakeMore: 'The least there must be: edges and corners of an odd shape take more.',
    lossesComeOnTop:
      'Plants that live to bear. Add some for those that will be lost to weather, beetles, wilt and mildew.',
    picksAreUneven:
      'The yield is that of the whole picking season, taken as even over its weeks. First and last weeks bring less and the middle more: several sowings even it out.',
    countInSeveralPlaces:
      'Count in several places across the field, gaps and all: one good stretch says little of the rest.',
    whyPlantsAreMissing:
      'See first why plants are missing: what took them (cold or crusted soil, rot, insects, mice) takes the next ones too. A few long gaps weigh more than many short ones.',
    mixSettles: 'Mix settles when it is firmed and watered: have some over.',
    sowingsDrawTogether:
      'Even gaps in sowing are not even gaps in picking: in a warming spring later sowings catch up, in fall they lag.',
    yieldIsMarketable:
      'Yields published by extension services are marketable already. Give a share only for a yield that counts everything picked.',
    soilDrawnUp: 'Soil drawn up from around the hills as it lies there: none is bought, and it settles.',
    gradeAsOnTheBag:
      'The three numbers on a bag are per cent of N, of P2O5 and of K2O. Rate and grade must be of the same one.',
    soilTestFirst:
      'Test the soil first, and take off what manure and legumes leave. On sand give nitrogen in two parts, the second as the vines run.',
    waterLostComesOnTop: 'What runs off, blows away or leaks comes on top.',
    coefficientsByStage:
      'Coefficients of FAO paper 56 (1998) for cucurbits: 0.4 to 0.6 at first, 0.85 to 1.05 in mid-season (cucumber, pumpkin and watermelon 1.00, summer squash 0.95), 0.6 to 0.9 at the end. The revision of 2025 has summer squash 1.00 and pumpkin 0.95.',
    plasticShedsRain: 'Under plastic mulch rain does not count: leave it out, and give all water by drip.',
    splitTheRun:
      'More than 6 hours at a stretch sends water below the roots: split it into runs on several days.',
    coverWidthApart:
      'This is the length. The width must span the bed, the hoops and both buried edges; order some over for joints.',
    leftFruitStopsSet:
      'Pick all that is big enough each time: fruit left to grow stops new fruit from setting.',
    countedFruitOnly:
      'What hangs now: fruit that sets later comes on top, and some of this will drop or be culled. Count plants in several places.',
    bushelsDiffer:
      'A bushel is a volume, and legal weights are old and differ by state: ask your buyer what a bushel or a carton weighs. Texas counts squash in bushels of 25 lb, which Michigan calls a lug.',
    sizeIsNotRipeness:
      'Size is not ripeness: pick when the rind has its full color and a thumbnail does not scratch it.',
    cucumbersByThickness:
      'By thickness: North Carolina picks slicing cucumbers under 2 in (5 cm) through, and pickling ones over ½ in (1.3 cm) and under 2 in.',
    cucumbersOnly:
      'For cucumbers alone: the guide has other weights for other produce, and none that was found for summer squash or melons.',
    canning: cautions.canning,
    noIncome: 'No income was put in: this is what is lost if nothing is sold.',
    aboveTheseCosts:
      'What is left above the costs put in, no more: your own hours, land and machinery count only if they are among them.',
    whatIsSoldPays: 'Only what is sold pays: leave out culls and what stays in the field.',
    harvestCostLeftOut:
      'No harvest cost of a unit was given. Picking, packing and selling mostly move with the yield: give them here, and keep them out of the other costs.',
    otherCellsLikewise:
      'The other cells likewise, each with the yield of its row and the price of its column.',
    timeYourOwnPicking:
      'Time an hour of your own: the first and last picks go faster than those at the height. Walking, washing, grading and packing come on top.',
    pesticides: cautions.pesticides,
    squashDiffer:
      'Squash and pumpkins differ by type and by source: Purdue says that most take no wilt and acts at 5, Ontario acts at 1. Say that your type is not prone where you know it.',
    beetlesMatterEarly:
      'Beetles matter most from cotyledons to about 5 leaves (to 3, Wisconsin). Look early in the day, on plants across the field, its edges among them.',
    restsAdvised:
      'Rests that are advised: 2 years for slicing cucumbers and pumpkins, 3 for squash (North Carolina); never two years running (Cornell). All cucurbits count, and volunteers too.',
    countAsTheLabelDoes:
      'Take the days from the label of what was sprayed, for your crop; of several sprays the latest day counts.',
    vinesLieOnSoil:
      'Fruit of vines on the ground touches soil; fruit on a trellis may not, and splashed soil counts.',
    manureRules:
      'This is the organic rule of the United States for raw manure. Food-safety rules, your certifier, state and buyer may ask for more. Compost has rules of its own.',
  },
} as const;
