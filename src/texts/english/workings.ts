/**
 * What the working of a calculation says. No part of `english`: only those carry it who show workings, the pane not
 * before it is asked for one. Long because it is one list of sentences.
 */
import { cautions } from './reference';

/** Each step of a working: its name, and its formula in words. */
export const steps = {
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
    formula:
      'earlier of the two frosts beside the quantile + way to the later one × days between them − day counted from',
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
  usualPerJar: { name: 'weight of cucumbers in a jar', formula: 'weight of a canner load ÷ its jars' },
  mostPerJar: {
    name: 'weight of cucumbers in a jar at the most',
    formula: 'weight of a bushel ÷ the fewest jars it gives',
  },
  usualJars: { name: 'jars', formula: 'weight of the fruit ÷ weight of cucumbers in a jar' },
  fewestJars: {
    name: 'as few as',
    formula: 'weight of the fruit ÷ weight of cucumbers in a jar at the most',
  },
  usualPounds: { name: 'cucumbers', formula: 'jars × weight of cucumbers in a jar' },
  mostPounds: { name: 'as much as', formula: 'jars × weight of cucumbers in a jar at the most' },
  budgetReturn: { name: 'return above the costs', formula: 'income − costs' },
  breakEvenPrice: { name: 'price that pays the cost', formula: 'total cost ÷ yield' },
  leftOfPrice: { name: 'price left after harvest cost', formula: 'price − harvest cost of a unit' },
  breakEvenYield: {
    name: 'yield that pays the costs',
    formula: 'cost not tied to yield ÷ price left after harvest cost',
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
} as const;

/** Remarks that travel with a result. */
export const remarks = {
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
  otherCellsLikewise: 'The other cells likewise, each with the yield of its row and the price of its column.',
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
} as const;
