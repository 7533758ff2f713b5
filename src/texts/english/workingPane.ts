/** What the task pane says of how a figure comes about. */
export const workingPane = {
  working: {
    heading: 'How a figure comes about',
    lead: 'Select a cell: each function of this add-in in it is shown with what went in, step by step.',
    summary: 'Show the working of the selected cell',
    reading: 'Reading the cell…',
    nothingSelected: 'Select a cell that uses one of these functions.',
    notOurs: '{cell} uses none of these functions.',
    /** When another cell was shown before. */
    notOursKept: '{cell} uses none of these functions. This is still the working of {kept}.',
    unreadable:
      'The formula in {cell} is written in a way that cannot be read here, so its working is not shown. Put the function into a cell of its own.',
    failed: 'The working could not be read. {problem}',
    noFunctions: 'The functions are not loaded yet. Wait a moment, then select the cell again.',
    announced: 'Working of {name}',
    /** Of a problem of a homework, or of a formula that checks an answer. */
    tellsAnswer: 'The working of {name} tells the right answer.',
    filledBy: '{cell} is a part of the list that the formula in {origin} gives.',
    offer: 'Show the working of {name}',
    shown: '{cell} shows',
    asks: 'Problem {position}',
    blank: 'nothing',
    another:
      'Worked out here it is {result}. The cell may not be calculated yet, or an input was changed a moment ago.',
    call: {
      notAsked: '{id}: the formula does not come to this part as things stand',
      askedUnknown: 'Whether the formula comes to this part cannot be told here.',
      unknown: 'There is no function of that name.',
      gives: 'Gives',
      refuses: 'Refuses',
      answer: '{answer} {unit}',
    },
    inputs: {
      heading: 'What went in',
      leftOut: 'left out',
      blank: 'blank',
      notKnown: 'not worked out here',
      written: 'written in the formula',
      /** A sum out of numbers alone. */
      sum: 'worked out from {text}',
      given: 'what {functions} gives',
      ofColumn: '{sheet} {cell}, {label}',
      ofCells: '{sheet} {cell}',
    },
    steps: {
      heading: 'Steps',
      none: 'This is looked up, not calculated: there are no steps.',
      stopped: 'Steps up to the refusal',
      putIn: 'with {numbers}',
      rounded: '{answer}, {rounding}',
    },
    assumed: { heading: 'Assumed, because it was left out', line: '{title}, {value}: {ground}' },
    remarks: { heading: 'Notes' },
    sources: { heading: 'Source' },
    effects: {
      heading: 'What would change it most',
      lead: 'Each input alone a tenth more and less, whole numbers by the nearest whole step, years by one, dates by a week, temperatures by a degree, and none further than it may go. Of a range each number at once. The order is by what a tenth does; of dates, years and temperatures, by what their step does.',
      ofList: 'The answer is a list: told is the last row that would be another one.',
      ofWhole: 'Behind it stands what the whole formula would give, all else in it as it is now.',
      change: '{given} ({step}) gives {answer}',
      changeOfRange: '{step} gives {answer}',
      whole: '{change}, the whole formula {whole}',
      unvaried: 'There is no number and no date among the inputs that could be a little more or less.',
      nothing: 'It would stay the same with a little more or less of:',
      notVaried: {
        word: 'Not varied, for words are not more or less:',
        dayOfRecord: 'Not varied, for they only say which day each reading is of:',
      },
    },
    around: {
      heading: 'What the formula makes of it',
      line: '{text} gives {value}',
    },
    notFollowed: {
      heading: 'Not followed here',
      advice: 'To see the rest, put such a part into a cell of its own and point the formula at that cell.',
      function: '{text}: worked out by the spreadsheet program.',
      notation:
        '{text}: a way of writing that is not followed, such as a power, a spilled range or another workbook.',
      name: '{text}: names no cells of this workbook.',
      table: '{text}: no such table or column here.',
      list: '{text}: several cells or values where the formula can use only one at a time. Name a single cell in its place.',
      tooMany: '{text}: too many cells to read here.',
    },
    goneThere: 'The pane could not go there. {problem}',
  },
};
