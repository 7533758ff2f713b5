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
} as const;
