/** What is found in plots whose crop has no figure for a blank: one line for each figure, at the cell to fill in. */
import { afterEach, describe, expect, test } from 'vitest';
import { functions } from '../../src/functions';
import { openHeadless } from '../../src/hosts/browser/openHeadless';
import { createFileWorkbook } from '../../src/hosts/file/createFileWorkbook';
import { demoSeason } from '../../src/templates/demoGarden';
import { findInPlots } from '../../src/templates/findInPlots';
import { plotsTemplate } from '../../src/templates/plots';
import { allTemplates, functionNamespace } from '../../src/templates/sheets';
import { fillSheets } from '../../src/workbook/fillSheets';
import { isCellError, type CellValue, type WorkbookPort } from '../../src/workbook/port';
import type { InputRow } from '../../src/workbook/template';

const registered = [...functions.values()];
const open: { dispose(): void }[] = [];
afterEach(() => {
  for (const one of open.splice(0)) one.dispose();
});

const hosts: readonly (readonly [string, () => WorkbookPort])[] = [
  ['file', () => createFileWorkbook({ functions: registered })],
  [
    'browser',
    () => {
      const workbook = openHeadless({
        functions: registered,
        namespace: functionNamespace,
        firstSheet: 'Notepad',
      });
      open.push(workbook);
      return workbook;
    },
  ],
];

async function fillWith(
  workbook: WorkbookPort,
  plot: InputRow,
  form: Readonly<Record<string, CellValue>> = demoSeason,
) {
  const inputs = [{ Plot: 'field', Length: 60, Width: 40, 'Yield per 100': 100, ...plot }];
  await fillSheets(
    workbook,
    allTemplates.map((template) => ({ template, inputs: template === plotsTemplate ? inputs : [], form })),
    'test',
  );
  expect(await workbook.settle(60000)).toEqual([]);
  const table = await workbook.readTable('Plots');
  const valueOf = (header: string) => table?.rows[0]?.[table.headers.indexOf(header)];
  const findings = await findInPlots(workbook);
  return { valueOf, errors: findings.filter(({ kind }) => kind === 'error') };
}

describe.each(hosts)('%s host', (_, openHost) => {
  test.each<[string, InputRow, readonly string[]]>([
    ['a gourd without germination', { Crop: 'gourd' }, ['Germination']],
    ['started as transplants', { Crop: 'gourd', Start: 'transplant' }, ['Germination']],
    ['an English cucumber', { Crop: 'English cucumber' }, ['Days to maturity', 'Harvest days']],
    ['with days to maturity', { Crop: 'English cucumber', 'Days to maturity': 60 }, ['Harvest days']],
    [
      'in hills',
      { Crop: 'English cucumber', Layout: 'hills', 'Days to maturity': 60, 'Harvest days': 60 },
      ['Hill spacing', 'Plants per hill'],
    ],
    [
      'a gourd without a yield, which may stay unknown',
      { Crop: 'gourd', Germination: 0.7, 'Yield per 100': null },
      [],
    ],
    ['no crop', {}, ['Crop']],
  ])('%s', async (_name, plot, wanted) => {
    const { errors } = await fillWith(openHost(), plot);
    expect(errors.map(({ header }) => header)).toEqual(wanted);
    for (const { header, text } of errors) {
      expect(text).toMatch(
        header === 'Crop'
          ? /^Choose a crop\.$/
          : new RegExp(`^The reference has no .*: fill in ${header}\\.$`),
      );
    }
  });

  test('another trouble of the plot stays beside it', async () => {
    const { errors } = await fillWith(openHost(), { Crop: 'gourd', Length: -5 });
    expect(errors.map(({ header, text }) => `${header}: ${text}`)).toEqual([
      'Germination: The reference has no germination standard for this crop: fill in Germination.',
      'Length: The length of the plot is -5. It must be above 0 ft.',
    ]);
  });

  test.each([-5, 'long'])(
    'harvest days that are no days (%s) are explained once, where they stand',
    async (wrong) => {
      const { errors } = await fillWith(openHost(), { Crop: 'zucchini', 'Harvest days': wrong });
      expect(errors.map(({ header }) => header)).toEqual(['Harvest days']);
    },
  );

  test('no cell passes the words of the Crops sheet on', async () => {
    const { valueOf } = await fillWith(openHost(), { Crop: 'English cucumber', Layout: 'hills' });
    expect(valueOf('Plants')).toEqual({
      error: '#VALUE!',
      message: 'The hill spacing is missing. Fill it in.',
    });
    expect(isCellError(valueOf('Last sowing'))).toBe(true);
    // In hills it has no spacing of its own either; its yield and germination are given or published.
    expect(valueOf('Assumed')).toBe('Germination. Flower type. No field loss. ');
  });

  test('nothing is assumed of a crop that is not known', async () => {
    const { valueOf } = await fillWith(openHost(), { Crop: 'gord' });
    expect(valueOf('Assumed')).toBe('');
  });

  test('frosts that are no season leave no date that stands on them, and no row explains it again', async () => {
    const reversed = { ...demoSeason, FIRST_FROST: 46400 };
    const { valueOf, errors } = await fillWith(openHost(), { Crop: 'zucchini' }, reversed);
    for (const header of ['Last pick', 'Last sowing', 'Days to spare']) {
      expect(valueOf(header), header).toMatchObject({ message: null });
    }
    expect(errors.map(({ text }) => text)).toEqual([expect.stringMatching(/^#/)]);
  });
});
