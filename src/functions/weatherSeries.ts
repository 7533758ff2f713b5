/** What the pictures of a weather record show: serial dates in and out, a refusal as its advice. */
import { chanceByDate } from '../calc/frost/chanceByDate';
import type { FrostSide, Hemisphere } from '../calc/frost/coldSeason';
import { frostDateAtRisk } from '../calc/frost/frostDateAtRisk';
import { frostFreeYears, type FrostFreeYear } from '../calc/frost/frostFreeYears';
import type { SeasonFrost } from '../calc/frost/frostOfSeasons';
import { layYears } from '../calc/frost/layYears';
import type { QuantileRule } from '../calc/frost/quantile';
import { CalcError, refuse } from '../calc/errors';
import type { HeatMethod } from '../calc/heat/heatFormula';
import { heatPaths } from '../calc/heat/heatPaths';
import { unitSystems, type UnitSystemName } from '../calc/units/units';
import { dayOfSerial, serialOfDay } from '../workbook/serialDate';
import { answering } from './answering';

interface WeatherRecord {
  readonly place: string;
  readonly units: UnitSystemName;
  readonly days: readonly {
    readonly serial: number;
    readonly high: number | null;
    readonly low: number | null;
  }[];
}

export interface FrostAsked {
  /** Share. */
  readonly risk: number;
  /** Of the spring that dates are given for. */
  readonly year: number;
  readonly hemisphere: Hemisphere;
  /** In the record's degrees; 32 F or 0 C when undefined. */
  readonly threshold?: number | undefined;
  readonly rule?: QuantileRule | undefined;
}

export interface HeatAsked {
  /** Serials of days in the record, rising. */
  readonly sowings: readonly number[];
  /** Degree days from sowing to first pick, in the record's degrees, as base and ceiling. */
  readonly target: number;
  readonly base: number;
  readonly ceiling?: number | undefined;
  readonly method?: HeatMethod | undefined;
}

export interface WeatherAsked extends FrostAsked {
  readonly heat: HeatAsked | null;
}

export function weatherSeries(record: WeatherRecord, asked: WeatherAsked) {
  return {
    chance: frostChance(record, asked),
    years: yearsOfRecord(record, asked),
    heat: asked.heat === null ? null : heatOfSowings(record, asked.heat),
  };
}

/** What is no date becomes NaN, which is refused with advice. */
const dayOf = (serial: number): number => dayOfSerial(serial) ?? NaN;
const columnsOf = ({ days }: WeatherRecord) => ({
  dates: days.map(({ serial }) => dayOf(serial)),
  highs: days.map(({ high }) => high),
  lows: days.map(({ low }) => low),
});
const cellOf = (frost: SeasonFrost): SeasonFrost => (typeof frost === 'number' ? serialOfDay(frost) : frost);

function seasonsOf(record: WeatherRecord, { threshold, hemisphere }: FrostAsked): readonly FrostFreeYear[] {
  const { dates, lows } = columnsOf(record);
  return frostFreeYears(dates, lows, threshold, unitSystems[record.units], hemisphere);
}

/** No date of the risk is no fault where frost comes in fewer seasons: the picture says so. */
function riskDateOf(dateAtRisk: () => number): number | null {
  try {
    return serialOfDay(dateAtRisk());
  } catch (error) {
    const isRare =
      error instanceof CalcError &&
      (error.problem.code === 'riskAboveFrost' || error.problem.code === 'neverFroze');
    if (isRare) return null;
    throw error;
  }
}

/** @param seasons springs and falls that count */
function refuseWithoutFrost(seasons: number): never {
  return refuse(seasons === 0 ? { code: 'noSeasons' } : { code: 'neverFroze', seasons });
}

const frostChance = answering((record: WeatherRecord, asked: FrostAsked) => {
  const { risk, year, hemisphere, rule } = asked;
  const seasons = seasonsOf(record, asked);
  const ofSide = (side: FrostSide) => {
    const frosts = seasons.map(({ lastFrost, firstFrost }) => (side === 'spring' ? lastFrost : firstFrost));
    const voids = frosts.filter((frost) => frost === 'void').length;
    const to = side === 'fall' && hemisphere === 'south' ? year + 1 : year;
    return {
      seasons: frosts.length - voids,
      voids,
      ...(voids === frosts.length
        ? { steps: [], riskDate: null }
        : {
            steps: chanceByDate(side, frosts, to, hemisphere).map(({ day, chance }) => ({
              date: serialOfDay(day),
              chance,
            })),
            riskDate: riskDateOf(() => frostDateAtRisk(side, frosts, risk, to, rule, hemisphere)),
          }),
    };
  };
  const [spring, fall] = [ofSide('spring'), ofSide('fall')];
  if (spring.steps.length + fall.steps.length === 0) refuseWithoutFrost(spring.seasons + fall.seasons);
  return { place: record.place, risk, spring, fall };
});

const yearsOfRecord = answering((record: WeatherRecord, asked: FrostAsked) => {
  const { year, hemisphere } = asked;
  const { years, middleDays } = layYears(seasonsOf(record, asked), year, hemisphere);
  const frosts = years.flatMap(({ lastFrost, firstFrost }) => [lastFrost, firstFrost]);
  if (!frosts.some((frost) => typeof frost === 'number')) {
    refuseWithoutFrost(frosts.filter((frost) => frost === 'none').length);
  }
  return {
    place: record.place,
    isSouth: hemisphere === 'south',
    middleDays,
    years: years.map((one) => ({
      ...one,
      lastFrost: cellOf(one.lastFrost),
      firstFrost: cellOf(one.firstFrost),
    })),
  };
});

const heatOfSowings = answering((record: WeatherRecord, asked: HeatAsked) => {
  const { target, base, ceiling, method } = asked;
  const { dates, highs, lows } = columnsOf(record);
  const sowings = asked.sowings.map(dayOf);
  const paths = heatPaths(dates, highs, lows, sowings, target, base, ceiling, method);
  return {
    place: record.place,
    target,
    base,
    degrees: unitSystems[record.units].temperature,
    paths: paths.map(({ sowing, sums, reached }) => ({
      sowing: serialOfDay(sowing),
      sums,
      reached: reached === null ? null : serialOfDay(reached),
    })),
  };
});
