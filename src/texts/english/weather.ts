/** What the Weather sheets say: titles, labels, headers, notes. Headers are also the names that formulas use. */

export const weather = {
  sheet: 'Weather',
  title: 'Weather',
  lead: [
    'Frost dates and heat out of the daily record on the sheet Weather record. Change the tinted cells; the rest follows.',
    'What happened in those years is no promise for the next. Soil decides: sow when it is warm enough.',
  ],
  lines: {
    place: {
      label: 'Record of',
      remark: 'The place of the station. Cold hollows freeze later in spring. Nothing is computed from it.',
    },
    units: {
      label: 'Temperatures in',
      remark: '"us": °F. "metric": °C. Of the record, whatever the Season sheet has.',
    },
    frostAt: { label: 'Frost at or below', remark: "In the record's degrees. Blank: 32 °F or 0 °C." },
    rule: {
      label: 'Rule of the frost dates',
      remark: '"inc" as PERCENTILE.INC, "exc" as PERCENTILE.EXC. They differ by days.',
    },
    hemisphere: { label: 'Hemisphere', remark: '"north" or "south" of the equator.' },
    crop: {
      label: 'Crop that gathers heat',
      remark: 'One of the table below, or with a base of your own any crop of Crops.',
    },
    sowing: { label: 'Sown on', remark: 'Blank: the day to sow outdoors from, on the Season sheet.' },
    base: {
      label: 'Base temperature',
      remark: "Below it nothing grows. Blank: the crop's, from the table below.",
    },
    ceiling: {
      label: 'Ceiling temperature',
      remark: 'Above it more warmth does not help. Blank: the crop\'s; "none" for none.',
    },
    method: {
      label: 'Method',
      remark: "mean, modified, sine, or reduced, which needs a ceiling. Blank: the crop's.",
    },
    heatWanted: {
      label: 'Heat wanted to the first pick',
      remark: 'Degree days from your own notes. Blank: those of the days to maturity from midsummer on.',
    },
    gap: {
      label: 'Days between midsummer sowings',
      remark: 'By the calendar; every sowing comes after as much heat as those days have. Judgement.',
    },
    soil: { label: 'Soil temperature', remark: 'At the depth of the seed. Blank: the one to wait for.' },
    firstDay: { label: 'First day of the record', remark: '' },
    lastDay: { label: 'Last day of the record', remark: '' },
    missing: {
      label: 'Days without both temperatures',
      remark: 'Between those two days. Ten in a season make its frost date void.',
    },
    seasons: {
      label: 'Years with both frost dates',
      remark: 'Their frost-free days are counted below.',
    },
    counted: {
      label: 'Seasons behind the dates',
      remark: 'Springs, or falls where they are fewer, that are whole; those without a frost count too.',
    },
    caution: {
      label: 'How far to trust the dates',
      remark:
        "Under 20 seasons one more can move a date by a week. Of one no risk can be told: the date is that season's.",
    },
    lastFrost: {
      label: 'Last frost of spring',
      remark: 'CUCURBIT.FROST.SPRINGDATE at the risk and for the year of the Season sheet.',
    },
    firstFrost: {
      label: 'First frost of fall',
      remark:
        'CUCURBIT.FROST.FALLDATE. To have Season follow: =WEATHER_LAST_FROST and =WEATHER_FIRST_FROST there.',
    },
    freeDays: {
      label: 'Days between those dates',
      remark:
        'CUCURBIT.SEASON.DAYS. As both carry the risk, not a year in the middle. "no frost date": one of them is wanting.',
    },
    least: {
      label: 'Frost-free days, least',
      remark: 'Of the years listed below. "no year counts": none of them has both frosts.',
    },
    middle: { label: 'Frost-free days, middle', remark: 'As many years had more as had less.' },
    most: { label: 'Frost-free days, most', remark: '' },
    chanceAfter: {
      label: "Frost after Season's last frost",
      remark: 'CUCURBIT.FROST.CHANCE: share of springs with a later frost.',
    },
    chanceBefore: {
      label: "Frost before Season's first frost",
      remark: 'CUCURBIT.FROST.CHANCE: share of falls with an earlier frost.',
    },
    soilUsed: { label: 'Soil temperature used', remark: 'CUCURBIT.SOIL.RANGE where it is left blank.' },
    emergence: {
      label: 'Days to emergence',
      remark:
        'CUCURBIT.EMERGENCE.DAYS. "no table": squash, pumpkin, gourd are not in it; the soil temperature is what counts.',
    },
    seedlings: {
      label: 'Share that comes up well',
      remark: 'CUCURBIT.EMERGENCE.PERCENT: normal seedlings at that temperature.',
    },
    sowingUsed: { label: 'Sowing that is compared', remark: '' },
    days: { label: 'Days to maturity', remark: 'Of the Crops sheet.' },
    baseUsed: { label: 'Base used', remark: '' },
    ceilingUsed: { label: 'Ceiling used', remark: '' },
    methodUsed: { label: 'Method used', remark: '' },
    target: {
      label: 'Heat to the first pick',
      remark:
        'Days to maturity are meant for warm weather: counted from the longest day. Judgement. "no year counts": of none is every day there.',
    },
    calendarPick: {
      label: 'First pick by the calendar',
      remark: 'CUCURBIT.DATE.FIRSTPICK, with the fall days of a late sowing.',
    },
    heatPick: {
      label: 'First pick by heat, middle year',
      remark: 'From CUCURBIT.HEAT.DATES below. "no year counts": none of them reaches it.',
    },
    heatPickEarly: { label: 'First pick by heat, earliest', remark: '' },
    heatPickLate: { label: 'First pick by heat, latest', remark: 'Of the years that reach it.' },
    lastSowing: {
      label: 'Last sowing',
      remark: "CUCURBIT.DATE.LASTSOWING with the crop's figures, before the Season's first frost.",
    },
    sowingInRecord: {
      label: 'That sowing in the record',
      remark:
        'In the last year that the record has from there to the last sowing. Its heat spaces the sowings. "not in it": the record has no such year.',
    },
    heatBetween: {
      label: 'Heat from sowing to sowing',
      remark:
        'CUCURBIT.HEAT.YEARS: that of those days from the longest day on, in the middle year. "cannot be told": see the lists below.',
    },
  },
  heatByCrop: {
    heading: 'Heat to the first pick: over the days to maturity from the longest day, in the middle year',
    crop: { header: 'Crop', note: 'Where sources differ a crop stands twice; the first counts above.' },
    publisher: { header: 'Published by', note: 'Tells the rows of a crop apart.' },
    base: { header: 'Base', note: 'Below it nothing grows.' },
    ceiling: { header: 'Ceiling', note: 'Above it more warmth does not help.' },
    method: { header: 'Method', note: 'The method of CUCURBIT.HEAT.DAY that it was published with.' },
    days: { header: 'Days', note: 'Days to maturity of the Crops sheet.' },
    heat: {
      header: 'Heat',
      note: `CUCURBIT.HEAT.YEARS over those days: the middle of the years. Degree days of the record's scale. "cannot be told": no year has all of those days, or a list below says what is wrong.`,
    },
    source: { header: 'Source', note: 'Where the base stands.' },
  },
  frostYears: {
    heading: 'Frost, year by year',
    year: {
      header: 'Year',
      note: 'Of the spring. CUCURBIT.FROST.YEARS fills this list, one formula in its first cell.',
    },
    lastFrost: {
      header: 'Last frost',
      note: '"none": it never froze. "void": ten or more days are missing where a frost could be.',
    },
    firstFrost: { header: 'First frost', note: 'Of the fall after that spring.' },
    freeDays: { header: 'Frost-free days', note: 'From the last frost to the first.' },
  },
  heatYears: {
    heading: 'Heat to the first pick, year by year',
    year: { header: 'Year', note: 'CUCURBIT.HEAT.YEARS fills this list, one formula in its first cell.' },
    heat: {
      header: 'Heat',
      note: 'Degree days over the days to maturity from the longest day on. "void": a day is missing.',
    },
  },
  picks: {
    heading: 'First pick by heat',
    year: { header: 'Year', note: 'CUCURBIT.HEAT.DATES fills this list, one formula in its first cell.' },
    date: {
      header: 'First pick',
      note: 'The day that reaches the heat. "none": not in twelve months. "void": a day is missing.',
    },
    days: { header: 'Days', note: 'From the sowing. By the calendar: the days to maturity above.' },
    noHeat: 'No heat to reach: no year of the record has all days from the longest day to the first pick.',
  },
  sowings: {
    heading: 'Sowings of equal heat',
    sown: {
      header: 'Sow on',
      note: 'CUCURBIT.HEAT.SUCCESSION fills this list, from the heat of the year above, to the last sowing.',
    },
    notInRecord: 'In no year does the record run from the sowing that is compared to the last one.',
    noHeat: 'No heat to space them by: no year of the record has those days from the longest day on.',
  },
  degreeDays: { us: '°F days', metric: '°C days' },
  none: 'none',
  noTable: 'no table',
  trust: { none: 'no season', one: 'one season only', few: 'few seasons', enough: 'enough' },
  noYear: 'no year counts',
  noFrostDate: 'no frost date',
  noSeasonDate: 'no date in Season',
  notInRecord: 'not in it',
  notTold: 'cannot be told',
  recordSheet: 'Weather record',
  recordLead: [
    'One line a day; leave a cell blank where the record has none. A day typed under the last line belongs to it.',
    'Every list on the sheet Weather follows. CUCURBIT functions say which day stands twice or has its low above its high.',
  ],
  record: {
    date: { header: 'Date', note: 'Each day once.' },
    high: { header: 'High', note: 'Highest temperature of the day. Blank where it is missing.' },
    low: { header: 'Low', note: 'Lowest temperature of the day. Blank where it is missing.' },
  },
} as const;
