/** The limits of Plots' inputs against the functions that read them, computed by the file host. */
import { beforeAll, describe, expect, test } from 'vitest';
import { functions } from '../../src/functions';
import { createFileWorkbook } from '../../src/hosts/file/createFileWorkbook';
import { demoSeason } from '../../src/templates/demoGarden';
import { findInPlots } from '../../src/templates/findInPlots';
import { plotsTable, plotsTemplate } from '../../src/templates/plots';
import { allTemplates } from '../../src/templates/sheets';
import { fillSheets } from '../../src/workbook/fillSheets';
import type { Finding } from '../../src/workbook/findFindings';
import { checkLimits } from '../../src/workbook/limits';
import type { InputRow } from '../../src/workbook/template';

const beds = { Layout: 'beds', 'Bed width': 4, 'Path width': 2, 'Rows per bed': 2 };
const hills = { Layout: 'hills' };

/** A column, what makes the plot ask for it, and values at and beyond its limits. */
const cases: readonly (readonly [string, InputRow, readonly number[]])[] = [
  ['Length', {}, [-5, 0, 100, 1e6, 1e6 + 1, 1e9]],
  ['Width', {}, [-5, 0, 20, 1e6 + 1]],
  ['Germination', {}, [-0.1, 0, 0.01, 1, 1.85, 85]],
  ['Row spacing', {}, [-5, 0, 5]],
  ['Plant spacing', {}, [-5, 0, 12]],
  ['Hill spacing', hills, [-5, 0, 5]],
  ['Plants per hill', hills, [0, 1, 2.5, 3]],
  ['Bed width', beds, [-1, 0, 4]],
  ['Path width', beds, [-1, 0, 2]],
  ['Rows per bed', beds, [0, 1, 1.5, 2]],
  ['Field emergence', {}, [0, 0.5, 1, 1.85, 85]],
  ['Pollenizer share', { 'Flower type': 'gynoecious' }, [-0.1, 0, 1, 1.85, 25]],
  ['Days to maturity', {}, [0, 55.5, 365, 366, 1e9]],
  ['Harvest days', {}, [-1, 0, 365, 366, 1e9]],
  ['Yield per 100', {}, [-100, 0, 150]],
];
const plots = cases.flatMap(([header, setting, values]) =>
  values.map((value) => ({ header, setting, value, name: `${header} ${value}` })),
);

describe('an input of Plots', () => {
  let findings: readonly Finding[] = [];
  beforeAll(async () => {
    const workbook = createFileWorkbook({ functions: [...functions.values()] });
    const inputs = plots.map(({ header, setting, value, name }) => ({
      Plot: name,
      Crop: 'slicing cucumber',
      Length: 100,
      Width: 20,
      ...setting,
      [header]: value,
    }));
    const requests = allTemplates.map((template) => ({
      template,
      inputs: template === plotsTemplate ? inputs : [],
      form: demoSeason,
    }));
    await fillSheets(workbook, requests, 'test');
    findings = await findInPlots(workbook);
  });

  test.each(plots)('$name is refused by its limits as by the functions, and found there', (plot) => {
    const { limits = {}, quantity } = plotsTable.columns.find(({ header }) => header === plot.header) ?? {};
    const errors = findings.filter(({ kind, row }) => kind === 'error' && row === plot.name);
    const isRefused = checkLimits(plot.value, limits) !== null;
    expect(errors.some(({ header }) => header === plot.header)).toBe(isRefused);
    const elsewhere = errors.filter(({ header }) => header !== plot.header);
    expect(elsewhere.filter(({ text }) => text.startsWith(`The ${quantity} is `))).toEqual([]);
  });

  test('has limits wherever it is a number that a function reads', () => {
    const numbers = plotsTable.columns.filter(
      ({ kind, format }) => kind === 'input' && !['text', 'date'].includes(format),
    );
    expect(numbers.filter(({ limits }) => limits === undefined)).toEqual([]);
    expect(
      numbers
        .filter(({ quantity }) => quantity !== undefined)
        .map(({ header }) => header)
        .sort(),
    ).toEqual(cases.map(([header]) => header).sort());
  });
});
