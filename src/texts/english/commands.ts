/** What the commands print. */
export const commands = {
  formula: {
    usage:
      "Usage: npm run -s formula -- '=CUCURBIT.PLANTS.DENSITY(2,36)' ... Each formula gives one JSON value a line.",
  },
  plan: {
    usage:
      'Usage: npm run -s plan -- plots.csv --last-frost 2026-05-02 --first-frost 2026-10-10 --out plan.xlsx\n' +
      '  --frost-risk 0.5   the risk those dates carry (0.5 for mean dates)\n' +
      '  --units us         us or metric\n' +
      '  --assurance 0.9    the chance that the seed given is enough\n' +
      '  --place NAME       printed on the Season sheet\n' +
      '  --replace          write over an existing file',
    badOption: '{message}\n\n{usage}',
    oneFile: 'Give one file with the plots, such as plots.csv.',
    missingOption: '{option} is missing. Give it as {example}.',
    badDate: '{option} is "{given}", which is not a date. Write it as 2026-05-02.',
    frostsReversed:
      '--first-frost ({first}) must come after --last-frost ({last}). South of the equator the first frost of fall is in the next year: give its year too.',
    notUtf8: 'the text is not UTF-8; save it as "CSV UTF-8"',
    badShare: '{option} is "{given}". Give a number between 0 and 1, such as {example}.',
    badUnits: '--units is "{given}". Give us or metric.',
    outExtension: '--out is "{given}". Give a name that ends in .xlsx.',
    cannotRead: 'The file {file} cannot be read: {reason}. Check its name and folder.',
    nothingWritten: 'Nothing was written.',
    emptyList: '{file} has no plots: give a header line and at least one line under it.',
    written: 'Wrote {file} with {count} plots.',
    replaceHint: 'Choose another name for --out, or add --replace to write over it.',
    linesToMend: '{count} to mend in {file}:',
    line: '{file}, line {line}: {problem}',
    problems: {
      empty: 'the file is empty. Give a header line and a line for each plot.',
      raggedLine:
        'the line has {found} cells and the header has {expected}. Mend the separators; the line was left out.',
      openQuote: 'a quotation mark is opened and never closed. Mend it; the line was left out.',
      duplicateHeader: 'the column "{header}" stands twice. Take one away.',
      unknownHeader: 'the column "{header}" is not one of Plots and was left out. Columns: {columns}.',
      missingHeader: 'the column "{header}" is missing. Give each plot a name.',
      notANumber:
        'column {header}: "{given}" is not a number. Type digits with a decimal point and no unit. Only this plot is spoiled.',
      notADate: 'column {header}: "{given}" is not a date such as 2026-05-02. Only this plot is spoiled.',
      sameName: 'the plot "{given}" is also on line {firstLine}. Give each its own name.',
    },
    findings: 'To look at:',
    finding: '{plot}, {header}: {text}',
  },
} as const;
