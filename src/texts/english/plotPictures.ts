/** What the picture of a plot says, and the part of the pane and the sheet that it stands in. */
export const plotPictures = {
  title: '{plot}: {crop}',
  /** A name too long for a title. */
  cut: '{start}…',
  length: {
    feet: '{feet} ft',
    inches: '{inches} in',
    feetAndInches: '{feet} ft {inches} in',
    metres: '{metres} m',
    centimetres: '{centimetres} cm',
  },
  /** At the spacing of two plants, or hills. */
  apart: { plants: '{spacing} from plant to plant', hills: '{spacing} from hill to hill' },
  path: 'path {width}',
  bed: 'bed {width}',
  size: 'The plot is {length} long and {width} wide; rows run along its length.',
  rows: '{plants} {count|plant|plants} in {rows} {rows|row|rows} of {inRow}: rows {rowSpacing} apart, plants {plantSpacing} apart in the row.',
  hills:
    '{plants} {count|plant|plants} in {hills} {hills|hill|hills} of {perHill}: {rows} {rows|row|rows} of {inRow} {inRow|hill|hills}, rows {rowSpacing} apart, hills {hillSpacing} apart in the row.',
  beds: '{plants} {count|plant|plants} in {beds} {beds|bed|beds} {bedWidth} wide, paths {pathWidth}: {rows} {rows|row|rows} in a bed, {inRow} {inRow|plant|plants} in a row, {plantSpacing} apart.',
  pollenizers:
    '{pollenizers} of them {count|is a pollenizer|are pollenizers}, spread evenly along the rows (judgement); out of mixed seed they come up anywhere.',
  pollenizersNotShown: '{pollenizers} of them {count|is a pollenizer|are pollenizers}, not shown here.',
  /** On an outlined corner. */
  corner: {
    plants:
      'The outlined corner is drawn again, enlarged to its own scale: {rows} {rows|row|rows} of {inRow} {inRow|plant|plants}.',
    hills:
      'The outlined corner is drawn again, enlarged to its own scale: {rows} {rows|row|rows} of {inRow} {inRow|hill|hills}.',
  },
  asLines: 'Each row is drawn as a line: {plants} plants are too many to be drawn one by one.',
  typedOver: 'Plants in the sheet says {typed}: somebody typed it, and this is what fits.',
  plant: 'plant',
  pollenizer: 'pollenizer',
  columns: ['Measure', 'In the plot'],
  measures: {
    plants: 'Plants',
    pollenizers: 'Pollenizers',
    length: 'Length',
    width: 'Width',
    rows: 'Rows',
    hills: 'Hills',
    beds: 'Beds',
    perHill: 'Plants per hill',
    inRow: 'In a row',
    rowSpacing: 'Between rows',
    plantSpacing: 'Between plants',
    hillSpacing: 'Between hills',
    bedWidth: 'Bed width',
    pathWidth: 'Path width',
    rowsPerBed: 'Rows in a bed',
  },
  /** In place of a picture. */
  refused: {
    noName: 'Give the plot a name: its picture is known by it.',
    pollenizers: 'Pollenizers holds an error in the sheet: mend that first.',
    plants: 'Plants holds an error in the sheet: mend that first.',
    waiting: 'The plot is still being calculated.',
    notChosen: 'Choose a plot in the list to see it.',
  },
  pane: {
    heading: 'Picture of the chosen plot',
    larger: {
      open: 'Enlarge the picture',
      heading: 'The picture of the plot',
      close: 'Close',
      save: 'Save as a picture file (PNG)',
      fileName: 'picture of {plot}.png',
    },
    put: 'Put this picture into a sheet',
    putAll: 'Put the pictures of all plots into a sheet',
    waiting: 'Wait until the plots are calculated, then put the pictures there.',
    nothing: 'No plot can be drawn: mend what the Plots sheet says of them.',
    done: '{count} {count|picture|pictures} put into the sheet {sheet}.',
    doneSome:
      '{count} {count|picture|pictures} put into the sheet {sheet}. Not drawn, to be mended first: {plots}.',
    full: 'The sheet of pictures has no more room. Delete that sheet, then put the pictures you want into a new one.',
    older: 'In their sheet these pictures are older than their plots: {plots}. Put them there again.',
    undo: 'Plot pictures',
  },
  sheet: {
    name: 'Plot pictures',
    lead: ['Drawn to scale from the sheet Plots. After a change there, put the pictures here again.'],
    plot: 'Plot',
    state: 'As it stands',
    stands: 'yes',
    older: 'no',
  },
} as const;
