/** Words that stand beside those of the functions, and how a date may be written. */

/**
 * What a cell of choices takes, as people say and write it: the first is shown beside the function's word where it is
 * another, all are understood in lists. Separated by ", ".
 */
export const choices = {
  rows: 'rows',
  hills: 'hills',
  beds: 'beds',
  seed: 'seed',
  transplant: 'transplant',
  monoecious: 'monoecious',
  gynoecious: 'gynoecious',
  parthenocarpic: 'parthenocarpic',
  andromonoecious: 'andromonoecious',
  triploid: 'triploid',
  us: 'us',
  metric: 'metric',
  inc: 'inc',
  exc: 'exc',
  north: 'north',
  south: 'south',
  mean: 'mean',
  modified: 'modified',
  sine: 'sine',
  reduced: 'reduced',
  weight: 'weight',
  bushel: 'bushel',
  carton: 'carton',
  each: 'each',
};

/** Of a date in a list: the month by its name or at least three letters of it. */
export const months = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];
