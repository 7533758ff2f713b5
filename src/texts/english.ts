/** Every sentence a person reads, in English. Placeholders in braces are filled by functions/wording and the pane. */
import { commands } from './english/commands';
import { sheets } from './english/sheets';

export const english = {
  commands,
  sheets,
  /** Names of quantities: arguments of the functions, and the steps' inputs that are no argument. */
  quantities: {
    row_spacing: 'row spacing',
    plant_spacing: 'plant spacing',
    spacingPerLength: 'spacing units in one length unit',
    areaPerLand: 'area of an acre or hectare',
    areaPerPlant: 'area per plant',
  },
  units: {
    ft: 'ft',
    in: 'in',
    sqFt: 'sq ft',
    acre: 'acre',
    oz: 'oz',
    lb: 'lb',
    cuIn: 'cu in',
    cuFt: 'cu ft',
    gallon: 'gal',
    m: 'm',
    cm: 'cm',
    sqM: 'sq m',
    hectare: 'ha',
    g: 'g',
    kg: 'kg',
    ml: 'ml',
    litre: 'L',
    mm: 'mm',
    perAcre: 'per acre',
    perHectare: 'per hectare',
    seedsPerOz: 'seeds/oz',
    seedsPerG: 'seeds/g',
    lbPer100Ft: 'lb per 100 ft',
    kgPer100M: 'kg per 100 m',
    F: '°F',
    C: '°C',
    plants: 'plants',
    seeds: 'seeds',
    hills: 'hills',
    rows: 'rows',
    beds: 'beds',
    cells: 'cells',
    hives: 'hives',
    days: 'days',
    weeks: 'weeks',
    date: '',
    share: '',
    none: '',
  },
  limits: {
    above: 'above {limit}',
    atLeast: 'at least {limit}',
    atMost: 'at most {limit}',
    below: 'below {limit}',
    and: ' and ',
  },
  errors: {
    outOfRange: 'The {name} is {value}. It must be {limits}.',
    notWhole: 'The {name} is {value}. Give a whole number.',
    percentForShare: 'The {name} is {value}. Write {value} % as {value}% or as a fraction between 0 and 1.',
    missing: 'The {name} is missing. Fill it in.',
    notANumber:
      'The {name} is "{given}", which is not a number. Type digits with a decimal point and no unit.',
    notADate:
      'The {name} is "{given}", which is not a date from March 1900 on. Type a date such as 2026-05-02.',
    notText: 'The {name} cannot be read. Give one cell with a number or a word.',
    notYesOrNo: 'The {name} is "{given}". Answer yes or no (TRUE or FALSE).',
    oneCellWanted: 'The {name} is a range of several cells. Give one cell.',
    errorInside: 'The {name} is itself an error ({error}). Mend that cell first.',
    notAChoice: 'The {name} is "{given}". Choose one of: {choices}.',
    unknownName: 'There is no {kind} called "{given}" in the reference. Near it: {nearest}.',
    unknownNameNoneNear:
      'There is no {kind} called "{given}" in the reference. See the Crops sheet for the names.',
    noFigure: 'The reference has no published {trait} for {crop}. Type your own figure.',
    unequalLists:
      'The {name} has {count} cells and the {otherName} has {otherCount}. Give ranges of equal length.',
    noRowFits:
      'No row fits: the plot is {width} {unit} wide and each row needs {rowSpacing} {unit}. For one row along a fence or bed give the edge as "onedge".',
    noPlantFits:
      'No plant fits: the row is {length} {unit} long and each plant needs {plantSpacing} {spacingUnit}.',
    noHillFits:
      'No hill fits: a side of the plot is {side} {unit} and each hill needs {hillSpacing} {unit}. Hill spacing is in {unit}; was a smaller unit meant?',
    noBedFits: 'No bed fits: the plot is {width} {unit} wide and a bed is {bedWidth} {unit}.',
    testedWithoutAssurance:
      'The number of seeds tested only counts together with an assurance. Give an assurance such as 0.95.',
    frostDatesReversed:
      'The first frost ({firstFrost}) must come after the last frost ({lastFrost}). South of the equator the first frost of fall is in the next calendar year: type its year too.',
    frostComesFirst:
      'Frost comes first: the first pick would be {firstPick}, the first frost is {firstFrost}. Sow earlier or choose a quicker type.',
    mayStayCovered: 'A parthenocarpic type needs no bees and may stay covered.',
    tooLarge: 'The result is not a finite number. Check for a figure that is far too large or too small.',
  },
  /** Each step of a working: its name, and its formula in words. */
  steps: {
    areaPerPlant: { name: 'area per plant', formula: 'row spacing × plant spacing ÷ {spacingPerLength}' },
    plantsPerLand: {
      name: 'plants per acre or hectare',
      formula: 'area of an acre or hectare ÷ area per plant',
    },
  },
  /** Remarks that travel with a result. */
  remarks: {},
} as const;
