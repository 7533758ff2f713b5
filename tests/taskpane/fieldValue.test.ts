import { describe, expect, it } from 'vitest';
import { checkText } from '../../src/taskpane/fieldValue';
import type { FormLine } from '../../src/workbook/template';

const percentField = (name: string): FormLine => ({
  label: name,
  name,
  kind: 'input',
  content: null,
  format: 'percent',
  choices: [],
  remark: '',
});

describe('a field in per cent', () => {
  it('takes 85 and 85% as the share 0.85', () => {
    for (const typed of ['85', '85%', ' 85 % ']) {
      expect(checkText(percentField('Germination'), typed)).toEqual({ value: 0.85 });
    }
  });

  it('asks whether a share was typed, of a plot as of the season: 0.85 % of seed germinating is a slip', () => {
    for (const name of ['Germination', 'FROST_RISK', 'ASSURANCE', 'Pollenizer share']) {
      expect(checkText(percentField(name), '0.85')).toEqual({
        wrong: expect.stringMatching(/type 85/) as unknown,
      });
    }
  });

  it('lets losses be half a per cent', () => {
    expect(checkText(percentField('TRAY_CULLS'), '0.5')).toEqual({ value: 0.005 });
  });
});
