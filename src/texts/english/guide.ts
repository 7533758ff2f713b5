/**
 * The pages of the function reference, and what the crop guide says beside the figures. No part of `english`, so that
 * only those carry it that are loaded when asked for.
 */

export const guide = {
  functions: {
    /** After the id, in the title of its page. */
    pageTitle: '{id}: Cucurbit functions',
    indexTitle: 'Cucurbit functions, by task',
    indexLead:
      'A page for each worksheet function: what it asks, how it calculates, an example worked through, what it refuses, and where its figures come from.',
    conventions: [
      'Lengths are in feet and plant spacing in inches; with "metric" as the last argument in metres and centimetres.',
      'Shares are fractions or percent: 0.85 or 85%. Dates are dates.',
      'An argument in square brackets may be left out and then takes its default. Every function says what to do when an argument is missing, is an error, or is of another kind than it asks.',
    ],
    found: '{count} {count|function|functions} shown',
    all: 'All functions',
    /** In the words of the other language. */
    inOther: 'Esta página en español',
    asks: 'What it asks',
    asksNothing: 'It takes no argument.',
    optional: 'may be left out',
    gives: 'What it gives',
    example: 'An example',
    exampleGives: 'gives',
    putIntoCell:
      'To use it, copy the formula and paste it into an empty cell. Or put your own figures in from the pane: in "{heading}" press "{open}", choose {id}, select an empty cell and press "{put}".',
    working: 'The example worked through',
    notes: 'To keep in mind',
    calculation: 'How it calculates',
    /** Above what a page in another language has in English only. */
    inEnglish: 'This part is out of the comments of the code, in English only:',
    source: 'Source: {source}',
    figures: 'Sources of the figures in the example',
    refuses: 'What it refuses',
    refusesLead:
      'It answers with one of these sentences in place of a number; slanted words stand for the figures and names of the case.',
    /** No name of anything, to be refused. */
    noName: 'something else',
    cautions: 'Cautions',
    related: 'Others for the same task: {family}',
  },
  /** What stands for the values in a sentence of a refusal, by their placeholders. */
  refusedValues: {
    apart: 'apart',
    area: 'area',
    areaPerLand: 'area of an acre or hectare',
    areaPerPlant: 'area per plant',
    assurance: 'assurance',
    base: 'base',
    bedWidth: 'bed width',
    ceiling: 'ceiling',
    choices: 'choices',
    count: 'how many',
    crop: 'crop',
    day: 'date',
    days: 'days',
    decimals: 'decimals',
    diameter: 'diameter',
    error: 'error',
    firstDay: 'first date',
    firstFrost: 'first frost',
    firstPick: 'first pick',
    flow: 'flow',
    from: 'from',
    given: 'what was given',
    harvestCost: 'harvest cost',
    height: 'height',
    high: 'high',
    hillSpacing: 'hill spacing',
    id: 'function',
    kind: 'kind',
    landUnit: 'acre or hectare',
    lastDay: 'last date',
    lastFrost: 'last frost',
    least: 'the least',
    length: 'length',
    limits: 'limits',
    low: 'low',
    most: 'the most',
    name: 'input',
    nearest: 'nearest',
    needed: 'as many as needed',
    otherCount: 'how many',
    otherName: 'other input',
    packed: 'year packed',
    pastYear: 'past year',
    perHour: 'flow by the hour',
    percent: 'per cent',
    plantSpacing: 'plant spacing',
    plants: 'plants',
    price: 'price',
    replicates: 'replicates',
    riskPercent: 'risk in per cent',
    row: 'row',
    rowSpacing: 'row spacing',
    rows: 'rows',
    seasons: 'seasons',
    sharePercent: 'share in per cent',
    side: 'side',
    sign: 'sign',
    spacingUnit: 'unit of the spacing',
    tested: 'seeds tested',
    to: 'to',
    trait: 'figure',
    unit: 'unit',
    use: 'use',
    value: 'value',
    warmest: 'warmest high',
    width: 'width',
    year: 'year',
  },
  crops: {
    headings: {
      uses: 'good for',
      picking: 'pick it when',
      trouble: 'signs of trouble',
      seedLife: 'seed keeps',
      bushel: 'a bushel weighs',
      beetles: 'act at striped beetles',
    },
    uses: {
      pickles: 'pickles',
      slicing: 'slicing, fresh',
      smallSpace: 'a small space',
      underCover: 'growing under cover',
    },
    useNotes: {
      pickedYoung: 'Picked young, at the size for pickles.',
      mostlyBush: 'Most types are bushes; vining ones need more room.',
      bushOrMini: 'Bush and miniature types; others of small fruit run.',
      needsNoBees: 'Sets fruit without bees, and does better without them.',
    },
    range: '{low} to {high}',
    ready: '{size} {measured}',
    measured: { length: 'long', diameter: 'across' },
    forPickles: '{size} for pickles',
    trouble: '{sign}: {meaning}',
    troubles: {
      noEmergence: {
        sign: 'No seedlings two weeks after sowing',
        meaning:
          'the soil may be below its minimum. Measure it, dig for a seed, and sow again into soil that is warm enough.',
      },
      chilled: {
        sign: 'Seedlings stand still after cold nights',
        meaning: 'under 40 °F (4 °C) they take harm from cold, and a light frost does great damage.',
      },
      wilt: {
        sign: 'Vines wilt though the soil is moist, and striped beetles are about',
        meaning:
          'it may be the bacterial wilt that the beetles bring. Count them on plants across the field (BEETLE.VERDICT) and ask your extension office.',
      },
      noSet: {
        sign: 'Flowers open and fall, and no fruit sets',
        meaning:
          'the first flowers are male. Females carry a small fruit behind the petals, and bees must reach them, so take covers off.',
      },
      noPollenizer: {
        sign: 'No fruit sets',
        meaning:
          'it needs pollen of a seeded watermelon, about 1 pollenizer to 3 others (FLOWER.POLLENIZERS).',
      },
      misshapen: {
        sign: 'Fruit is crooked or narrow at one end',
        meaning: 'too few bees came, for a flower wants about 11 visits in its one day.',
      },
      seedyFruit: {
        sign: 'Fruit bulges, is seedy or bitter',
        meaning: 'bees brought pollen of other cucumbers. Screen it, and keep others apart (FLOWER.ISOLATE).',
      },
      hotHouse: {
        sign: 'Fewer fruits in the heat',
        meaning: 'over 95 °F (35 °C) it bears less; keep it at 65 °F (18 °C) or more, and give it air.',
      },
      stopped: {
        sign: 'Plants stop setting fruit',
        meaning: 'fruit left on the vine keeps new ones from setting, so pick all of it, oversize fruit too.',
      },
      oversize: {
        sign: 'Fruit is too large',
        meaning: 'it grows fast, so pick every 1 to 3 days.',
      },
      mildew: {
        sign: 'White powder on the leaves',
        meaning:
          'mildew. Leave room and air between plants, water the soil and not the leaves, and ask your extension office what else helps.',
      },
      bitter: {
        sign: 'Fruit tastes bitter',
        meaning: 'spit it out and throw it away. Do not save its seed.',
      },
    },
  },
} as const;
