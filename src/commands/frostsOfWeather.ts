/** The frost dates of a season out of a daily record, and what is to be said of them. */
import { mostSeasonDays } from '../templates/season';
import { followWeather, requestWeather } from '../templates/weather';
import type { FrostDatesOfRecord, ReadWeather } from '../templates/weatherTools';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import type { FillRequest } from '../workbook/fillSheets';
import { refuseHugeFile } from '../workbook/fileLimits';
import { dayOfSerial, isoOfDay } from '../workbook/serialDate';
import { todaySerial } from '../workbook/today';
import type { WeatherOptions } from './planOptions';
import { textOf } from './readList';
import { UsageError } from './usageError';

const words = catalogue.commands.plan;

export interface WeatherTools {
  readonly readWeather: ReadWeather;
  readonly frostDates: FrostDatesOfRecord;
}

export interface WeatherFrosts {
  /** For the sheets that hold the record and what follows from it. */
  readonly requests: readonly FillRequest[];
  /** What goes into the Season form, by cell name. */
  readonly season: FillRequest['form'];
  readonly said: readonly string[];
  /** What is doubtful in the record, by its line. */
  readonly doubts: readonly string[];
  /** Whether one of them wants mending. */
  readonly isDoubtful: boolean;
}

/** @throws UsageError where the record, or its frosts, give no dates; HostError where the file is too big */
export function frostsOfWeather(
  options: WeatherOptions,
  bytes: Uint8Array,
  { readWeather, frostDates }: WeatherTools,
): WeatherFrosts {
  const { file, units, hemisphere, risk } = options;
  refuseHugeFile(file, bytes.length);
  const read = readWeather(textOf(file, bytes), { units, hemisphere, today: todaySerial() });
  const doubts = read.doubts.map(({ line, sentence }) => fill(words.weatherLine, { file, line, sentence }));
  const { record } = read;
  if (record === null) throw new UsageError(doubts.join('\n'));
  const year = options.year ?? Number(sayDate(record.days.at(-1)?.serial ?? 0).slice(0, 4)) + 1;
  const dates = frostDates(record, risk, year, hemisphere);
  if ('wrong' in dates) {
    const refused = fill(words.weatherRefused, { file, problem: dates.wrong });
    throw new UsageError([...doubts, refused].join('\n'));
  }
  const { lastFrost, firstFrost, springs, falls } = dates.value;
  const said = {
    risk: `${Number((risk * 100).toPrecision(4))} %`,
    last: sayDate(lastFrost),
    first: sayDate(firstFrost),
  };
  const days = firstFrost - lastFrost;
  if (days > mostSeasonDays) throw new UsageError(fill(words.weatherApart, { ...said, days, file }));
  return {
    requests: requestWeather(record, { HEMISPHERE: hemisphere }),
    season: { SEASON_YEAR: year, ...followWeather },
    said: [
      fill(words.weatherFound, { file, found: read.found }),
      fill(words.weatherDates, { ...said, springs, falls }),
      ...(options.year === undefined ? [fill(words.yearTaken, { year })] : []),
    ],
    doubts,
    isDoubtful: read.doubts.some(({ isRemark }) => !isRemark),
  };
}

function sayDate(serial: number): string {
  return isoOfDay(dayOfSerial(serial) ?? 0);
}
