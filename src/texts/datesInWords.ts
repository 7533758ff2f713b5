/** How people write dates in the language. */
import { catalogue } from './catalogue';
import { isDayFirst } from './language';

/** As `dayOfText` of workbook/serialDate takes it. */
export const datesInWords = {
  months: catalogue.months.map((names): readonly string[] => names.split(', ')),
  isDayFirst,
};
