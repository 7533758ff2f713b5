import { describe, expect, it } from 'vitest';
import { checkText } from '../../src/taskpane/fieldValue';
import { plotsTable } from '../../src/templates/plots';
import { seasonTemplate } from '../../src/templates/season';
import { catalogue } from '../../src/texts/catalogue';
import type { Limits } from '../../src/workbook/limits';
import type { FormLine } from '../../src/workbook/template';

const field = (format: FormLine['format'], limits?: Limits): FormLine => ({
  label: 'Field',
  name: 'field',
  kind: 'input',
  content: null,
  format,
  choices: [],
  remark: '',
  ...(limits && { limits }),
});
const seasonField = (name: string): FormLine => {
  const line = seasonTemplate.form.find((one) => one.name === name);
  if (line === undefined) throw new Error(`no ${name}`);
  return line;
};

describe('a field in per cent', () => {
  it('takes 85 and 85% as the share 0.85', () => {
    for (const typed of ['85', '85%', ' 85 % ']) {
      expect(checkText(field('percent'), typed)).toEqual({ value: 0.85 });
    }
  });

  it('asks whether a share was typed, of a plot as of the season: 0.85 % of seed germinating is a slip', () => {
    for (const line of [field('percent', { above: 0, atMost: 1 }), seasonField('FROST_RISK')]) {
      expect(checkText(line, '0.85')).toEqual({
        wrong: expect.stringMatching(/type 85/) as unknown,
      });
    }
  });

  it.each(['germination', 'fieldEmergence'] as const)(
    'asks the same of 1 where one seed in a hundred is no %s to sow by',
    (key) => {
      const { header } = catalogue.sheets.plots.columns[key];
      const limits = plotsTable.columns.find((column) => column.header === header)?.limits;
      expect(checkText(field('percent', limits), '1')).toEqual({
        wrong: 'This field is in percent: for 1 as a share, type 100.',
      });
      expect(checkText(field('percent', limits), '2')).toEqual({ value: 0.02 });
      expect(checkText(seasonField('FROST_RISK'), '1')).toEqual({ value: 0.01 });
    },
  );

  it('lets losses be half a per cent', () => {
    expect(checkText(seasonField('TRAY_CULLS'), '0.5')).toEqual({ value: 0.005 });
  });

  it('says limits in per cent', () => {
    expect(checkText(field('percent', { above: 0, atMost: 1 }), '185')).toEqual({
      wrong: '185 % does not fit. It must be above 0 % and at most 100 %.',
    });
  });
});

describe('a field for a number', () => {
  it.each([
    ['-5', { above: 0 }, '-5 does not fit. It must be above 0.'],
    ['2.5', { atLeast: 1, isWhole: true }, '2.5 is not a whole number. Round it.'],
    ['1e9', { above: 0, atMost: 365 }, '1e9 does not fit. It must be above 0 and at most 365.'],
  ])('refuses %s within %j', (typed, limits, wrong) => {
    expect(checkText(field('general', limits), typed)).toEqual({ wrong });
  });

  it('takes a number at a limit that counts as inside', () => {
    expect(checkText(field('general', { atLeast: 0, atMost: 365 }), '365')).toEqual({ value: 365 });
  });
});
