/** What Notes says of a line whose input no result comes of, in the file host and in the browser's engine. */
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { functions } from '../../src/functions';
import { openHeadless } from '../../src/hosts/browser/openHeadless';
import { createFileWorkbook } from '../../src/hosts/file/createFileWorkbook';
import { demoSeason } from '../../src/templates/demoGarden';
import { findInPlots } from '../../src/templates/findInPlots';
import { plotsTemplate } from '../../src/templates/plots';
import { allTemplates, functionNamespace } from '../../src/templates/sheets';
import { english } from '../../src/texts/english';
import { fillSheets } from '../../src/workbook/fillSheets';
import type { Finding } from '../../src/workbook/findFindings';
import { isCellError, type TableRead, type WorkbookPort } from '../../src/workbook/port';
import type { InputRow } from '../../src/workbook/template';

const { remarks } = english.sheets.plots;
const registered = [...functions.values()];

/** Each a slip of one cell, and the result that shows it. */
const misfits: Readonly<Record<string, readonly [result: string, slip: InputRow]>> = {
  'no length': ['Plants', { Length: null }],
  'too narrow': ['Plants', { Width: 2 }],
  'germination in percent': ['Seed to sow', { Germination: 85 }],
  'field emergence over 1': ['Seed to sow', { 'Field emergence': 2 }],
  'days to maturity under 0': ['First pick', { 'Days to maturity': -5 }],
  'harvest days under 0': ['Last pick', { 'Harvest days': -5 }],
  'no row spacing': ['Plants', { 'Row spacing': 0 }],
  'beds without sizes': ['Plants', { Layout: 'beds' }],
  'more pollenizers than plants': ['Pollenizers', { 'Flower type': 'gynoecious', 'Pollenizer share': 3 }],
  'a yield under 0': ['Yield', { 'Yield per 100': -1 }],
  'half a plant in a hill': ['Plants', { Layout: 'hills', 'Plants per hill': 1.5 }],
  'an unknown flower type': ['Cover off', { 'Flower type': 'blue' }],
  'a text as planting date': ['First pick', { 'Sow or set out on': 'in May' }],
  'a text as date of transplants': ['First pick', { Start: 'transplant', 'Sow or set out on': 'in May' }],
  'a slip beside a figure that may be unknown': ['Plants', { Crop: 'gourd', Germination: 0.8, Width: 2 }],
};

/** Lines with an error that another remark tells of, or without one. */
const others: Readonly<Record<string, InputRow>> = {
  good: {},
  'in hills': { Layout: 'hills' },
  'an unknown crop': { Crop: 'gord' },
  'an unknown layout': { Layout: 'spiral' },
  'an unknown start': { Start: 'cutting' },
  'no last pick before the frost': { 'Days to maturity': 300 },
  'no germination of a gourd': { Crop: 'gourd' },
  'no figures of an English cucumber': { Crop: 'English cucumber', Layout: 'hills' },
  'no harvest days of one': { Crop: 'English cucumber', 'Days to maturity': 60 },
  'a price in words': { Price: 'a lot' },
  'last cucurbits in words': { 'Last cucurbits': 'none' },
};

const hosts: readonly (readonly [string, () => WorkbookPort & { dispose?(): void }])[] = [
  ['file', () => createFileWorkbook({ functions: registered })],
  [
    'browser',
    () => openHeadless({ functions: registered, namespace: functionNamespace, firstSheet: 'Notepad' }),
  ],
];

describe.each(hosts)('%s host', (_, openHost) => {
  const workbook = openHost();
  let table: TableRead | null = null;
  let findings: readonly Finding[] = [];
  beforeAll(async () => {
    const plots = [
      ...Object.entries(misfits).map(([name, [, slip]]) => [name, slip] as const),
      ...Object.entries(others),
    ];
    const inputs = plots.map(([name, more]) => ({
      Crop: 'slicing cucumber',
      Length: 100,
      Width: 20,
      ...more,
      Plot: name,
    }));
    await fillSheets(
      workbook,
      allTemplates.map((template) => ({
        template,
        inputs: template === plotsTemplate ? inputs : [],
        form: demoSeason,
      })),
      'test',
    );
    expect(await workbook.settle(60_000)).toEqual([]);
    table = await workbook.readTable('Plots');
    findings = await findInPlots(workbook);
  }, 60_000);
  afterAll(() => workbook.dispose?.());

  const valueIn = (plot: string, header: string) =>
    table?.rows.find(([name]) => name === plot)?.[table.headers.indexOf(header)];

  test.each(Object.entries(misfits))('%s is told of', (plot, [result]) => {
    expect(isCellError(valueIn(plot, result) ?? null)).toBe(true);
    expect(valueIn(plot, 'Notes')).toContain(remarks.misfit);
  });

  test.each(Object.keys(misfits))('%s is found with its reason alone', (plot) => {
    const found = findings.filter(({ row }) => row === plot);
    expect(found.some(({ kind, text }) => kind === 'error' && !text.startsWith('#'))).toBe(true);
    expect(found.filter(({ text }) => text.includes(remarks.misfit))).toEqual([]);
  });

  test.each(Object.keys(others))('%s is not', (plot) => {
    expect(typeof valueIn(plot, 'Notes')).toBe('string');
    expect(valueIn(plot, 'Notes')).not.toContain(remarks.misfit);
  });
});
