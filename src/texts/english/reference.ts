/** What is said of the reference: the ground of a figure, and remarks on single figures. */

/** A publication as it is cited: {publisher}, {title}, {year}, {where}. */
export const citations = {
  dated: '{publisher}: {title} ({year}), {where}',
  undated: '{publisher}: {title} (no date), {where}',
  read: '',
  'secondary copy': '; read in a secondary copy',
  'from memory, check': '; from memory, check',
  and: '; ',
  note: '. {note}',
  /** Where there is no publication. */
  grounds: {
    'common practice, no source': 'common practice, no source',
    judgement: 'judgement',
    convention: 'project convention, no source',
    arithmetic: 'arithmetic, no source',
    geometry: 'plane or solid geometry, no source',
    units: 'definition of the units',
    'independent seeds': 'binomial distribution, by its definition: each seed is taken to come up by itself',
    'own list': 'list of this project',
  },
} as const;

/** Remarks on figures of reference/crops, by the key that stands there. */
export const cropNotes = {
  asSeededWatermelon: 'Taken to need the room of seeded watermelon.',
  asSquash: 'Taken to be as squash.',
  bearsLonger: 'Plants bear longer where frost and powdery mildew let them.',
  bushCucumberSpacing:
    'Common practice for bush types is 2 to 3 ft a plant; Illinois plants all cucumbers 12 in apart.',
  countYourLot: 'Seed size differs much between lots and sources: weigh 100 of yours.',
  cucumberDaysByRegion: 'North Carolina counts 36 to 45 days, North Dakota 60 to 70.',
  cucumberSeedCount: 'Nine lines that were counted ran from 904 to 1,291 an ounce.',
  cucumberSpacing: 'Common practice, no source: rows 4 to 5 ft, 12 to 18 in in the row.',
  gourdDays: 'Small ornamental about 90, hard-shell about 120, luffa about 130.',
  keepsBySlip:
    'Half or three-quarter slip: 36 to 45 °F, 1 to 2 weeks. Full slip: 32 to 40 °F, 4 to 7 days. Late types such as casaba: not below 50 °F (10 °C).',
  keepsByType:
    'By type; acorn types the shortest, about 5 to 8 weeks by common practice, no source. Not below 50 °F (10 °C).',
  noTriploidLine: 'The regulation has no line of its own for triploid seed.',
  pickedDaily: 'Common practice, no source, is to pick about every day.',
  picklingSize: 'Gherkins to dills. Common practice, no source, is 3 to 5 in.',
  pumpkinBins: 'Diameter of the proposed bin sizes, medium to jumbo; pick by ripeness.',
  pumpkinOptimum:
    'The table prints a single optimum of 95 °F (35 °C), outside its own range; the range is given.',
  readThePacket: 'Gynoecious and parthenocarpic sorts are sold too: read the packet.',
  ripeBeforeFreeze: 'Ripe fruit is cut at the end of the season and stands a light frost, not a freeze.',
  slicingSize: 'Upper U.S. grades start at 6 in; common practice, no source, is about 8 in.',
  squareHills: 'Hills taken to stand as far apart across as along.',
  squashChilled: 'Below 45 °F (7 °C) it takes harm from cold within 2 to 3 days.',
  squashYield: 'Low end Texas, 10,000 lb an acre on rows 4 ft apart; high end Florida, 15 lb a 10 ft row.',
  watermelonYield: '10,000 to 70,000 lb an acre on rows 8 ft apart: a very wide range, put in your own.',
  yieldAt5FtRows: 'From yields an acre on rows 5 ft apart.',
  yieldAt6FtRows: 'From yields an acre on rows 6 ft apart.',
  yieldAt8FtRows: 'From yields an acre on rows 8 ft apart.',
} as const;

/** Cautions that defer to those who know the case: the label, a tested recipe, the extension office. */
export const cautions = {
  bitterFruit:
    'Do not eat a cucurbit that tastes bitter: spit it out and throw the fruit away. Ornamental gourds and volunteer plants are not food. Seed saved where types crossed can give bitter fruit next year.',
  treatedSeed:
    'Treated seed is not for food, feed or oil, and left-over treated seed is not for compost. Wear gloves, and read the label for what it is treated with and how to dispose of it.',
  pesticides:
    'The label is the law: rate, days to harvest and protection are there and nowhere here. Ask your local extension office what is registered for your crop, and spare the bees: flowers shut in the evening.',
  canning:
    'Weights here plan the picking, not the jar. Can by a current tested recipe from your extension office or the USDA guide, with its times, and never purée of pumpkin or squash.',
  mildew:
    'Against mildew choose resistant types, leave room and air between plants, and water the soil, not the leaves. What else helps depends on the place and the week: ask your local extension office.',
  history:
    'What stood on a plot before is known from you alone: a blank in Last cucurbits means not known, never free of cucurbits.',
} as const;

/** Verdicts of FLOWER.ISOLATE. "clear" is a single word so that a sheet can test for it. */
export const verdicts = {
  clear: 'clear',
  'pollen on the sheet':
    'Keep apart: this parthenocarpic cucumber turns seedy and misshapen if bees bring cucumber pollen, and other cucumbers here have it. Screen it, or move them; mind the neighbors too.',
  'pollen next door':
    'No other cucumber here brings pollen, but neighbors may: bees would make this parthenocarpic cucumber seedy and misshapen. Screen it against bees.',
  'no pollenizer':
    'Sets no fruit without pollen of a seeded watermelon, and no other plot here is one: plant pollenizers among it, about 1 to 3 others.',
} as const;

/** Verdicts of STAND.REPLANT. */
export const standVerdicts = {
  keep: 'keep',
  'fill gaps': 'fill gaps',
  'too late': 'too late',
} as const;

/** CHECK.ANSWER. */
export const judgements = {
  right: 'right',
  blank: 'blank: no answer yet',
  tooHigh: 'too high by {difference}',
  tooLow: 'too low by {difference}',
  share: ' ({percent} %)',
  /** Behind a difference of whole numbers that may be dates. */
  late: ' (of dates: {difference} {difference|day|days} late)',
  early: ' (of dates: {difference} {difference|day|days} early)',
  numberWanted: 'not right: a number is wanted, or a date such as 2026-05-16',
  wordWanted: 'not right: a word is wanted',
  otherWord: 'not right: another word is wanted',
} as const;

/** FLOWER.CROSSES: a verdict, then what becomes of the fruit, then of the seed. */
export const crossings = {
  cross: 'They cross: both are {species}.',
  'may cross': 'They cross where both are of one species ({species}): read it on the packet.',
  'seldom cross': 'They seldom cross: they are different species of squash.',
  'do not cross': 'They do not cross: they are different species.',
  seedless:
    'Both are {species}, but triploid watermelon bears no seed worth saving and no good pollen; it needs the other’s pollen to set fruit.',
  or: ' or ',
  fruitUnaffected: 'This year’s fruit is unaffected.',
  fruitSpoiled: 'Pollen makes this year’s parthenocarpic cucumbers seedy and misshapen: keep bees off them.',
  seedWouldMix: 'Seed saved from them would be mixed.',
  keepPure: 'Seed saved from them is mixed unless you keep bees off the flowers and pollinate them by hand.',
  bitter:
    'Fruit grown from saved Cucurbita pepo seed can be bitter and make you ill: if it tastes bitter, spit it out and do not eat it.',
} as const;

/** SEED.PACKS and SEED.PACKLIST. */
export const orders = { total: 'total', packs: '{count} of {size}', and: ', ' } as const;

/** HARVEST.SIZE. */
export const sizeVerdicts = { under: 'under', ready: 'ready', over: 'over' } as const;

/** When a crop that is not picked by its size is ripe: the end of "Pick it when". */
export const ripeness = {
  hardRind: 'the rind has its full color and a thumbnail does not scratch it',
  dryStem: 'its stem dries and turns brown',
  slips: 'it comes off the vine at a light pull, netting rough and ground color tan to yellow',
  groundSpot:
    'the spot it lies on turns cream to yellow, its gloss goes and the nearest tendril is brown and dry',
} as const;

/** BUDGET.SENSITIVITY: the cell above the yields and before the prices. */
export const budgets = { corner: 'yield \\ price' } as const;

/** BEETLE.VERDICT: the verdict, then what bears on it. Never what to do: that is the label's. */
export const beetles = {
  below: 'Below the threshold: {mean} a plant, the threshold is {threshold}.',
  atThreshold: 'At the threshold: {mean} a plant, the threshold is {threshold}.',
  older: 'Plants with more than about 5 leaves stand more feeding.',
  tooFew: 'Too few plants were looked at: look at {least} or more across the field.',
} as const;

/** ROTATION.YEARS. */
export const rotation = { noneOnRecord: 'none on record' } as const;
