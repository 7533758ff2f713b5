/** What reads daily records, for the pane and for `plan`. */
import { answers } from '../functions/answers';
import { readWeather } from '../functions/readWeather';
import { splitRecords } from '../workbook/splitRecords';
import type { ReadWeather } from '../templates/weatherTools';

const read: ReadWeather = (text, choices) => readWeather(text, splitRecords, choices);

export const weatherTools = { readWeather: read, frostDates: answers.frostDates };
