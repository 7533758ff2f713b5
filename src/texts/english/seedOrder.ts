/** The Seed order sheet. Headers are also the names that formulas use. */
export const seedOrder = {
  sheet: 'Seed order',
  title: 'Seed order',
  lead: [
    'Seed of all plots by crop. Each plot’s seed is enough by itself, so their sum is a little more than enough.',
    'Tinted cells are yours: seed on hand and its year, and under it the price list, a line for each pack on offer.',
  ],
  cautions: [
    'Treated seed is no food, feed or oil; its label says what it is treated with (7 CFR 201.31a). Obey the label.',
    'Never eat, feed or compost what is left of treated seed: ask your extension office where it goes.',
  ],
  lines: {
    seeds: { label: 'Seeds needed', remark: 'Of all crops, before what is on hand.' },
    cost: { label: 'Cost of the packs', remark: 'Of the crops that have a price: look at the next line.' },
    unpriced: {
      label: 'Crops to buy without a price',
      remark: 'Remark says why. Their seed is not in the cost.',
    },
    uncounted: {
      label: 'Plots not counted',
      remark:
        'Plots with an error or without a crop: the Plots sheet says why. Their seed is in no sum here.',
    },
  },
  noneYet: 'none yet',
  noPriceYet: 'no price yet',
  noStandard: 'none',
  noLife: 'none listed',
  columns: {
    crop: {
      header: 'Crop',
      note: 'A row for each type of the Crops sheet. Blank where no plot is planted to it.',
    },
    plots: { header: 'Plots', note: 'Plots of the crop, by the column Taken as.' },
    seedsNeeded: {
      header: 'Seeds needed',
      note: 'Sum of Seed to sow in Plots, each at the Season sheet’s assurance: together on the safe side.',
    },
    weight: {
      header: 'Weight',
      note: 'Seeds needed divided by the crop’s seeds per oz or g, as CUCURBIT.SEED.WEIGHT. Counts differ by lot: weigh 100 of yours. Blank: the Crops sheet has no count.',
    },
    germination: {
      header: 'Lowest germination',
      note: 'The lowest that a plot of the crop states. Blank: none is stated, and the plots are reckoned with the germination of the Crops sheet.',
    },
    standard: {
      header: 'Federal standard',
      note: 'Least germination of seed that is not marked Below Standard (7 CFR 201.31). Seed below it may be sold so marked. CUCURBIT.SEED.STANDARD',
    },
    onHand: {
      header: 'Seed on hand',
      note: 'Seeds that you have left. Give the year too, or they are not counted.',
    },
    packedIn: { header: 'Packed in', note: 'The year on the packet, such as 2025. Of several, the oldest.' },
    yearsLeft: {
      header: 'Years left',
      note: 'Years that such seed should still keep, by the shorter of published lives. No promise: test some before use. CUCURBIT.SEED.STORAGELEFT',
    },
    toBuy: {
      header: 'To buy',
      note: 'Seeds needed less seed on hand that has years left.',
    },
    packs: {
      header: 'Packs to buy',
      note: 'The cheapest packs of the price list that hold the seeds to buy: how many of each size. CUCURBIT.SEED.PACKLIST',
    },
    cost: { header: 'Cost', note: 'Of those packs. CUCURBIT.SEED.PACKCOST' },
    remark: { header: 'Remark', note: 'What to look at before you order.' },
  },
  units: { seeds: 'seeds', oz: 'oz', g: 'g', packs: 'packs of seeds', years: 'years' },
  remarks: {
    uncounted: 'Plots not counted: ',
    uncountedEnd: ', see Plots.',
    ofPlants: ' of the plants are pollenizers: ',
    pollenizersMixed:
      'look whether their seed is in the pack, often dyed; else order monoecious seed for them.',
    pollenizersApart: 'order their share of the seeds as a seeded watermelon instead.',
    onHandNotNumber: 'Seed on hand is not counted: give whole seeds in digits alone, 0 or more.',
    noYear: 'Seed on hand is not counted: give the year it was packed in.',
    packedUnfit:
      'Packed in: give a year in four digits, none after the year in Season; until then the seed on hand is not counted.',
    noSeasonYear: 'Seed on hand is not counted: give the year in Season.',
    outlived: 'Seed on hand has outlived its published years and is not counted: test it.',
    noLife:
      'Seed on hand is not counted: no storage life is published. Test it, and type the years you trust over Years left.',
    noPack: 'No pack is listed: add one to the price list.',
    packSize: 'No cost: in the price list give each pack its seeds, a whole number above 0.',
    packPrice: 'No cost: in the price list give each pack a price above 0, in digits alone.',
    packOther:
      'No cost: a pack of the price list holds part of a seed, or its price has over 4 decimals or is over 100,000.',
    beyondReach: 'No cost: it is worked out for up to 20 packs of a crop and 1,000,000 seeds.',
  },
  prices: {
    heading: 'Price list: a line for each pack on offer',
    columns: {
      crop: {
        header: 'Crop',
        note: 'The type or a trade name, as in Plots. Several packs of one crop take several lines.',
      },
      size: {
        header: 'Seeds in a pack',
        note: 'A whole number of seeds. A pack sold by weight: its weight times the seeds per oz or g on the label.',
      },
      price: {
        header: 'Price of a pack',
        note: 'Digits with a decimal point, such as 4.50; no currency sign, no comma. In any money, the same on all lines.',
      },
      perThousand: {
        header: 'Per 1,000 seeds',
        note: 'To compare packs. An error says what is wrong on this line. CUCURBIT.SEED.PACKCOST',
      },
      takenAs: { header: 'Taken as', note: 'The crop of the Crops sheet. #N/A: the name is not known.' },
      lot: {
        header: 'Lot or note',
        note: 'Your own words: the seller’s lot, treated or not, when it comes.',
      },
    },
  },
} as const;
