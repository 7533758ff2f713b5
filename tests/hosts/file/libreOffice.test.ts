import { describe, expect, it } from 'vitest';
import { printFormula } from '../../../src/workbook/printFormula';
import values from '../../fixtures/libreoffice-7.4.7/values.json';
import { semantics } from './semantics';

const computed: Readonly<Record<string, unknown>> = values;

const truthsAreNumbers =
  'LibreOffice keeps truth values as the numbers 1 and 0; Excel as a kind of their own';
const noTextAsNumber =
  'LibreOffice refuses text written into the formula; Excel takes it for what it stands for';
const otherError = 'LibreOffice has an error code of its own, which is #VALUE! or nothing in .xlsx';
const otherCalendar = 'LibreOffice begins at 1899-12-30 and has no 29 February 1900; Excel does';

/** Where Excel, which we follow, and LibreOffice part. */
const deviations: Readonly<Record<string, string>> = {
  '=TRUE>"z"': truthsAreNumbers,
  '=1=TRUE': truthsAreNumbers,
  '=TRUE&""': truthsAreNumbers,
  '=SUM(Sample[Mix])': truthsAreNumbers,
  '=SUM(SOME_TRUTH,TRUE_TEXT)': truthsAreNumbers,
  '=SUMIFS(Sample[Mix],Sample[Plot],"*")': truthsAreNumbers,
  '=MIN(Sample[Mix])': truthsAreNumbers,
  '=1E+21&""': 'LibreOffice writes three digits of the power',
  '=AND("TRUE",TRUE)': noTextAsNumber,
  '=SUM(TRUE,"5")': noTextAsNumber,
  '=MAX("7",3)': noTextAsNumber,
  '=COUNTIF(Sample[Plot],7)': 'Excel counts the text "007" as 7',
  '=MATCH("30",Sample[Length],0)': 'LibreOffice finds the number 30 for the text "30"',
  '=INDEX(Sample[Length],9)': otherError,
  '=INDEX(Sample[Length],2,2)': otherError,
  '=DATE((-1),1,1)': otherError,
  '=DATE("x",1,1)': otherError,
  '=DATE(10000,1,1)': 'Excel ends with the year 9999',
  '=DATE(26,1,1)': 'LibreOffice reads two digits as a year of this century; Excel as 1926',
  '=DATE(1900,1,1)': otherCalendar,
  '=YEAR(0)': otherCalendar,
  '=MONTH(0)': otherCalendar,
  '=YEAR((-1))': otherCalendar,
};

const cases = Object.values(semantics)
  .flat()
  .map(
    ([expression, expected]) =>
      [printFormula(expression, { namespace: '', table: 'Sample' }), expected] as const,
  );

describe('LibreOffice computes the printed formulas', () => {
  it.each(cases.filter(([formula]) => !(formula in deviations)))('%s is %j', (formula, expected) => {
    expect(computed[formula]).toEqual(expected);
  });

  it.each(Object.entries(deviations))('%s differs: %s', (formula) => {
    const expected = cases.find(([printed]) => printed === formula)?.[1];
    expect(expected).toBeDefined();
    expect(computed[formula]).not.toEqual(expected);
  });

  it('for every case', () => {
    expect(new Set(Object.keys(computed))).toEqual(new Set(cases.map(([formula]) => formula)));
  });
});
