/** What the pane says of the function reference and the crop guide. */

export const guidePane = {
  /** Of what is loaded when it is first asked for. */
  fetched: {
    fetching: 'Fetching it…',
    failed: 'It could not be loaded. Check the connection, then try again.',
  },
  functionList: {
    heading: 'Functions',
    lead: 'All worksheet functions: what each asks and gives, and a formula to begin with.',
    open: 'Show the functions',
    search: 'Search the functions',
    searchHelp:
      'A word of your own, such as spacing, bees or last frost. Arrow keys lead through the list; Enter opens the first.',
    /** Words of a search that say nothing, unless nothing else is said. */
    ignored:
      'a an and are at be by can do does for from have how i if in is it many me much my need of on or our should that the there to we what when where which will with you',
    byName: 'Found by name',
    none: 'Nothing found for "{searched}". Try fewer or other words, such as germination, how many packs, last frost or jars; or empty the field to see all by task.',
    count: '{count} {count|function|functions}',
    all: 'All functions',
    page: 'Everything on {id}, with an example worked through',
    optional: '{name} (may be left out)',
    take: 'Take selection',
    fields:
      'The fields hold an example. Type your own, such as 85%, 2026-05-02, cucumber or B2; or select cells and take them.',
    put: 'Put into the selected cell',
    putWhere: 'Select an empty cell first. What stands in a cell is never replaced.',
    written: '{formula} stands in {cell} now.',
    noCell: 'Nothing was written. Select one empty cell in a sheet, then try again.',
    manyCells:
      'Nothing was written. {cells} is more than one cell: select a single empty one, then try again.',
    occupied: 'Nothing was written, for {cell} is not empty. Select an empty cell, then try again.',
    wanted: 'Nothing was written. Fill in {name}.',
    refused: 'Nothing was written. {problem}',
  },
  crops: {
    heading: 'Crops',
    lead: 'Every crop of the reference with its figures, what it is good for and signs of trouble, side by side.',
    open: 'Show the crops',
    search: 'Search the crops',
    searchHelp: 'A name of the trade, such as zucchini, or a word of a sign, such as bitter.',
    use: 'Good for',
    anyUse: 'anything',
    units: 'Units of the figures',
    unitSystems: { us: 'ft, in, °F, lb', metric: 'm, cm, °C, kg' },
    choose: 'Crops to look at, up to {most}',
    names: 'also {names}',
    count: '{count} {count|crop|crops}',
    none: 'No crop found. Try fewer or other words, choose "{any}" under "{use}", or empty the field to see all.',
    tooMany: '{most} crops at most stand side by side: untick one first.',
    nobody: 'Tick a crop to see its figures.',
    sources: 'With sources',
    noFigure: 'none published',
    cautions: 'Cautions',
  },
} as const;
