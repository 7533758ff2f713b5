/**
 * What is known of slips with each function, beyond those with its arguments. Source: common practice, no source: what
 * teachers of the trade see. Long because it is one table.
 */
import type { JarSize } from '../../reference/pickling';
import { practice } from '../../reference/practice';
import { areaFrom } from '../area/areaFrom';
import { areaUnitNamed } from '../area/areaUnitNamed';
import { dayOfDate, monthOfDay, yearOfDay } from '../dates/calendar';
import { customaryGainDays } from '../dates/firstPickDate';
import { usualAssuranceOfGroup } from '../flowers/groupWithPollenizer';
import { countingStart, daysCounted, type FrostSide, type Hemisphere } from '../frost/coldSeason';
import { countedFrosts } from '../frost/countedFrosts';
import type { SeasonFrost } from '../frost/frostOfSeasons';
import { quantile, type QuantileRule } from '../frost/quantile';
import { bushelsOf } from '../harvest/bushelsOf';
import { emergenceKnots, type BetweenKnots } from '../soil/emergenceKnots';
import { poundsPerJar } from '../pickling/poundsPerJar';
import { binomialDensity } from '../stand/binomialDensity';
import { chanceOfTooFew } from '../stand/chanceOfTooFew';
import { minutesPerHour } from '../supply/dripRunTime';
import {
  cubicInchesPerGallon,
  daysPerWeek,
  gramsPerOunce,
  inchesPerFoot,
  rowLengthOfYield,
} from '../units/units';
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
  /** Figures of the formula that are no argument and turn no unit, by the name of their step. */
  readonly constants?: (known: Known) => Readonly<Record<string, number>>;
  /** The result is a share, or a chance. */
  readonly isShare?: true;
  /** Choices that are no slip by themselves: their own sums say more. */
  readonly choicesAside?: readonly string[];
  /** The argument with the date that a date is counted from. */
  readonly start?: string;
  readonly own?: (known: Known) => readonly OwnSlip[];
}

const standChance = ({ n }: Known): number => n('germination') * n('field_emergence', 1);
const areaPerPlant = ({ n }: Known): number =>
  (n('row_spacing') * n('plant_spacing')) / n('spacingPerLength');
const spacingsInRow = ({ n }: Known): number => (n('length') * n('spacingPerLength')) / n('plant_spacing');
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
const volumeOfHill = ({ shape }: Given, diameter: number, height: number): number =>
  shape === 'disc'
    ? (Math.PI * diameter ** 2 * height) / 4
    : (Math.PI * height * ((3 * diameter ** 2) / 4 + height ** 2)) / 6;
const jarOf = ({ jar }: Given): JarSize => (jar === 'pint' ? 'pint' : 'quart');
const waterUsed = ({ n }: Known): number => n('reference_et') * n('crop_coefficient') * n('days', 1);

/** As people reckon who take every month for thirty days. */
const daysPerCountedMonth = 30;
const dateInMonth = (day: number): number => day - dayOfDate(yearOfDay(day), monthOfDay(day), 1);
const countedDays = (day: number): number =>
  (yearOfDay(day) * 12 + monthOfDay(day)) * daysPerCountedMonth + dateInMonth(day);
const inCountedMonths = (from: number, to: number): number => countedDays(to) - countedDays(from);
const monthsLater = (day: number, months: number): number =>
  dayOfDate(yearOfDay(day), monthOfDay(day) + months, 1) + dateInMonth(day);

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
    formula: (call) => call.n('areaPerLand') / areaPerPlant(call),
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
  },
  'AREA.FORPLANTS': {
    formula: (call) => call.n('plants') * areaPerPlant(call),
    own: (call) => [['divided', call.n('plants') / areaPerPlant(call), 'areaPerPlant']],
  },
  'AREA.FROM': {
    formula: ({ n }) => n('value') * n('areaOfUnit'),
    constants: ({ given, units }) => ({ areaOfUnit: areaFrom(1, String(given['unit']), units) }),
    own: ({ n, given, right }) => {
      const areaOfUnit = right / n('value');
      const isSquare = areaUnitNamed(String(given['unit']))?.startsWith('sq') === true;
      return [['linearFactor', isSquare ? n('value') * Math.sqrt(areaOfUnit) : NaN]];
    },
  },
  'ROW.FORPLANTS': {
    formula: ({ n }) => (n('plants') * n('plant_spacing')) / n('spacingPerLength'),
    own: ({ n, units }) => [
      ['gapsForPlants', ((n('plants') - 1) * n('plant_spacing')) / units.spacingPerLength],
    ],
  },
  'ROW.INAREA': {
    formula: ({ n }) => n('area') / n('row_spacing'),
    own: ({ right }) => [['upsideDown', 1 / right]],
  },
  'ROW.FORDEMAND': {
    formula: ({ n }) =>
      (n('wanted_per_week') * n('picking_weeks') * n('rowLengthOfYield')) / n('yield_per_100'),
    own: ({ right }) => [['perOneForHundred', right / rowLengthOfYield]],
  },

  'STAND.COUNT': {
    formula: ({ n }) =>
      (n('plants_standing') * n('plant_spacing')) / (n('row_length') * n('spacingPerLength')),
    isShare: true,
    own: ({ n, right }) => [
      ['upsideDown', 1 / right],
      ['plantAtBothEnds', n('plants_standing') / (n('plants_standing') / right + 1)],
    ],
  },

  'SEED.NEEDED': {
    formula: (call) => (call.given['assurance'] === undefined ? call.n('plants') / standChance(call) : NaN),
    whole: 'up',
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
        // Else it is the germination that the sum is multiplied by.
        ['multiplied', cellStands(call) === n('germination') ? NaN : plants * cellStands(call), 'cellStands'],
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
  },
  'TRAY.MIX': {
    formula: ({ n }) => (n('cells') * n('cell_volume')) / n('cellVolumePerMixVolume'),
    own: ({ n, units }) => {
      const volume = n('cells') * n('cell_volume');
      return [
        ['unitKept', volume],
        ['linearFactor', units.name === 'us' ? volume / inchesPerFoot : NaN],
        ['squareFactor', units.name === 'us' ? volume / inchesPerFoot ** 2 : NaN],
      ];
    },
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
    own: ({ n, right }) => [
      ['leftOut', right + n('days_to_maturity'), 'days_to_maturity'],
      ['added', right + 2 * n('days_to_maturity'), 'days_to_maturity'],
    ],
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
  'DATE.AFTERMANURE': {
    start: 'manure_date',
    own: ({ n, right }) => {
      const months = Math.round((right - n('manure_date')) / daysPerCountedMonth);
      return [['monthsForDays', monthsLater(n('manure_date'), months)]];
    },
  },
  'SEASON.DAYS': {
    whole: 'otherwise',
    own: ({ n, right }) => [
      ['subtractedFrom', -right],
      ['bothEndsCounted', right + 1],
      ['endsLeftOut', right - 1],
      ['monthsOfThirty', inCountedMonths(n('last_frost'), n('first_frost'))],
    ],
  },
  'SEASON.SPARE': {
    whole: 'otherwise',
    own: ({ n, right }) => [
      ['subtractedFrom', -right],
      ['bothEndsCounted', right + 1],
      ['endsLeftOut', right - 1],
      ['added', right + 2 * n('days_needed'), 'days_needed'],
      ['monthsOfThirty', inCountedMonths(n('last_frost'), n('first_frost')) - n('days_needed')],
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
        ['halvedAtEnd', (2 * meanHeat(call) - n('base')) / 2],
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
        ['halvedAtEnd', sumOf((high, low) => Math.max(0, high + low - n('base')) / 2)],
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
        ['notBetween', cooler],
        ['notBetween', warmer],
      ];
    },
  },
  'EMERGENCE.PERCENT': {
    isShare: true,
    own: ({ n, given, units }) => {
      const knots = emergenceKnots(String(given['crop']), n('soil_temperature'), units, () => true);
      return [
        ['fromOtherEnd', fromWarmer(knots, knots.low.normal, knots.high.normal)],
        ['notBetween', knots.low.normal],
        ['notBetween', knots.high.normal],
      ];
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
    own: ({ n, right }) => [
      ['allForMales', 1 / n('female_share')],
      ['upsideDown', 1 / right],
    ],
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
      (n('area') / n('areaPerLand')) * n('hives_per_acre', units.name === 'us' ? practice.hives.value : NaN),
    whole: 'up',
  },

  'HARVEST.YIELD': {
    formula: ({ n }) => (n('row_length') / n('rowLengthOfYield')) * n('yield_per_100') * n('marketable', 1),
    own: ({ right }) => [['perOneForHundred', right * rowLengthOfYield]],
  },
  'HARVEST.PICKS': {
    formula: (call) => growingDays(call) / call.n('every_days') + 1,
    whole: 'down',
    own: (call) => [
      ['firstNotCounted', call.right - 1],
      ['multiplied', growingDays(call) * call.n('every_days') + 1, 'every_days'],
    ],
  },
  'HARVEST.FORECAST': {
    formula: ({ n }) => n('fruit_per_plant') * n('plants') * n('fruit_weight'),
  },
  'HARVEST.BUSHELS': {
    formula: ({ n }) => n('pounds') / n('bushelWeight'),
    constants: ({ given }) => ({ bushelWeight: 1 / bushelsOf(1, String(given['crop'])) }),
  },

  'PICKLE.JARS': {
    formula: ({ n }) => n('pounds') / n('usualPerJar'),
    constants: ({ given }) => ({ usualPerJar: poundsPerJar(jarOf(given)).usual }),
    whole: 'down',
  },
  'PICKLE.POUNDS': {
    formula: ({ n }) => n('jars') * n('usualPerJar'),
    constants: ({ given }) => ({ usualPerJar: poundsPerJar(jarOf(given)).usual }),
  },

  'BUDGET.RETURN': {
    own: ({ n, right }) => [
      ['subtractedFrom', -right],
      ['added', n('income') + n('costs'), 'costs'],
    ],
  },
  'BUDGET.BREAKEVENPRICE': {
    formula: ({ n }) => n('total_cost') / n('total_yield'),
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
  },

  'SUPPLY.HILLSOIL': {
    formula: ({ n }) => (n('hills') * n('hillVolume')) / n('cellVolumePerMixVolume'),
    constants: ({ n, given }) => ({ hillVolume: volumeOfHill(given, n('diameter'), n('height')) }),
    own: ({ n, given, units, right }) => {
      const scale = n('hills') / units.cellVolumePerMixVolume;
      const inSmall = right * units.cellVolumePerMixVolume;
      return [
        ['diameterForRadius', volumeOfHill(given, n('diameter') * 2, n('height')) * scale],
        ['unitKept', inSmall],
        ['linearFactor', inSmall / units.spacingPerLength],
        ['squareFactor', units.name === 'us' ? inSmall / inchesPerFoot ** 2 : NaN],
      ];
    },
  },
  'SUPPLY.FERTILIZER': {
    formula: ({ n }) => ((n('area') / n('areaPerLand')) * n('rate')) / n('grade'),
  },
  'SUPPLY.WATER': {
    formula: ({ n, units }) => n('area') * n('depth') * units.waterPerAreaAndDepth,
    own: ({ n, units, right }) =>
      units.name === 'us'
        ? [
            ['cubicFeet', (n('area') * n('depth')) / inchesPerFoot],
            ['cubicInches', right * cubicInchesPerGallon],
            ['linearFactor', right / inchesPerFoot],
          ]
        : [],
  },
  'SUPPLY.WATERNEED': {
    formula: (call) => waterUsed(call) - call.n('rain', 0),
    own: (call) => {
      const { n } = call;
      const ofDay = n('reference_et') * n('crop_coefficient');
      return [
        ['added', waterUsed(call) + n('rain'), 'rain'],
        ['rainEveryDay', (ofDay - n('rain')) * n('days')],
        [
          'divided',
          (n('reference_et') / n('crop_coefficient')) * n('days', 1) - n('rain'),
          'crop_coefficient',
        ],
        ['divided', ofDay / n('days') - n('rain'), 'days'],
        ['leftOut', Math.max(0, ofDay - n('rain', 0)), 'days'],
      ];
    },
  },
  'SUPPLY.DRIPRUNTIME': {
    formula: ({ n, units }) =>
      (n('depth') * n('wetted_width') * n('dripFlowLength') * units.waterPerAreaAndDepth) /
      (n('spacingPerLength') * n('flow') * n('lines', 1)),
    own: ({ right, units }) => [
      ['minutesForHours', right * minutesPerHour],
      ['perOneForHundred', units.dripFlowLength > 1 ? right / units.dripFlowLength : NaN],
    ],
  },
  'SUPPLY.COVER': {
    formula: ({ n }) => n('rows') * (n('row_length') + 2 * n('end_tuck')),
    own: ({ n }) => [
      ['subtracted', n('rows') * (n('row_length') - 2 * n('end_tuck')), 'end_tuck'],
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
        ['multiplied', rows * (ceilWhole(n('row_length') * n('post_spacing')) + 1), 'post_spacing'],
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
