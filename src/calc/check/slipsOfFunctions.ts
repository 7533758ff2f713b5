/**
 * What is known of slips with each function, beyond those with its arguments. Source: common practice, no source: what
 * teachers of the trade see. Long because it is one table.
 */
import type { JarSize } from '../../reference/pickling';
import { practice } from '../../reference/practice';
import { areaUnitNamed } from '../area/areaUnitNamed';
import { customaryGainDays } from '../dates/firstPickDate';
import { usualAssuranceOfGroup } from '../flowers/groupWithPollenizer';
import { countingStart, daysCounted, type FrostSide, type Hemisphere } from '../frost/coldSeason';
import { countedFrosts } from '../frost/countedFrosts';
import type { SeasonFrost } from '../frost/frostOfSeasons';
import { quantile, type QuantileRule } from '../frost/quantile';
import { emergenceKnots, type BetweenKnots } from '../soil/emergenceKnots';
import { poundsPerJar } from '../pickling/poundsPerJar';
import { binomialDensity } from '../stand/binomialDensity';
import { chanceOfTooFew } from '../stand/chanceOfTooFew';
import { minutesPerHour } from '../supply/dripRunTime';
import { daysPerWeek, gramsPerOunce, inchesPerFoot, rowLengthOfYield } from '../units/units';
import { ceilWhole, floorWhole } from '../whole/wholeNumbers';
import type { Given, Known, SlipName } from './slip';

/** A wrong sum and what it is called; the argument or quantity it was made with, where the sentence names one. */
type OwnSlip = readonly [SlipName, number, about?: string];

export interface KnownSlips {
  /**
   * The sum as it stands on paper: refuses nothing, so that a slip may be put into it, and rounds nothing. NaN for a
   * call that is reckoned in another way.
   */
  readonly formula?: (known: Known) => number;
  /** How a whole result comes about: by rounding the formula, or its parts, or not by rounding a formula at all. */
  readonly whole?: 'up' | 'down' | 'inParts' | 'otherwise';
  /** Arguments that the formula divides by, and those that it multiplies by, where people mistake one for the other. */
  readonly dividesBy?: readonly string[];
  readonly multipliesBy?: readonly string[];
  /** The result is a share, or a chance. */
  readonly isShare?: true;
  /** Choices that are no slip by themselves: their own sums say more. */
  readonly choicesAside?: readonly string[];
  /** The argument with the date that a date is counted from. */
  readonly start?: string;
  readonly own?: (known: Known) => readonly OwnSlip[];
}

const standChance = ({ n }: Known): number => n('germination') * n('field_emergence', 1);
const areaPerPlant = ({ n, units }: Known): number =>
  (n('row_spacing') * n('plant_spacing')) / units.spacingPerLength;
const spacingsInRow = ({ n, units }: Known): number =>
  (n('length') * units.spacingPerLength) / n('plant_spacing');
const isOnEdge = ({ given }: Known): boolean => given['edge'] === 'onedge';
const rowsAcross = (call: Known): number =>
  call.n('width') / call.n('row_spacing') + (isOnEdge(call) ? 1 : 0);
const plantsAlong = (call: Known): number => spacingsInRow(call) + (isOnEdge(call) ? 1 : 0);
const bedsAcross = ({ n }: Known): number =>
  (n('width') + n('path_width')) / (n('bed_width') + n('path_width'));
const rowsOfHills = ({ n, given }: Known): number =>
  given['pattern'] === 'staggered' ? NaN : n('width') / n('row_spacing', n('hill_spacing'));
const cellStands = ({ n }: Known): number =>
  (1 - (1 - n('germination')) ** n('seeds_per_cell', 1)) * (1 - n('culls', 0));
const growingDays = ({ n }: Known): number => n('last_pick') - n('first_pick');
const meanHeat = ({ n, given }: Known): number =>
  (given['method'] ?? 'mean') === 'mean' ? (n('high') + n('low')) / 2 : NaN;
const capOfHill = (diameter: number, height: number): number =>
  (Math.PI * height * ((3 * diameter ** 2) / 4 + height ** 2)) / 6;
const discOfHill = (diameter: number, height: number): number => (Math.PI * diameter ** 2 * height) / 4;
const jarOf = ({ jar }: Given): JarSize => (jar === 'pint' ? 'pint' : 'quart');
const waterUsed = ({ n }: Known): number => n('reference_et') * n('crop_coefficient') * n('days', 1);

/** The day as a grower takes it who rounds to the safe side of frost. */
const wholeDay = { spring: ceilWhole, fall: floorWhole };
const frostDateSlips =
  (side: FrostSide, list: string): NonNullable<KnownSlips['own']> =>
  ({ n, given }) => {
    const frosts = given[list] as readonly (SeasonFrost | null)[];
    const where = given['hemisphere'] as Hemisphere | undefined;
    const { counted, seasons, hemisphere } = countedFrosts(side, frosts, where, undefined);
    const asListed = frosts
      .filter((one) => typeof one === 'number')
      .map((one) => daysCounted(one, side, hemisphere));
    const part = (n('risk') * seasons) / counted.length;
    const rule = (given['rule'] as QuantileRule | undefined) ?? 'inc';
    const start = countingStart(n('year'), side, hemisphere);
    const mean = asListed.reduce((sum, one) => sum + one, 0) / asListed.length;
    return [
      ['notInOrder', start + wholeDay[side](quantile(asListed, side === 'spring' ? 1 - part : part, rule))],
      ['worstYear', start + (side === 'spring' ? Math.max(...counted) : Math.min(...counted))],
      ['meanOfDates', start + wholeDay[side](mean)],
    ];
  };
/** High and low of each day that has both. */
const daysOfHeat = ({ given }: Known): readonly (readonly [high: number, low: number])[] => {
  const lows = given['lows'] as readonly (number | null)[];
  return (given['highs'] as readonly (number | null)[]).flatMap((high, i) => {
    const low = lows[i] ?? null;
    return high === null || low === null ? [] : [[high, low] as const];
  });
};
/** Between the knots from the warmer one on. */
const fromWarmer = ({ part }: BetweenKnots, cooler: number, warmer: number): number =>
  warmer + (cooler - warmer) * part;

/** By the id of the function. One that only has slips with its arguments has an empty entry. */
export const slipsOfFunctions: Readonly<Record<string, KnownSlips>> = {
  'PLANTS.DENSITY': {
    formula: (call) => call.units.areaPerLand / areaPerPlant(call),
    own: (call) => [
      ['multiplied', call.units.areaPerLand * areaPerPlant(call), 'areaPerPlant'],
      ['perOneOfArea', 1 / areaPerPlant(call)],
    ],
  },
  'PLANTS.INROWS': {
    formula: (call) => rowsAcross(call) * plantsAlong(call),
    whole: 'inParts',
    choicesAside: ['edge'],
    own: (call) => {
      const [across, along] = [rowsAcross(call), plantsAlong(call)];
      const [rows, inRow] = [floorWhole(across), floorWhole(along)];
      return [
        ['roundedUp', ceilWhole(across) * ceilWhole(along)],
        ['roundedAtEnd', floorWhole(across * along)],
        ['oneRowAlone', inRow],
        ...(isOnEdge(call)
          ? ([['nonePastTheEdge', (rows - 1) * (inRow - 1)]] as const)
          : ([
              ['plantAtBothEnds', rows * (inRow + 1)],
              ['plantAtBothEnds', (rows + 1) * (inRow + 1)],
            ] as const)),
      ];
    },
  },
  'PLANTS.INHILLS': {
    formula: (call) =>
      (call.n('length') / call.n('hill_spacing')) * rowsOfHills(call) * call.n('plants_per_hill'),
    whole: 'inParts',
    own: (call) => {
      const { n } = call;
      const along = n('length') / n('hill_spacing');
      return [
        ['roundedUp', ceilWhole(along) * ceilWhole(rowsOfHills(call)) * n('plants_per_hill')],
        ['roundedAtEnd', floorWhole(along * rowsOfHills(call) * n('plants_per_hill'))],
        ['oneRowAlone', floorWhole(along) * n('plants_per_hill')],
      ];
    },
  },
  'PLANTS.INBEDS': {
    formula: (call) => bedsAcross(call) * call.n('rows_per_bed') * spacingsInRow(call),
    whole: 'inParts',
    own: (call) => {
      const { n } = call;
      const inBed = n('rows_per_bed') * floorWhole(spacingsInRow(call));
      return [
        ['roundedUp', ceilWhole(bedsAcross(call)) * n('rows_per_bed') * ceilWhole(spacingsInRow(call))],
        ['roundedAtEnd', floorWhole(bedsAcross(call) * n('rows_per_bed') * spacingsInRow(call))],
        ['lastPathCounted', floorWhole(n('width') / (n('bed_width') + n('path_width'))) * inBed],
      ];
    },
  },
  'PLANTS.INAREA': {
    formula: (call) => call.n('area') / areaPerPlant(call),
    whole: 'down',
    own: (call) => [['multiplied', call.n('area') * areaPerPlant(call), 'areaPerPlant']],
  },
  'PLANTS.FORYIELD': {
    formula: ({ n }) => n('wanted_yield') / n('yield_per_plant'),
    whole: 'up',
    dividesBy: ['yield_per_plant'],
  },
  'AREA.FORPLANTS': {
    formula: (call) => call.n('plants') * areaPerPlant(call),
    own: (call) => [['divided', call.n('plants') / areaPerPlant(call), 'areaPerPlant']],
  },
  'AREA.FROM': {
    own: ({ n, given, right }) => {
      const areaOfUnit = right / n('value');
      const isSquare = areaUnitNamed(String(given['unit']))?.startsWith('sq') === true;
      return [
        ['divided', n('value') / areaOfUnit, 'areaOfUnit'],
        ['linearFactor', isSquare ? n('value') * Math.sqrt(areaOfUnit) : NaN],
      ];
    },
  },
  'ROW.FORPLANTS': {
    formula: ({ n, units }) => (n('plants') * n('plant_spacing')) / units.spacingPerLength,
    multipliesBy: ['plant_spacing'],
    own: ({ n, units }) => [
      ['gapsForPlants', ((n('plants') - 1) * n('plant_spacing')) / units.spacingPerLength],
    ],
  },
  'ROW.INAREA': {
    formula: ({ n }) => n('area') / n('row_spacing'),
    dividesBy: ['row_spacing'],
    own: ({ right }) => [['upsideDown', 1 / right]],
  },
  'ROW.FORDEMAND': {
    formula: ({ n }) => (n('wanted_per_week') * n('picking_weeks') * rowLengthOfYield) / n('yield_per_100'),
    dividesBy: ['yield_per_100'],
    multipliesBy: ['picking_weeks'],
    own: ({ right }) => [['perOneForHundred', right / rowLengthOfYield]],
  },

  'STAND.COUNT': {
    formula: ({ n, units }) =>
      (n('plants_standing') * n('plant_spacing')) / (n('row_length') * units.spacingPerLength),
    isShare: true,
    own: ({ right }) => [['upsideDown', 1 / right]],
  },

  'SEED.NEEDED': {
    formula: (call) => (call.given['assurance'] === undefined ? call.n('plants') / standChance(call) : NaN),
    whole: 'up',
    dividesBy: ['germination', 'field_emergence'],
    own: (call) => {
      const average = call.n('plants') / standChance(call);
      return [
        ['multiplied', call.n('plants') * call.n('germination') * call.n('field_emergence'), 'standChance'],
        ['shareOfChance', average / call.n('assurance')],
        ['shareOfChance', ceilWhole(average / call.n('assurance'))],
      ];
    },
  },
  'SEED.PERHILL': {
    whole: 'otherwise',
    own: (call) => {
      const average = call.n('plants_per_hill') / standChance(call);
      return [
        ['averageTaken', average],
        ['averageTaken', ceilWhole(average)],
        ['multiplied', call.n('plants_per_hill') * standChance(call), 'standChance'],
      ];
    },
  },
  'SEED.CHANCE': {
    isShare: true,
    own: (call) => {
      const [seeds, plants, chance] = [call.n('seeds'), call.n('plants'), standChance(call)];
      // Where no more seeds are sown than plants wanted, or each stands, these are the right chance or none.
      if (seeds <= plants || chance >= 1) return [];
      return [
        ['exactly', binomialDensity(plants, seeds, chance)],
        ['moreThan', 1 - chanceOfTooFew(plants + 1, seeds, chance)],
        ['everyOne', chance ** plants],
      ];
    },
  },
  'SEED.WEIGHT': {
    formula: ({ n }) => n('seeds') / n('seeds_per_unit'),
    dividesBy: ['seeds_per_unit'],
    own: ({ right, units }) => [
      ['otherSystem', units.name === 'us' ? right * gramsPerOunce : right / gramsPerOunce],
    ],
  },
  'SEED.STANDARD': { isShare: true },
  'SEED.TEST': {
    formula: ({ n }) => n('germinated') / n('tested'),
    isShare: true,
    own: ({ right }) => [['upsideDown', 1 / right]],
  },
  'SEED.TOLERANCE': { isShare: true },
  'SEED.STORAGELEFT': {
    whole: 'otherwise',
    own: ({ n, right }) => [
      ['ageForLeft', n('year') - n('year_packed')],
      ['bothEndsCounted', right === 0 ? NaN : right - 1],
    ],
  },

  'TRAY.CELLS': {
    formula: (call) => (call.given['assurance'] === undefined ? call.n('plants') / cellStands(call) : NaN),
    whole: 'up',
    own: (call) => {
      const { n } = call;
      const [plants, sown, kept] = [n('plants'), n('seeds_per_cell', 1), 1 - n('culls', 0)];
      const timesSeeds = sown > 1 ? plants / (n('germination') * sown * kept) : NaN;
      return [
        ['multiplied', plants * cellStands(call), 'cellStands'],
        ['seedsForCells', sown * call.right],
        ['germinationTimesSeeds', timesSeeds],
        ['germinationTimesSeeds', ceilWhole(timesSeeds)],
        ['shareOfChance', plants / cellStands(call) / n('assurance')],
        ['shareOfChance', ceilWhole(plants / cellStands(call) / n('assurance'))],
      ];
    },
  },
  'TRAY.COUNT': {
    formula: ({ n }) => n('cells') / n('cells_per_tray'),
    whole: 'up',
    dividesBy: ['cells_per_tray'],
  },
  'TRAY.MIX': {
    formula: ({ n, units }) => (n('cells') * n('cell_volume')) / units.cellVolumePerMixVolume,
    multipliesBy: ['cell_volume'],
    own: ({ n, units }) => [
      ['unitKept', n('cells') * n('cell_volume')],
      ['linearFactor', units.name === 'us' ? (n('cells') * n('cell_volume')) / inchesPerFoot : NaN],
    ],
  },

  'DATE.SETOUT': { start: 'last_frost' },
  'DATE.STARTTRANSPLANTS': {
    start: 'set_out',
    own: ({ n, right }) => [['weeksForDays', n('set_out') - (n('set_out') - right) / daysPerWeek]],
  },
  'DATE.HARDENOFF': { start: 'set_out' },
  'DATE.FIRSTSOWING': { start: 'last_frost' },
  'DATE.LASTSOWING': {
    start: 'first_frost',
    own: ({ n, right }) => [['leftOut', right + n('days_to_maturity'), 'days_to_maturity']],
  },
  'DATE.FIRSTPICK': {
    start: 'start',
    choicesAside: ['method', 'basis'],
    own: ({ n, given, right }) => {
      const withoutGain = ceilWhole(n('start') + n('days_to_maturity') + n('fall_days', 0));
      const gain = n('transplant_gain', customaryGainDays);
      const { method = 'seed', basis = 'seed' } = given;
      if (method !== basis) return [['gainTheOtherWay', 2 * withoutGain - right]];
      return [
        ['gainForNothing', ceilWhole(withoutGain - gain)],
        ['gainForNothing', ceilWhole(withoutGain + gain)],
      ];
    },
  },
  'DATE.LASTPICK': { start: 'first_pick', own: ({ n }) => [['onTheFrost', n('first_frost')]] },
  'DATE.COVEROFF': { start: 'first_pick' },
  'DATE.AFTERSPRAY': { start: 'spray_date' },
  'DATE.AFTERMANURE': { start: 'manure_date' },
  'SEASON.DAYS': {
    whole: 'otherwise',
    own: ({ right }) => [
      ['subtractedFrom', -right],
      ['bothEndsCounted', right + 1],
      ['endsLeftOut', right - 1],
    ],
  },
  'SEASON.SPARE': {
    whole: 'otherwise',
    own: ({ n, right }) => [
      ['subtractedFrom', -right],
      ['bothEndsCounted', right + 1],
      ['endsLeftOut', right - 1],
      ['added', right + 2 * n('days_needed'), 'days_needed'],
    ],
  },

  'FROST.SPRINGDATE': { own: frostDateSlips('spring', 'last_dates') },
  'FROST.FALLDATE': { own: frostDateSlips('fall', 'first_dates') },
  'FROST.CHANCE': {
    isShare: true,
    own: ({ n, given, right }) => {
      const side = given['season'] as FrostSide;
      const frosts = given['frost_dates'] as readonly (SeasonFrost | null)[];
      const where = given['hemisphere'] as Hemisphere | undefined;
      const { counted, seasons, hemisphere } = countedFrosts(side, frosts, where, undefined);
      const onTheDate = counted.filter((one) => one === daysCounted(n('date'), side, hemisphere)).length;
      return [
        ['dateItselfCounted', right + onTheDate / seasons],
        ['countForShare', right * seasons],
      ];
    },
  },

  'HEAT.DAY': {
    own: (call) => {
      const { n, right } = call;
      const overBase = meanHeat(call) - n('base');
      return [
        ['leftOut', meanHeat(call), 'base'],
        ['notHalved', 2 * meanHeat(call) - n('base')],
        ['highAlone', n('high') - n('base')],
        ['notCutAtZero', right === 0 && overBase < 0 ? overBase : NaN],
      ];
    },
  },
  'HEAT.SUM': {
    own: (call) => {
      const { n, given, right } = call;
      if ((given['method'] ?? 'mean') !== 'mean') return [];
      const days = daysOfHeat(call);
      const sumOf = (heat: (high: number, low: number) => number): number =>
        days.reduce((sum, [high, low]) => sum + heat(high, low), 0);
      const means = sumOf((high, low) => (high + low) / 2);
      const uncut = means - days.length * n('base');
      return [
        ['leftOut', means, 'base'],
        ['baseOnce', days.length > 1 ? means - n('base') : NaN],
        ['notCutAtZero', uncut < right ? uncut : NaN],
        ['notHalved', sumOf((high, low) => Math.max(0, high + low - n('base')))],
        ['highAlone', sumOf((high) => Math.max(0, high - n('base')))],
        ['meanOfDays', right / days.length],
      ];
    },
  },
  'HEAT.DATE': {
    own: ({ right }) => [
      ['dayAfter', right + 1],
      ['dayBefore', right - 1],
    ],
  },

  'EMERGENCE.DAYS': {
    own: ({ n, given, units, right }) => {
      const temperature = n('soil_temperature');
      const knots = emergenceKnots(String(given['crop']), temperature, units, ({ days }) => days !== null);
      const [cooler, warmer] = [knots.low.days ?? NaN, knots.high.days ?? NaN];
      return [
        ['rateForDays', 1 / right],
        ['daysForRates', cooler + (warmer - cooler) * knots.part],
        ['fromOtherEnd', 1 / fromWarmer(knots, 1 / cooler, 1 / warmer)],
      ];
    },
  },
  'EMERGENCE.PERCENT': {
    isShare: true,
    own: ({ n, given, units }) => {
      const knots = emergenceKnots(String(given['crop']), n('soil_temperature'), units, () => true);
      return [['fromOtherEnd', fromWarmer(knots, knots.low.normal, knots.high.normal)]];
    },
  },

  'FLOWER.FEMALESHARE': {
    formula: ({ n }) =>
      n('pollenizer_share') * n('monoecious_female') +
      (1 - n('pollenizer_share')) * n('gynoecious_female', 1),
    isShare: true,
    own: ({ n }) => [['plainMean', (n('monoecious_female') + n('gynoecious_female', 1)) / 2]],
  },
  'FLOWER.MALESPERFEMALE': {
    formula: ({ n }) => (1 - n('female_share')) / n('female_share'),
    own: ({ n }) => [['allForMales', 1 / n('female_share')]],
  },
  'FLOWER.SHARE': {
    isShare: true,
    own: ({ n, right }) => [
      ['ratioForShare', n('pollenizers') / n('others'), 'share'],
      ['upsideDown', 1 / right],
    ],
  },
  'FLOWER.POLLENIZERS': {
    formula: ({ n, given }) => {
      const [stand, share, kept] = [n('plants'), n('share'), 1 - n('losses', 0)];
      return given['layout'] === 'between'
        ? (stand * share) / (1 - share) / kept
        : (stand * share) / (share + kept * (1 - share));
    },
    whole: 'up',
    own: ({ n, given }) => {
      const [stand, share, losses] = [n('plants'), n('share'), n('losses', 0)];
      const without = given['layout'] === 'between' ? (stand * share) / (1 - share) : stand * share;
      const onAll = given['layout'] === 'between' ? NaN : without / (1 - losses);
      return [
        ['lossAdded', without * (1 + losses), 'losses'],
        ['lossAdded', ceilWhole(without * (1 + losses)), 'losses'],
        ['lossesOnAll', onAll],
        ['lossesOnAll', ceilWhole(onAll)],
      ];
    },
  },
  'FLOWER.NOPOLLENIZER': {
    formula: ({ n }) => (1 - n('share')) ** n('plants'),
    isShare: true,
    own: ({ n }) => [
      ['timesForPower', n('plants') * (1 - n('share'))],
      ['timesForPower', 1 - n('plants') * n('share')],
    ],
  },
  'FLOWER.GROUPSIZE': {
    formula: ({ n }) => Math.log(1 - n('assurance', usualAssuranceOfGroup)) / Math.log(1 - n('share')),
    whole: 'up',
    own: ({ n }) => [
      ['averageTaken', 1 / n('share')],
      ['averageTaken', ceilWhole(1 / n('share'))],
    ],
  },
  'FLOWER.HIVES': {
    formula: ({ n, units }) =>
      (n('area') / units.areaPerLand) * n('hives_per_acre', units.name === 'us' ? practice.hives.value : NaN),
    whole: 'up',
  },

  'HARVEST.YIELD': {
    formula: ({ n }) => (n('row_length') / rowLengthOfYield) * n('yield_per_100') * n('marketable', 1),
    multipliesBy: ['marketable'],
    own: ({ right }) => [['perOneForHundred', right * rowLengthOfYield]],
  },
  'HARVEST.PICKS': {
    formula: (call) => growingDays(call) / call.n('every_days') + 1,
    whole: 'down',
    dividesBy: ['every_days'],
    own: ({ right }) => [['firstNotCounted', right - 1]],
  },
  'HARVEST.FORECAST': {
    formula: ({ n }) => n('fruit_per_plant') * n('plants') * n('fruit_weight'),
    multipliesBy: ['fruit_weight', 'fruit_per_plant'],
  },
  'HARVEST.BUSHELS': {
    own: ({ n, right }) => [['multiplied', n('pounds') ** 2 / right, 'bushelWeight']],
  },

  'PICKLE.JARS': {
    formula: ({ n, given }) => n('pounds') / poundsPerJar(jarOf(given)).usual,
    whole: 'down',
    own: ({ n, given }) => [['multiplied', n('pounds') * poundsPerJar(jarOf(given)).usual, 'usualPerJar']],
  },
  'PICKLE.POUNDS': {
    own: ({ n, given }) => [['divided', n('jars') / poundsPerJar(jarOf(given)).usual, 'usualPerJar']],
  },

  'BUDGET.RETURN': {
    own: ({ n, right }) => [
      ['subtractedFrom', -right],
      ['added', n('income') + n('costs'), 'costs'],
    ],
  },
  'BUDGET.BREAKEVENPRICE': {
    formula: ({ n }) => n('total_cost') / n('total_yield'),
    dividesBy: ['total_yield'],
  },
  'BUDGET.BREAKEVENYIELD': {
    formula: ({ n }) => n('costs_not_tied_to_yield') / (n('price') - n('harvest_cost', 0)),
    own: ({ n }) => [
      ['added', n('costs_not_tied_to_yield') / (n('price') + n('harvest_cost')), 'harvest_cost'],
      ['multiplied', n('costs_not_tied_to_yield') * (n('price') - n('harvest_cost', 0)), 'leftOfPrice'],
    ],
  },
  'BUDGET.PICKHOURS': {
    formula: ({ n }) => (n('row_length') * n('picks')) / n('rate'),
    dividesBy: ['rate'],
  },

  'SUPPLY.HILLSOIL': {
    own: (call) => {
      const { n, given, units, right } = call;
      const isDisc = given['shape'] === 'disc';
      const scale = n('hills') / units.cellVolumePerMixVolume;
      const height = n('height');
      const volume = isDisc ? discOfHill(n('diameter') * 2, height) : capOfHill(n('diameter') * 2, height);
      return [
        ['diameterForRadius', volume * scale],
        ['unitKept', right * units.cellVolumePerMixVolume],
        ['linearFactor', (right * units.cellVolumePerMixVolume) / units.spacingPerLength],
      ];
    },
  },
  'SUPPLY.FERTILIZER': {
    formula: ({ n, units }) => ((n('area') / units.areaPerLand) * n('rate')) / n('grade'),
    dividesBy: ['grade'],
  },
  'SUPPLY.WATER': {
    own: ({ n, units }) =>
      units.name === 'us' ? [['cubicFeet', (n('area') * n('depth')) / inchesPerFoot]] : [],
  },
  'SUPPLY.WATERNEED': {
    multipliesBy: ['crop_coefficient'],
    formula: (call) => waterUsed(call) - call.n('rain', 0),
    own: (call) => {
      const { n } = call;
      const ofDay = n('reference_et') * n('crop_coefficient');
      return [
        ['added', waterUsed(call) + n('rain'), 'rain'],
        ['rainEveryDay', (ofDay - n('rain')) * n('days')],
        ['leftOut', Math.max(0, ofDay - n('rain', 0)), 'days'],
      ];
    },
  },
  'SUPPLY.DRIPRUNTIME': {
    formula: ({ n, units }) =>
      (n('depth') * n('wetted_width') * units.dripFlowLength * units.waterPerAreaAndDepth) /
      (units.spacingPerLength * n('flow') * n('lines', 1)),
    dividesBy: ['flow', 'lines'],
    own: ({ right, units }) => [
      ['minutesForHours', right * minutesPerHour],
      ['perOneForHundred', units.dripFlowLength > 1 ? right / units.dripFlowLength : NaN],
    ],
  },
  'SUPPLY.COVER': {
    own: ({ n }) => [
      ['tuckOneEnd', n('rows') * (n('row_length') + n('end_tuck'))],
      ['tuckOnce', n('rows') * n('row_length') + 2 * n('end_tuck')],
    ],
  },
  'SUPPLY.TRELLIS': {
    formula: ({ n }) => n('rows', 1) * (n('row_length') / n('post_spacing') + 1),
    whole: 'inParts',
    own: ({ n }) => {
      const [rows, gaps] = [n('rows', 1), n('row_length') / n('post_spacing')];
      return [
        ['endPostForgotten', rows * ceilWhole(gaps)],
        ['postForAllRows', rows * ceilWhole(gaps) + 1],
        ['roundedDown', rows * (floorWhole(gaps) + 1)],
      ];
    },
  },

  'BEETLE.THRESHOLD': {},
  'ROTATION.YEARS': { whole: 'otherwise', own: ({ right }) => [['yearCountedToo', right + 1]] },
  'CROP.VALUE': {},
};

/** Functions with no slip to name: their answer is a word, a list or a table, or is looked up or searched for. */
export const functionsWithoutSlips: readonly string[] = [
  'STAND.REPLANT',
  'SEED.PACKS',
  'SEED.PACKCOST',
  'SEED.PACKLIST',
  'DATE.SUCCESSION',
  'FROST.LASTDATES',
  'FROST.FIRSTDATES',
  'FROST.YEARS',
  'HEAT.YEARS',
  'HEAT.DATES',
  'HEAT.SUCCESSION',
  'SOIL.RANGE',
  'FLOWER.CROSSES',
  'FLOWER.ISOLATE',
  'HARVEST.SIZE',
  'BUDGET.SENSITIVITY',
  'BEETLE.VERDICT',
  'CROP.NAME',
  'CROP.SOURCE',
  'CROP.LIST',
  'CROP.TRAITS',
];
