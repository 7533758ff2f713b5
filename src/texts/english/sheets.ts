/**
 * What the sheets say: titles, labels, headers, notes. Headers are also the names that formulas use. Long because it
 * is one list of sentences.
 */

export const sheets = {
  /** The empty sheet that a new browser workbook starts with. */
  scratch: 'Scratch',
  season: {
    sheet: 'Season',
    title: 'Season',
    lead: [
      'Everything here is read by the other sheets. Change the tinted cells; the rest follows.',
      'A frost date is a risk, not a promise. Soil decides: sow when it is warm enough, whatever the date says.',
    ],
    lines: {
      place: { label: 'Place', remark: 'The place these frost dates are for. Nothing is computed from it.' },
      year: {
        label: 'Year of the last frost',
        remark: "Checked against the dates, so that last year's dates are not left standing.",
      },
      lastFrost: {
        label: 'Last frost of spring',
        remark: 'From your own record or your weather service, with its year.',
      },
      firstFrost: {
        label: 'First frost of fall',
        remark: 'With its year: south of the equator it is in the next one.',
      },
      frostRisk: {
        label: 'Risk those dates carry',
        remark:
          '50% for a mean date: frost comes later than that in half of all springs. Read it off the table the dates came from.',
      },
      units: {
        label: 'Units',
        remark:
          '"us": ft, inches, oz, lb. "metric": m, cm, g, kg. Changed in the sheet, typed numbers mean the new units; changed in the pane, they can be converted.',
      },
      assurance: {
        label: 'Assurance of a full stand',
        remark: 'The chance that the seed given is enough. 90%: short in one plot of ten. Judgement.',
      },
      trayCulls: {
        label: 'Transplants culled',
        remark: 'Share of started transplants too weak to set out. Judgement.',
      },
      seedsPerCell: {
        label: 'Seeds a tray cell',
        remark: '1, or 2 thinned to 1. Common practice, no source.',
      },
      monoeciousFemale: {
        label: 'Female share of a monoecious plant',
        remark:
          'About half by common practice, no source; counts in older types run far lower. Put your own count here.',
      },
      pollenizerLosses: {
        label: 'Pollenizers lost',
        remark: 'Share of pollenizer plants that die or lag; more are set for it. Judgement.',
      },
      frostMargin: {
        label: 'Days clear before fall frost',
        remark: "Blank: each crop's own (tender crops should be done about 2 weeks before).",
      },
      yearCheck: { label: 'Do the dates fit the year?', remark: '' },
      frostFreeDays: { label: 'Days between the frosts', remark: 'CUCURBIT.SEASON.DAYS' },
      setOutWait: {
        label: 'Days from last frost to setting out',
        remark:
          '14 after a mean date, none when the date is as safe as 10%, in a line between (judgement); rounded up.',
      },
      sowingWait: {
        label: 'Days from last frost to first sowing',
        remark:
          '7 after a mean date, none when the date is as safe as 10%, in a line between (judgement); rounded up.',
      },
      setOut: {
        label: 'Set out transplants from',
        remark: 'CUCURBIT.DATE.SETOUT. Only into warm soil: see Soil at least in Plots.',
      },
      hardenOff: {
        label: 'Harden off from',
        remark: 'CUCURBIT.DATE.HARDENOFF. Not colder than about 60 °F (16 °C).',
      },
      firstSowing: {
        label: 'Sow outdoors from',
        remark: 'CUCURBIT.DATE.FIRSTSOWING. Only into warm soil: see Soil at least in Plots.',
      },
      longestDay: {
        label: 'Longest day',
        remark: "Sowings after it grow more slowly: the crop's fall days are added.",
      },
      spacingPerLength: {
        label: 'Inches in a foot, or cm in a metre',
        remark: 'Turns plant spacing into row length.',
      },
    },
    yearFits: 'yes',
    yearDiffers: 'The last frost is in another year: retype the dates or the year',
  },
  plots: {
    sheet: 'Plots',
    title: 'Plots',
    lead: [
      "Tinted cells, here and far right, are yours; a blank takes the crop's figure. Type a new plot under the last line.",
      "Seed is enough at the Season sheet's assurance. Dates stand on its frost dates; warm soil comes first.",
    ],
    cautions: [
      'Treated seed and bitter fruit are no food, nor feed. Sprays: the label is the law; ask your extension office.',
    ],
    mayStay: 'may stay on',
    /** A name. */
    isShared: 'shared',
    /** What FLOWER.ISOLATE calls clear. */
    isClear: 'clear',
    columns: {
      plot: { header: 'Plot', note: 'A name of your own, each used once.' },
      crop: {
        header: 'Crop',
        note: 'A type from the list; trade names such as zucchini or cantaloupe are understood.',
      },
      layout: { header: 'Layout', note: 'rows, hills or beds. Blank: rows.' },
      length: { header: 'Length', note: 'Length of the plot, along the rows. ft or m.' },
      width: { header: 'Width', note: 'Width of the plot, across the rows. ft or m.' },
      rowSpacing: {
        header: 'Row spacing',
        note: "Between rows, or between rows of hills. ft or m. Blank: the crop's.",
      },
      plantSpacing: {
        header: 'Plant spacing',
        note: "Between plants in the row. inches or cm. Blank: the crop's.",
      },
      hillSpacing: {
        header: 'Hill spacing',
        note: "Between hills along the row. ft or m. Blank: the crop's.",
      },
      plantsPerHill: { header: 'Plants per hill', note: "Left standing after thinning. Blank: the crop's." },
      bedWidth: { header: 'Bed width', note: 'For beds. ft or m.' },
      pathWidth: { header: 'Path width', note: 'Between beds. ft or m.' },
      rowsPerBed: { header: 'Rows per bed', note: 'For beds.' },
      start: {
        header: 'Start',
        note: 'seed: sown where it grows. transplant: started under cover. Blank: seed.',
      },
      germination: {
        header: 'Germination',
        note: 'Share of seeds that germinate, from the packet or your own test. Blank: the federal minimum for the crop.',
      },
      fieldEmergence: {
        header: 'Field emergence',
        note: 'Share of germinable seeds that stand in the field. Blank: no field loss.',
      },
      flowerType: { header: 'Flower type', note: 'From the packet. Blank: the usual type of the crop.' },
      pollenizerShare: {
        header: 'Pollenizer share',
        note: 'Share of all plants that are pollenizers: 1 to 3 others is 25%. Blank: 10% for gynoecious lots (common practice, no source), 25% for triploid watermelon (1:3, University of Delaware).',
      },
      daysToMaturity: { header: 'Days to maturity', note: "From the packet. Blank: the crop's." },
      harvestDays: {
        header: 'Harvest days',
        note: "First to last pick. Blank: the crop's; 0 when picked once.",
      },
      yieldPer100: {
        header: 'Yield per 100',
        note: 'Marketable lb per 100 ft of row, or kg per 100 m. Blank: the low end of the published range.',
      },
      price: {
        header: 'Price',
        note: 'Money for a lb or kg, 0 or more. Budget takes it where Prices has no price of the crop.',
      },
      startsOn: {
        header: 'Sow or set out on',
        note: 'A day of your own, for a later sowing or planting. Blank: the earliest date, from the Season sheet.',
      },
      lastCucurbits: {
        header: 'Last cucurbits',
        note: 'Year in which cucurbits of any kind last stood here, such as 2024: Notes counts the full seasons between. Blank: not known, and nothing is said of it.',
      },
      takenAs: {
        header: 'Taken as',
        note: 'The crop of the Crops sheet whose figures stand in for blanks. #N/A: the name is not known.',
      },
      plants: {
        header: 'Plants',
        note: 'Plants that fit. CUCURBIT.PLANTS.INROWS, INHILLS or INBEDS, by the layout.',
      },
      seedToSow: {
        header: 'Seed to sow',
        note: "Seeds for that many plants at the Season sheet's assurance. Rows and beds: CUCURBIT.SEED.NEEDED. Hills: hills x CUCURBIT.SEED.PERHILL. Transplants: CUCURBIT.TRAY.CELLS x seeds a cell.",
      },
      seedWeight: {
        header: 'Seed weight',
        note: "Seed to sow divided by the crop's seeds per oz or g, as CUCURBIT.SEED.WEIGHT. Counts differ by lot: weigh 100 of yours.",
      },
      startTransplants: {
        header: 'Start transplants',
        note: 'Sow under cover. CUCURBIT.DATE.STARTTRANSPLANTS',
      },
      setOutOrSow: {
        header: 'Set out or sow',
        note: 'Your day in Sow or set out on; else the earliest date, from the Season sheet. Warm soil comes first.',
      },
      soilAtLeast: { header: 'Soil at least', note: 'Soil temperature at planting depth to wait for.' },
      coverOff: {
        header: 'Cover off',
        note: 'Row cover off before the female flowers open, early rather than late. Go by the first open female flowers, not by this date. CUCURBIT.DATE.COVEROFF',
      },
      firstPick: { header: 'First pick', note: 'CUCURBIT.DATE.FIRSTPICK' },
      lastPick: {
        header: 'Last pick',
        note: 'The end of the harvest days or the day before frost. How to store fruit and how long it keeps: Crops. CUCURBIT.DATE.LASTPICK',
      },
      lastSowing: {
        header: 'Last sowing',
        note: 'Last date for seed outdoors, counted back from fall frost. CUCURBIT.DATE.LASTSOWING',
      },
      daysToSpare: {
        header: 'Days to spare',
        note: 'Between the end of the harvest days and fall frost. Negative: too short. CUCURBIT.SEASON.SPARE',
      },
      femaleShare: {
        header: 'Female share',
        note: 'Share of flowers that are female, if all plants flower equally. CUCURBIT.FLOWER.FEMALESHARE',
      },
      pollenizers: {
        header: 'Pollenizers',
        note: 'Of the plants, how many must be pollenizers. CUCURBIT.FLOWER.POLLENIZERS',
      },
      area: { header: 'Area', note: 'Length x width. sq ft or sq m.' },
      rows: {
        header: 'Rows',
        note: 'Rows planted; of hills the rows of hills; of beds all rows of all beds.',
      },
      rowLength: {
        header: 'Row length',
        note: 'Planted row in all: plants x plant spacing, or hills x hill spacing. ft or m.',
      },
      sameName: { header: 'Same name', note: 'shared: another plot has this name.' },
      keepApart: {
        header: 'Keep apart',
        note: 'From Crop and Flower type of all plots: clear, or what pollen does and what to do. CUCURBIT.FLOWER.ISOLATE',
      },
      yield: {
        header: 'Yield',
        note: 'Marketable. lb or kg. Of the whole row: among seedless melons it counts the pollenizers too. CUCURBIT.HARVEST.YIELD',
      },
      posts: {
        header: 'Posts',
        note: 'For a trellis on all of its rows, where Prices has its crop on trellis and a post spacing. CUCURBIT.SUPPLY.TRELLIS',
      },
      income: {
        header: 'Income',
        note: 'Yield x price; 0 where frost comes before the first pick. Where frost cuts the harvest short it is counted whole: Notes says so.',
      },
      assumed: {
        header: 'Assumed',
        note: 'Cells left blank: their figures are from the Crops sheet, or as said here.',
      },
      notes: { header: 'Notes', note: 'What to look at before you plant.' },
    },
    noFieldLoss: 'No field loss',
    /** Sentences of the Notes column. */
    remarks: {
      noCrop: 'Choose a crop.',
      cropUnknown: 'Crop not known: choose one from the list.',
      otherYear: '{date} is not in the season of {year}. Check the year, here and in the Season sheet.',
      wholeShare: '1 is 100% here. As a share type 0.85, in percent 85%.',
      sameName: 'Another plot has this name: give each its own.',
      layoutUnknown: 'Layout not known: choose rows, hills or beds.',
      startUnknown: 'Start not known: choose seed or transplant.',
      misfit: 'A result of this line is an error: look over what is typed in it, then Season and Crops.',
      startsEarly:
        'Starts before the date of the Season sheet: frost and cold soil are likelier. Cover it, or wait.',
      shortSeason: 'Season too short: see Days to spare. Choose a quicker type or transplants.',
      takenByFrost: 'Frost comes before the first pick: neither yield nor income of it is counted.',
      cutShort: 'Frost cuts the harvest short: yield and income are counted whole all the same.',
      sowsTooLate: 'Sown after the last date: see Last sowing.',
      belowStandard:
        'Germination below the federal standard: such seed is sold marked Below Standard. Test it.',
      pollenizerSeed:
        'Seed to sow counts the pollenizers too: for their share order seed of a seeded watermelon.',
      pollenizerYield: 'Yield is that of the whole row: the pollenizers’ share of it is seeded melons.',
      wideYield: 'Published yields differ more than threefold and the low end is used: put in your own.',
      priceUnfit: 'Price: give 0 or more, in digits alone, such as 1.20.',
      priceElsewhere: 'Budget takes the price of Prices, not this one.',
      noYield: 'A yield of 0 counts as none. A blank takes the published one, if there is one.',
      /** Before the number of them. */
      seasonsBetween: 'Full seasons since the last cucurbits, where {low} to {high} are advised: ',
      lastCucurbitsUnfit:
        'Last cucurbits must be a year before this planting, such as 2024; leave it blank where it is not known.',
      storesLong: 'Keeps for months: plan curing and a dry store, see storage in Crops.',
      noFigure: 'The reference has no {figure} for this crop: fill in {header}.',
    },
  },
  crops: {
    sheet: 'Crops',
    title: 'Crops',
    lead: [
      "These figures stand in for blanks of Plots, in the Season sheet's units. Type your own over one: all blanks follow.",
      'Sources differ: the ranges and where each comes from are on the Crop ranges sheet.',
    ],
    usual:
      'Figures used where Plots is blank: the middle of each range; the low end for yield and storage days',
    rangesSheet: 'Crop ranges',
    rangesLead: [
      'What publications say, from low to high, and where it stands.',
      '"Common practice, no source" and "judgement" are what they say; "from memory" wants checking.',
    ],
    names: 'Names that are understood',
    range: '{low} to {high}',
    practice: 'Growing notes: common practice, no source, where none is named',
    /** What each is of, and the note. */
    practiceNotes: [
      ['Vining types', '{viningRoom} ft (about 2 m) of room a plant.'],
      ['Bush types', '{bushRoom} ft (60 to 90 cm) of room a plant.'],
      ['Hills', '{hillWidth} ft (60 cm) across and {hillHeight} in (15 to 20 cm) high.'],
      ['Hills of transplants', '{hillTransplants} in a hill, about {hillTransplantGap} in (8 cm) apart.'],
      ['Sowing in pots', '{seedsPerPot} seeds to a plantable pot, {pottingDepth} in (2.5 cm) deep.'],
      [
        'Age of transplants',
        'First true leaf at about {firstTrueLeaf} weeks; about {leavesAtSettingOut} leaves at setting out.',
      ],
      ['Gynoecious seed', 'About {gynoeciousPollenizers} of a lot is monoecious seed, often dyed.'],
      [
        'Row covers',
        'Off when the first female flowers open, so that bees get in (Cornell). Parthenocarpic cucumbers may stay covered.',
      ],
      [
        'Misshapen fruit',
        'Too few visits of bees (a good cucumber takes about {visitsForFruit}: North Carolina State), drought, or beetles on young fruit.',
      ],
      [
        'Mildew',
        'Resistant types, room and air between plants, water at the soil and not over the leaves. Act on local advice.',
      ],
      [
        'Rotation',
        '{seasonsFree} full seasons free of all cucurbits (North Carolina); never two years running (Cornell).',
      ],
      [
        'Curing',
        'Pumpkin and winter squash, not acorn: {curing} days at {curingWarmth} °F (27 to 29 °C), then cool (Alabama).',
      ],
      [
        'Storage',
        'Cucumbers, pumpkin, winter squash: not below 50 °F (10 °C). Figures above; by publication in Crop ranges.',
      ],
    ],
    /** Headers of the figures, by their names in the functions. */
    traits: {
      'row spacing': 'row spacing',
      'plant spacing': 'plant spacing',
      'hill spacing': 'hill spacing',
      'hill row spacing': 'hill row spacing',
      'seeds per hill': 'seeds per hill',
      'plants per hill': 'plants per hill',
      'sowing depth': 'sowing depth',
      'seeds per weight': 'seeds per weight',
      'germination standard': 'germination standard',
      'days to maturity': 'days to maturity',
      'days counted from': 'days counted from',
      'harvest days': 'harvest days',
      'picking interval': 'picking interval',
      'fall days': 'fall days',
      'frost margin': 'frost margin',
      'flower to pick': 'flower to pick',
      'picking size': 'picking size',
      'size measured': 'size measured',
      'transplant weeks': 'transplant weeks',
      'soil minimum': 'soil minimum',
      'soil optimum low': 'soil optimum low',
      'soil optimum high': 'soil optimum high',
      'soil maximum': 'soil maximum',
      'soil at planting': 'soil at planting',
      'storage temperature': 'storage temperature',
      'storage humidity': 'storage humidity',
      'storage days': 'storage days',
      'flower type': 'flower type',
      species: 'species',
      'yield per 100': 'yield per 100',
    },
    /** Figures that are words, by the words of the functions; names of species not here are the same in every language. */
    values: {
      seed: 'seed',
      length: 'length',
      diameter: 'diameter',
      ripeness: 'ripeness',
      monoecious: 'monoecious',
      parthenocarpic: 'parthenocarpic',
      andromonoecious: 'andromonoecious',
      triploid: 'triploid',
      'Cucurbita pepo or C. maxima': 'Cucurbita pepo or C. maxima',
      'Cucurbita maxima, C. moschata or C. pepo': 'Cucurbita maxima, C. moschata or C. pepo',
      'Cucurbita pepo (small ornamental) or Lagenaria siceraria (hard-shell)':
        'Cucurbita pepo (small ornamental) or Lagenaria siceraria (hard-shell)',
    },
    noFigure: 'type your own',
    columns: {
      crop: 'Crop',
      figure: 'Figure',
      low: 'Low',
      high: 'High',
      unit: 'Unit',
      source: 'Source',
      name: 'Name',
      of: 'Of',
      note: 'Growing note',
      yieldHigh: 'yield per 100, high',
    },
  },
} as const;
