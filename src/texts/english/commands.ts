/** What the commands print. */
export const commands = {
  formula: {
    usage:
      "Usage: npm run -s formula -- '=CUCURBIT.PLANTS.DENSITY(2,36)' ... Each formula gives one JSON value a line.",
    faults: {
      unknownFunction: 'There is no function {name}. {advice}',
      unknownWord: 'The formula cannot be read at "{word}". {advice}',
      missingBrackets: 'The formula cannot be read: {count} closing {count|bracket is|brackets are} missing.',
      unreadable: 'The formula cannot be read. {advice}',
    },
    near: 'Near it: {names}.',
    noneNear: 'README lists the functions by task.',
    shape:
      'Write it as =CUCURBIT.SEED.PERHILL(3,0.8), with commas between the arguments and quotation marks around text.',
  },
  plan: {
    usage:
      'Usage: npm run -s plan -- plots.csv --last-frost 2026-05-02 --first-frost 2026-10-10 --out plan.xlsx\n' +
      'Usage: npm run -s plan -- plots.csv --weather record.csv --frost-risk 0.1 --out plan.xlsx\n' +
      '  --frost-risk 0.5   the risk those dates carry (0.5 for mean dates)\n' +
      '  --weather FILE     a daily record (date, high, low) that the frost dates at that risk are taken from\n' +
      '  --year 2026        with --weather: the year of the season, else the one after the record ends\n' +
      '  --weather-units us with --weather: us (F) or metric (C), where the record does not say\n' +
      '  --hemisphere south with --weather: where the place lies, else north\n' +
      '  --units us         us or metric\n' +
      '  --assurance 0.9    the chance that the seed given is enough\n' +
      '  --place NAME       printed on the Season sheet\n' +
      '  --seed-prices FILE a price list of seed (Crop, Seeds in a pack, Price of a pack) for the Seed order sheet\n' +
      '  --prices FILE      prices of the budget: lines of Item and First, of Rate and Value, or of Crop and Price;\n' +
      '                     may be given again for another of the three\n' +
      '  --calendar FILE    the tasks as an .ics that a phone takes in, besides\n' +
      '  --language es      what the workbook says is in English (en) or Spanish (es)\n' +
      '  --replace          write over an existing file\n' +
      'A plan.xlsx of this tool can stand where plots.csv does; its season holds where no option says otherwise.',
    unknownOption: 'There is no option {option}. npm run -s plan -- --help lists them.',
    noFile: 'Give a file with the plots, such as plots.csv. npm run -s plan -- --help shows how.',
    secondFile:
      '"{given}" is one file too many. Give one, and put a name with spaces between quotation marks.',
    missingOption: '{option} is missing. Give it as {option} {example}.',
    noValueWanted: '{option} stands alone. Take "{given}" away.',
    badDate: '{option} is "{given}". Give a day of the calendar as year-month-day, such as {example}.',
    beyondMonth:
      '{option} is "{given}", and {month} has {days} days. Give a day that there is, such as {example}.',
    dateInWords: '{date} {month} {year}',
    dateTaken: '{option} {given} was taken as {date}.',
    listDateTaken:
      '{file}, line {line}: {given} was taken as {date}, and so is each date that is written so.',
    frostsReversed:
      '--first-frost ({first}) must come after --last-frost ({last}). South of the equator the first frost of fall is in the next year: give its year too.',
    frostsApart:
      '--first-frost ({first}) is {days} days after --last-frost ({last}). Check the year of each: the first frost of fall is the next one after the last frost.',
    badShare: '{option} is "{given}". Give a number above 0 and below 1, such as {example}.',
    badUnits: '{option} is "{given}". Give us (feet, inches, pounds, Fahrenheit) or metric.',
    badWeatherUnits: '{option} is "{given}". Give us (for a record in Fahrenheit) or metric (in Celsius).',
    badLanguage: '--language is "{given}". Give en (English) or es (Spanish).',
    badHemisphere: '--hemisphere is "{given}". Give north or south.',
    badYear: '{option} is "{given}". Give a year from 1900 to 2199, such as {example}.',
    datesOrWeather:
      '--weather gives both frost dates out of the record. Leave {option} out, or leave --weather out and give both dates.',
    noWeather: '{option} goes with --weather. Leave it out, or give the record as --weather record.csv.',
    weatherLine: '{file}, line {line}: {sentence}',
    weatherRefused: 'No frost date can be taken from {file}: {problem}',
    weatherApart:
      'At a risk of {risk} there are {days} days from the last frost ({last}) to the first ({first}) in {file}, more than a year: so rare is frost there. Give a smaller risk, or both dates without --weather.',
    weatherFound: '{file}: {found}',
    weatherDates:
      'Frost at a risk of {risk}: last {last}, first {first}, out of {springs} {springs|spring|springs} and {falls} {falls|fall|falls}.',
    yearTaken: 'For {year}, the year after the record ends; --year gives another.',
    calendarExtension: '--calendar is "{given}". Give a name that ends in .ics.',
    calendarWritten: 'Wrote {file} for a phone: taken in again, a task replaces itself.',
    calendarEmpty: 'The calendar has no task, so {file} was not written.',
    calendarNotWritten: 'The plan is written, but not its calendar. {problem}',
    outExtension: '--out is "{given}". Give a name that ends in .xlsx.',
    notUtf8: 'The text of {file} is neither UTF-8 nor UTF-16. Save it as "CSV UTF-8".',
    /** By the machine's code. */
    cannotRead: {
      ENOENT: 'There is no file {file}. Check its name and folder.',
      EACCES: 'You may not read {file}. Ask its owner, or copy it to a folder of your own.',
      EISDIR: '{file} is a folder. Give the file with the plots in it.',
      other: 'The file {file} cannot be read: {reason}. Copy it elsewhere and try again.',
    },
    nothingWritten: 'Nothing was written.',
    tooManyLines: '{file} has {count} lines, and a plan takes at most {most}. Divide it.',
    emptyList: '{file} has no plots: give a header line and at least one line under it.',
    leftOut: 'The sheet computes these itself, so they were left out: {headers}.',
    typedOver:
      '{count} {count|figure|figures} of Crops {count|is|are} other than ours and {count|was|were} taken over as typed.',
    written: 'Wrote {file} with {count} {count|plot|plots}.',
    replaceHint: 'Or add --replace to write over it.',
    toMend: '{count} {count|thing|things} to mend in {file}:',
    line: '{file}, line {line}{problem}',
    cell: '{file}, sheet {sheet}, cell {cell}{problem}',
    problems: {
      empty: ': the file is empty. Give a header line and a line for each plot.',
      raggedLine:
        ': the line has {found} cells for {expected} {expected|column|columns}. Mend the separators: one inside a name or a number makes two cells of one. Write 0.04 instead of 0,04, and a name with a comma in quotation marks. The line was left out.',
      longCell:
        ', column {column}: {length} characters, and a cell takes at most {most}. Shorten it; the line was left out.',
      openQuote: ': a quotation mark is opened and never closed. Mend it; the line was left out.',
      duplicateHeader:
        ': columns {firstColumn} and {column} both have the header "{header}". Take one away or rename it.',
      unknownHeader: ': the column "{header}" is not one of Plots and was left out. {advice}',
      unnamedColumn: ': column {column} has no header and was left out. Give it one, or empty it.',
      missingHeader: ': the column "{header}" is missing. Give each plot a name.',
      noName: ', column {header}: the plot has no name. Give each plot a name of its own.',
      sameName: ', column {header}: "{given}" is also on line {firstLine}. Give each plot its own name.',
      notAChoice: ', column {header}: "{given}" is not known. {advice} {spoiled}',
      notANumber:
        ', column {header}: "{given}" is not a number. Type digits only, with a decimal point and no unit. {spoiled}',
      commaInNumber:
        ', column {header}: the comma in "{given}" is in the way. Write thousands without a mark (1000) and decimals with a point (0.85). {spoiled}',
      maybeThousands:
        ', column {header}: "{given}" may mean thousands. Write thousands without a mark (1234), and three decimals with a 0 after them (1.2340). {spoiled}',
      currencySign:
        ', column {header}: take the currency sign out of "{given}"; write thousands without a mark (1000) and decimals with a point (4.50), and nothing else. {spoiled}',
      outOfRange: ', column {header}: {given} does not fit. It must be {limits}. {spoiled}',
      notWhole: ', column {header}: {given} is not a whole number. Round it. {spoiled}',
      percentForShare: ', column {header}: write {given} percent as {given}% or {fraction}. {spoiled}',
      notADate: ', column {header}: "{given}" is not a date such as 2026-05-02 or 14 Jun 2026. {spoiled}',
    },
    spoiled: 'Only this plot is spoiled.',
    noPriceTable:
      '{file} has none of the columns {headers}. Give a header line that begins with one of them, and under it the names as they stand in the Prices sheet.',
    sameList: '{file} has a column {header} as {other} has. Make one list of the two.',
    noPrices: '{file} has no price: give a header line and at least one line under it.',
    emptyPriceList:
      '{file} has no packs: give a header line with Crop, Seeds in a pack and Price of a pack, and under it a line for each pack.',
    /** In place of what is said of a list of plots. */
    seedPrices: {
      spoiled: 'Until then the packs of this crop are not worked out.',
      noName: 'pack without a crop',
      problems: {
        empty:
          ': the file is empty. Give a header line with Crop, Seeds in a pack and Price of a pack, and under it a line for each pack.',
        unknownHeader: ': the column "{header}" is not one of the price list and was left out. {advice}',
        missingHeader: ': the column "{header}" is missing. Give each pack its crop.',
      },
    },
    prices: {
      spoiled: 'Until then it counts as blank.',
      noName: 'line without a name',
      see: 'The Prices sheet lists the names.',
      problems: {
        empty: ': the file is empty. Give a header line and a line for each price.',
        unknownHeader:
          ': the column "{header}" is not one of this table of Prices and was left out. {advice}',
        noName: ', column {header}: the line has no name. Give the one that stands in the Prices sheet.',
        sameName:
          ', column {header}: "{given}" is also on line {firstLine}, and the first of them counts. Take one away.',
      },
    },
    near: 'Near it: {names}.',
    choose: 'Choose one of: {names}.',
    columns: 'Columns: {names}.',
    seeCrops: 'The Crops sheet lists the names.',
    finding: ', {plot}, {header}: {text}',
    noName: 'plot without a name',
    findings: 'To look at:',
  },
} as const;
