/** What is said of a daily record of temperatures that somebody gives. */
export const record = {
  hemispheres: { north: 'north', south: 'south' },
  measures: { date: 'date', high: 'high', low: 'low' },
  and: ' and the ',
  units: { us: 'Fahrenheit', metric: 'Celsius' },
  sides: { spring: 'spring', fall: 'fall' },
  found:
    '{count} {count|day|days}, {first} to {last}, in {units} ({unitsBy}). Date from "{date}", low from "{low}"{high}.',
  highFrom: ', high from "{header}"',
  placeFound: 'Station: {place}.',
  unitsBy: {
    asked: 'as you chose',
    header: 'as the header says',
    cells: 'as its cells say',
    temperatures: 'going by the temperatures, for the header does not say',
  },
  /** By the code of the doubt. */
  doubts: {
    nothingThere:
      'There is nothing in it. Give a header line, such as Date,High,Low, and a line for each day.',
    tooManyLines: 'There are {count} lines, and {most} is the most. Give the days of one station only.',
    noHeader:
      'No line names the columns. Put one above the days, with a comma, a semicolon or a tab between the names, such as Date,High,Low.',
    headerLacks:
      'This line seems to name the columns, and none of its names is known for the {measures}. Call them Date, High and Low.',
    columnMissing:
      'No column holds the {measure}. Name it in the header, such as Low or Minimum temperature.',
    highMissing:
      'No column holds the high. Frost dates can be told from the lows alone; heat and first picks by heat cannot.',
    columnTwice:
      '"{header}" and "{otherHeader}" both look like the column of the {measure}. Rename or delete the one that is not meant.',
    linesBefore: '{count} {count|line|lines} above the header {count|was|were} passed over.',
    openQuote: 'A quotation mark is opened and never closed. Mend it.',
    raggedLine:
      'The line has {found} {found|cell|cells} and the header has {expected}. The line was left out; mend its separators.',
    mostlyRagged:
      '{count} of {lines} lines have not as many cells as the header. If the temperatures have decimal commas, export the record with semicolons or tabs between the cells.',
    otherStation:
      'This line is of station "{station}", line {otherLine} of "{otherStation}". Give the lines of one station only.',
    notADay:
      '"{given}" is no date that can be read. The line was left out; write dates as year-month-day, such as 2026-05-02.',
    noSuchDay: 'The calendar has no {given}. The line was left out.',
    dayOrMonthFirst:
      'In "{given}", as in all other dates here, either number may be the month. Write the dates as year-month-day, such as 2026-05-02.',
    dayAndMonthFirst:
      'In "{given}" the day and the month stand the other way round than in "{other}" on line {otherLine}. Write all dates as year-month-day, such as 2026-05-02.',
    tooEarly: '{given} is before 1 March 1900, where the days of spreadsheets begin. The line was left out.',
    futureDay: '{day} is still to come. The line was left out: a forecast is no record.',
    notATemperature:
      '"{given}" is no temperature. The {measure} was left empty; write digits only, without a unit or a mark.',
    estimated: '"{given}" is marked as an estimate. The {measure} was taken as it stands.',
    cellOfOtherScale:
      '"{given}" is in the other scale than {units}, which you, the header or another cell names. Bring all days into one.',
    impossible: 'No {measure} is {degrees} degrees {units} where cucurbits grow. It was left empty.',
    scalesDiffer:
      'The headers "{header}" and "{otherHeader}" name different scales. Give both temperatures in one.',
    scaleUnknown:
      'Fahrenheit or Celsius? The header does not say, and of {days} {days|day|days} the hottest has {hottest}. Say which, or write (F) or (C) into the header.',
    otherScale:
      'The hottest day of {year} has {hottest} degrees {units}, which no year has where cucurbits grow. If this year, or the whole, is in the other scale, say so or bring all into one.',
    askedScale:
      'You said {units}, and then many days of {year} would be hotter than air ever was: the hottest has {hottest}. Say the other scale, or leave it to the record.',
    monthsOfOtherScale:
      'From {from} to {to} the {measure}s are as if in the other scale: at first {mean} degrees on average, and {usual} in that month of other years. Bring all days into {units}. If they are right as they stand, say yourself that the record is in {units}.',
    otherLows:
      'The warmest night has {warmest} degrees {units}, which no year has where cucurbits grow. Choose the other scale, or bring the record into one.',
    noScale:
      'Days as hot as {hottest} are not of this earth, in Fahrenheit or in Celsius. If these are tenths of degrees, write so into both headers: High (tenths of degrees C), Low (tenths of degrees C).',
    lowAboveHigh:
      'The low ({low}) is above the high ({high}). Both were left empty: which is right is not to be known.',
    columnsSwapped:
      'In {count} of {days} lines the low is above the high. Exchange the headers of the two columns.',
    sameDayTwice: '{day} stands on line {otherLine} too, and says the same. It was taken once.',
    sameDayDiffers:
      '{day} stands on line {otherLine} too, with other temperatures. The day was left empty; delete the wrong line.',
    twoRecords:
      '{day} stands on line {otherLine} too, with other temperatures, and {count} lines are like this one. Are these two stations, or hours? Give one station, a line a day.',
    noDays: 'Under the header there is no day with a temperature. Give a line for each day.',
    otherHemisphere:
      'The warm half of the year is that of the {hemisphere}. Say that the place lies in the {hemisphere}, or look whether month and day changed places.',
    notInOrder: 'The days are not in the order of the calendar. They were sorted.',
    gap: '{count} {count|day is|days are} missing, from {from} to {to}.',
    noHigh:
      'No day has a high that can be used, so heat and first picks by heat cannot be told. Mend the column of the highs.',
    noLow: '{count} {count|day has|days have} no low, this is the first. They count as missing.',
    voidSeason:
      'The {side} of {year} does not count: ten or more days are missing where a frost would change its date.',
    fewSeasons:
      '{springs} {springs|spring counts|springs count} and {falls} {falls|fall|falls}. Of fewer than {enough} one more year can move a frost date by a week, and of one year no risk can be told. Give a longer record where there is one.',
    andMore: '{count} more of this kind.',
  },
} as const;
