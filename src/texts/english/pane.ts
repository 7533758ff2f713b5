/** What the task pane says: one long list of sentences. */
import { guidePane } from './guidePane';
import { plotsPane } from './plotsPane';
import { weatherPane } from './weatherPane';
import { workingPane } from './workingPane';

export const pane = {
  ...guidePane,
  ...plotsPane,
  ...weatherPane,
  ...workingPane,
  title: 'Cucurbit planning',
  /** Where the page has no other way out of the grid, which keeps Tab for its cells. */
  keys: 'F6 leads from the grid to this pane and back. Ctrl+Z undoes in both, but in a text field only its text.',
  language: {
    /** In its own words, for those who understand no others. */
    other: 'Todo en español',
    tag: 'es',
    /** In place of all sections. */
    sheetsInOther:
      'The sheets of this workbook are in Spanish, and the pane finds its way in them in Spanish only. Take Spanish with the button above, or open another plan.',
    notKept:
      'This browser keeps nothing for this page, so the language cannot be chosen. Allow it to keep site data and try again.',
  },
  /** Names of the two parts of a page of our own. */
  regions: { grid: 'Workbook', pane: 'Task pane' },
  /** Names the list of links to the sections. */
  parts: 'Parts of this pane',
  /** Until the workbook is there, and when it does not come. */
  opening: {
    waiting: 'Connecting to Excel…',
    slow: 'Excel has not answered yet. Wait a little longer. If nothing comes, check the internet connection and try again.',
    again: 'Try again',
    reasons: {
      blocked:
        'A file that every add-in for Excel needs could not be loaded from appsforoffice.microsoft.com. Check the internet connection; in an office, ask whoever runs the network to allow that address. Then try again. Your sheets are as you left them.',
      outside:
        'This page is part of an add-in and works inside Excel only. In Excel, the button "Plan cucurbits" on the Home tab opens it. How to add it to Excel stands in the file README.md of this project.',
      old: 'This Excel is too old for the pane. Use Excel on the web, Excel for Microsoft 365, or Excel 2021 or later.',
    },
  },
  /** A change of an earlier session that was left half done. */
  cutOff: {
    lead: '"{action}" was cut off half-way the last time. What stood in the cells before is kept in this workbook. Put it back before you go on: what was typed into the same cells since is then gone.',
    put: 'Put it back',
    leave: 'Leave it for now',
    working: 'Putting it back…',
  },
  reading: 'Reading your plan…',
  /** A heading, while the figures under it are older than the sheet. */
  calculating: '{heading}: calculating…',
  notRead: 'The sheets could not be read. {problem}',
  readAgain: 'Read the sheets again',
  /** Names of changes in the list of what can be undone. */
  undo: {
    season: 'Put the season into the sheet',
    formula: 'Put a formula into a cell',
    sheets: 'Fill the sheets',
    formulas: 'Enter our formulas again',
    copy: 'Make a values-only copy',
    addPlot: 'Add a plot',
    pastePlots: 'Paste plots',
    weather: 'Put a record into the Weather sheets',
    calendar: 'Make the calendar',
    homework: 'Make homework',
    weatherChoices: 'Change the Weather sheet',
    follow: 'Have Season follow the record',
    succession: 'Sow a plot again',
    putPlot: 'Change a plot',
    copyPlot: 'Duplicate a plot',
    movePlot: 'Move a plot',
    removePlot: 'Remove a plot',
  },
  /** Said of Ctrl+Z and Ctrl+Y; {title} is one of the above. */
  undone: {
    undo: {
      named: 'Undone: {title}.',
      typed: 'Undone in the sheets.',
      none: 'There is nothing to undo.',
    },
    redo: {
      named: 'Done again: {title}.',
      typed: 'Done again in the sheets.',
      none: 'There is nothing to do again.',
    },
  },
  /** Only in a page of our own. */
  plan: {
    heading: 'Your plan',
    keeping: {
      kept: 'Kept in this browser as you type, last at {at}.',
      otherTab:
        'This plan is open in another tab, which keeps it. Changes in this tab are not kept: close it, or save it as .xlsx.',
      otherTabClosed:
        'The other tab is closed, and changes in this tab are not kept yet. Open what the other tab kept; what is in this tab is then the plan before.',
      storageFull:
        'This browser has no room left, so the latest changes are not kept. Save the plan as .xlsx, then clear what other pages keep in this browser.',
      brokenOff:
        'This browser broke off as it kept the latest changes, so they are not kept. Save the plan as .xlsx, then load this page again.',
      noStorage:
        'This browser keeps nothing for this page: it may be a private window. Save the plan as .xlsx before you close it.',
    },
    demo: 'This garden is invented, to look around in. Type over it, or start with an empty plan below.',
    unreadable:
      'The plan kept in this browser could not be opened: it is damaged, or a newer version of this page made it. It was put aside, not thrown away: see below. This is the invented garden.',
    save: 'Save as .xlsx',
    fileName: 'cucurbit-plan.xlsx',
    fileHelp:
      'The file holds the season, the plots, prices and packs, the calendar with your notes, the daily record with what the Weather sheet asks, and the crop figures that you typed over ours, all computed anew. It does not hold pictures, sheets of your own, nor what you typed over a formula in Plots.',
    saving: 'Writing the file…',
    saved: 'Saved as a file, where this browser puts what it downloads.',
    ownSheets: 'Not in it: {sheets}.',
    ownColumns: 'Not in it, for it is a column of your own: {columns}.',
    ownColumn: '{header} in {sheet}',
    typedOver: 'Not in it, for it is typed over a formula: {cells}.',
    typedCell: '{header} of {plot}',
    noPlan: 'There is no sheet of ours in this workbook, so there is nothing to save. Fill the sheets first.',
    open: 'Open a plan',
    opening: 'Reading the file…',
    opened:
      '{file} is open, with {count} {count|plot|plots}. What was open before can be brought back below.',
    tooManyPlots:
      '{file} has {count} plots, and this page takes {most}. Divide it, or let npm run plan write a workbook from it.',
    more: 'And {count} more of the kind.',
    take: 'Open what the other tab kept',
    tookOver: 'This is what the other tab kept. From now on this tab keeps it.',
    notTaken: 'Another tab has it open again, and keeps it.',
    aside: {
      there:
        '{count} {count|plan|plans} kept in this browser could not be opened and {count|is|are} put aside. Try again once this page has been renewed, or save {count|it|them} as {count|it is|they are} kept, for somebody who can mend {count|it|them}.',
      save: 'Save what was put aside',
      fileName: 'cucurbit-plan-put-aside.json',
      open: 'Try to open it again',
      opened: 'What was put aside is open. What was open before can be brought back below.',
      still:
        'What was put aside still cannot be opened. It stays put aside; save it, so that it is not lost with what this browser keeps.',
    },
    again: 'Start again',
    againHelp:
      'Another plan in place of this one. This one can be brought back until the next plan takes its place.',
    demoAgain: {
      button: 'The invented garden',
      done: 'The invented garden is open. What was open before can be brought back below.',
    },
    emptyAgain: {
      button: 'An empty plan',
      done: 'An empty plan is open: give the frost dates, then type a line for each plot in Plots. What was open before can be brought back below.',
    },
    ask: 'Put this plan away? It can be brought back, until the next one is put away. What can be undone now cannot be undone then.',
    yes: 'Yes: {action}',
    no: 'No, go on with this one',
    back: 'Bring back the plan before',
    broughtBack: 'The plan before is open again.',
  },
  season: {
    heading: 'Season',
    lead: 'The figures that every sheet reads. Change them here or in the sheet; one follows the other.',
    seldom: 'Seldom changed',
    put: 'Put into the sheet',
    back: 'Drop my changes',
    noSheet: 'There is no Season sheet yet. "{fill}" below makes it with these figures.',
    damaged: 'The Season sheet cannot be read, so nothing can be put into it from here.',
    percent: '%',
    choose: 'choose',
    inSheet: 'The sheet says {value}. Yours is not in it yet.',
    inSheetBlank: 'The sheet is blank here. Yours is not in it yet.',
    follows: 'From the Weather sheet, at the risk below. Type a date to have that instead.',
    results: 'What follows from it',
    errorWord: 'Error',
    nothingDiffers: 'The sheet says the same already. Nothing was written.',
    written: 'Put into the sheet: {labels}.',
    kept: 'Left alone, for a formula stands there: {labels}. To replace it, type over it in the sheet.',
    dropped: 'Your changes were dropped.',
    toMend: 'Nothing was written. Mend the {count|marked field|marked fields} first.',
    otherMeanwhile:
      'Nothing was written. The sheet was changed in the same place meanwhile: see the marked fields, then put yours in again.',
  },
  /** A name of the trade in a list to choose from. */
  takenAs: '{name} (taken as {crop})',
  /** A word of the language, and what stands for it in the cell. */
  choice: '{word} ({choice})',
  /** What is wrong with a field, and what to do. */
  wrong: {
    notADate: 'This is not a whole date. Give day, month and year.',
    notANumber:
      '"{given}" is not a number. Type digits only, with no unit and no currency sign: thousands without a mark (1000), decimals with a point (4.50).',
    notWhole: '{given} is not a whole number. Round it.',
    notAChoice: 'The sheet says "{given}". Choose one of: {choices}.',
    notKnown: '"{given}" is not known. Choose one from the list.',
    notKnownNear: '"{given}" is not known. Near it: {names}. Or choose one from the list.',
    outOfRange: '{given} does not fit. It must be {limits}.',
    shareForPercent: 'This field is in percent: for {given} as a share, type {percent}.',
    sheetDate: 'The sheet says "{given}", which is not a date. Give day, month and year.',
    sheetError: 'The sheet has an error here: {given}. Give a value in its place.',
    frostsReversed:
      'The first frost of fall ({firstFrost}) must come after the last frost of spring ({lastFrost}). South of the equator it is in the next calendar year: type its year too.',
    frostsApart:
      'The frosts are {days} days apart, more than a year. Check the year of each: one season lies between them.',
  },
  sheets: {
    heading: 'Sheets',
    lead: 'Makes the sheets that are missing and renews the formulas of those that are there. What you typed stays.',
    fill: 'Fill the sheets',
    refresh: 'Refresh the sheets',
    missing: 'not there yet',
    notAsked: 'not there; made when it is asked for',
    there: 'in this workbook',
    thereAs: 'in this workbook, called "{name}"',
    locked: 'in this workbook, but protected',
    progress: 'Filling the sheets',
    working: 'Working on the sheets…',
    workedPercent: 'Working on the sheets: {percent} % done.',
    made: 'Made: {sheets}.',
    madeNext: 'Next: type a line for each plot in {sheet}.',
    madeNextDates:
      'Next: give these above, for no date can be worked out without them: {labels}. Then type a line for each plot in {sheet}.',
    refreshed: 'Refreshed: {sheets}.',
    kept: '{count} {count|cell holds|cells hold} something typed over a formula and {count|was|were} left alone.',
    gone: 'No longer there: {rows}. If they are wanted, undo what removed them; or delete the sheet and fill the sheets again.',
    goneRow: '{row} in {sheet}',
    goneMore: '{more} more',
    seasonFirst: 'Nothing was filled. Mend the marked fields of the season first.',
  },
  tools: {
    heading: 'Repair, and hand on',
    formulas: {
      button: 'Enter our formulas again',
      help: 'For cells that say #NAME?: they were calculated or saved where these functions were not known. Every formula that uses them is entered again, on your own sheets too. Nothing else is touched.',
      working: 'Entering the formulas…',
    },
    entered: '{count} {count|formula was|formulas were} entered again. Nothing else was touched.',
    noneToEnter: 'No formula in this workbook uses our functions, so none was entered.',
    enteringCut: 'Not every formula could be entered again; the others are as they were. {problem}',
    copy: {
      button: 'Make a values-only copy',
      help: 'For somebody without this add-in: beside each of our sheets a new one with its values, dates and notes, and without a formula. Your sheets stay as they are.',
      working: 'Copying the values…',
    },
    copyName: '{sheet} values',
    copyLine:
      'Values only, from the figures of {day}. Nothing on this sheet calculates: a change in one cell changes no other.',
    copied: 'Made: {sheets}. Later changes do not reach {made|it|them}.',
    copiedErrors:
      '{count} {count|cell holds an error and was|cells hold an error and were} copied as such: see "To look at".',
    nothingToCopy: 'There is no sheet of ours in this workbook yet. Fill the sheets first.',
    copyUnsettled:
      'Nothing was copied, because {cells} {count|is|are} still being calculated. Wait until {count|it is|they are} done, then try again.',
    andMore: ' and {more} more',
    leftLocked: 'Protected, and so left alone: {sheets}. Take the protection off, then try again.',
  },
  calendar: {
    heading: 'Calendar',
    lead: 'The work on every plot by date, and the weeks of the season in bars. What you typed into Done and My note stays.',
    noSheets: 'Its sheets are not there yet: "{fill}" above makes them.',
    unreadable: 'The calendar cannot be read: mend what is said at the top first.',
    notMade: 'Not made yet. Fill in your plots, then make it.',
    current: 'It says what Plots says now.',
    outdated: 'Plots changed since the calendar was made, or rows of it were changed. Make it anew.',
    make: 'Make the calendar',
    again: 'Make the calendar anew',
    working: 'Making the calendar…',
    tasks: {
      heading: 'Tasks in the sheet',
      help: 'Press a task to see it in the sheet, where you type into Done.',
      all: 'all',
      thisWeek: 'this week ({monday})',
      count: '{shown} of {count} {count|task|tasks}',
      first: 'The first {shown} of {count} {count|task|tasks}',
      more: 'Choose a plot, a crop or a week for the others.',
      days: '{date} to {until}',
      separator: ' · ',
      done: 'Done: {done}',
      nameless: 'A row without date, plot and task',
    },
    file: {
      button: 'Calendar file for a phone (.ics)',
      help: 'Send it to your phone or open it in a calendar program. Taken in again later, a task replaces itself. Inside a spreadsheet program not every window lets a page hand out a file: then open the plan in a browser.',
      working: 'Writing the calendar file…',
      saved: 'The file is where your browser puts what it downloads.',
      name: 'calendar.ics',
    },
    unsettled:
      'Nothing was made, because {cells} {count|is|are} still being calculated. Wait until {count|it is|they are} done, then try again.',
  },
  findings: {
    heading: 'To look at',
    headingCount: 'To look at ({count})',
    selected: 'Selected cell {cell}: {message}',
    circle:
      'This formula, or one that it reads, leads back to its own cell, so it has no result. Let one of them read other cells.',
    noMessage:
      '{error}. If the program says no more at the cell, a cell that it reads is in error, or its formula was changed.',
    stray:
      'Row {row} of {sheet} is not in the table, so nothing is computed for it. If it is a plot, move it up under the last line.',
    errors: 'Errors',
    remarks: 'Remarks',
    group: '{heading} ({count})',
    item: '{header}: {text}',
    unnamedRow: 'Row {row}, no name',
    nothing: 'Nothing to look at: no error, no remark.',
    noSheet: 'Errors and remarks on your plots will stand here once the sheets are filled.',
    more: 'and {count} more. The first {shown} are shown.',
    announceNothing: 'Nothing to look at.',
    announce: 'To look at: {errors} {errors|error|errors}, {remarks} {remarks|remark|remarks}.',
    unsettled:
      '{count} {count|cell is|cells are} still being calculated. The list follows when {count|it is|they are} done.',
    goneThere: 'The cell could not be shown. {problem}',
  },
  homework: {
    heading: 'Homework',
    lead: 'Problems to practice on, on a sheet that says what is right and where somebody may have slipped. The same number and units give everybody the same problems.',
    question: 'Make a sheet of problems',
    what: {
      label: 'What to make',
      help: 'A sheet of its own each time: one with answers on it stays as it is.',
      choices: ['the homework', 'the key, for the teacher'],
    },
    number: { label: 'Number of the homework', help: 'From 1 to 9999.' },
    count: { label: 'How many problems', help: 'From 1 to 100.' },
    units: { label: 'Units of the problems', help: 'us: ft, in, lb. metric: m, cm, kg.' },
    make: 'Make the sheet',
    wanted: 'Fill this in.',
    working: 'Making the sheet…',
    made: 'Made: {sheet}, {count} {count|problem|problems}. Type the answers into Answer.',
    keyMade: 'Made: {sheet}, the answers to {count} {count|problem|problems}. It holds values only.',
  },
  cautions: {
    heading: 'Before you sow, spray, eat or can',
  },
  /** Why the spreadsheet program refused, and what to do. */
  problems: {
    sheetNameTaken: 'There is a sheet called "{sheet}" already. Rename it, then try again.',
    noSuchSheet: 'The sheet "{sheet}" is gone. Undo its removal, or fill the sheets again.',
    noSuchTable:
      'The table "{table}" is gone. Undo its removal, or delete its sheet and fill the sheets again.',
    nameTaken:
      'The workbook uses the name "{name}" for something else. Rename yours in the list of names, then try again.',
    tableNameTaken: 'The workbook has another table called "{table}". Rename that table, then try again.',
    changedMeanwhile: 'The sheet "{sheet}" was changed meanwhile. Finish typing in it, then try again.',
    sheetLocked: 'The sheet "{sheet}" is protected. Take the protection off, then try again.',
    cellsInTheWay: 'Cell {cell} of "{sheet}" is in the way. Move what stands there, then try again.',
    sheetDamaged:
      'A part of the sheet "{sheet}" is gone: "{missing}". Undo what removed it. Or copy what you typed elsewhere, delete the sheet and fill the sheets again.',
    columnGone:
      'The table in the sheet "{sheet}" has no column "{missing}": it was deleted or renamed, or an older version made the sheet without it. Undo that if you can. Else where the pane has Save as .xlsx, save the plan and open that file, which gives it every column; in Excel, type {missing} right beside the last header of the table, and refresh again.',
    workbookLocked:
      'The workbook is protected, so no sheet can be added. Take the protection of its structure off, then try again.',
    notWritable:
      'The workbook cannot be written to. It is protected or open for reading only: take the protection off or save a copy, then try again.',
    daysFrom1904:
      'This workbook counts its days from 1904: our dates would be four years and a day off in it. Use a new workbook. Or switch that off in this one (File, Options, Advanced, "Use 1904 date system"; on a Mac Preferences, Calculation), look over the dates that you typed, for they move by as much, and try again.',
    cellBeingEdited: 'A cell is being edited. Press Enter or Esc, then try again.',
    noAnswer: 'The spreadsheet program does not answer. Check the connection, then try again.',
    notInFront: 'Another workbook is in front. Click into a cell of this one, then try again.',
    changedByOthers: 'The workbook was changed by somebody else at the same time. Try again.',
    cellsJoined:
      'A filter, merged cells or a pivot table are in the way. Clear the filter, unmerge the cells or move the pivot table, then try again.',
    tooLarge:
      'That is more than the spreadsheet program takes at once. Close other workbooks and try again; or divide a long list of plots between two workbooks.',
    programTooOld: 'This version of the spreadsheet program is too old for that. Update it, then try again.',
    cutOff:
      '"{action}" was cut off half-way. What stood there before is kept in the workbook: reopen this pane and put it back.',
    fileExists: 'There is a file {file} already. Choose another name.',
    fileNotWritable:
      'The file {file} cannot be written. Check that its folder is there, that you may write in it, and that no other program has the file open.',
    fileDamaged:
      'The file cannot be read: it is damaged, or not whole. Open it in a spreadsheet program, save it as .xlsx under another name, and try that.',
    fileTooBig:
      'The file holds far more than a plan, so it was not read to its end. Copy the sheets of the plan into a workbook of their own, and try that.',
    fileLongList:
      'The file is far larger than a list of plots or a record of days, so it was not read. Keep the lines and the columns that are wanted, delete the others, save it as CSV, and try that.',
    fileEmptyRows:
      'A sheet of the plan in this file goes on far below the last filled row, mostly with empty rows that were given a colour, a border or a format, so it was not read to its end. Open the file in its program, mark all rows below the last filled one, down to the end of the sheet, delete them, save the file, and try again.',
    fileEncrypted:
      'The file is locked with a password. Open it in its program, save it without the password, and try again.',
    fileOtherKind: 'The file is of the kind {kind}. Open it in its program, save it as .xlsx, and try that.',
    fileNoWorkbook:
      'The file is no workbook, whatever its name says. Give an .xlsx that was saved here or written by npm run plan, or a list of plots as CSV.',
    fileNotOurs:
      'The workbook has no sheet of this tool. Give an .xlsx that was saved here or written by npm run plan, or a list of plots as CSV.',
    fileOtherLanguage:
      'The sheets of this plan are in Spanish. Take Spanish first ("Todo en español" at the top of the pane, or --language es of npm run plan), and open it then.',
    failed:
      'The spreadsheet program could not finish "{action}". Leave the cell you are typing in, then try again.',
    unforeseen:
      'Something went wrong that was not foreseen. Try again; if it comes back, reopen the workbook.',
  },
  nothingChanged: 'Nothing was changed.',
  detail: 'The program said: {detail}',
} as const;
