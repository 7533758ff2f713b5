/** Requests do not grow with the rows, but for the splits that Excel's limit of 5 MB a request makes necessary. */
import { describe, expect, test } from 'vitest';
import { bytesPerRequest } from '../../../src/hosts/excel/writeSteps';
import { cellsPerAnswer } from '../../../src/hosts/excel/readCells';
import { demoPlots, demoSeason } from '../../../src/templates/demoGarden';
import { plotsTemplate } from '../../../src/templates/plots';
import { seasonTemplate } from '../../../src/templates/season';
import { allTemplates } from '../../../src/templates/sheets';
import { column, operate } from '../../../src/workbook/expressions';
import { fillSheets, type FillReport, type FillRequest } from '../../../src/workbook/fillSheets';
import { readForm } from '../../../src/workbook/readForm';
import type { Expression } from '../../../src/workbook/port';
import type { SheetTemplate } from '../../../src/workbook/template';
import { openTestWorkbook } from './openTestWorkbook';

const few = 50;
const many = 5000;

function template(compute: Expression): SheetTemplate {
  const each = { format: 'general', width: 10, choices: [], note: '', unit: '' } as const;
  return {
    id: 'rows',
    version: 1,
    sheet: 'Rows',
    title: 'Rows',
    lead: [],
    cautions: [],
    form: [],
    tables: [
      {
        name: 'Rows',
        heading: '',
        columns: [
          { ...each, header: 'Name', kind: 'input', compute: null },
          { ...each, header: 'Length', kind: 'input', compute: null },
          { ...each, header: 'Twice', kind: 'computed', compute },
        ],
        rows: null,
        grows: true,
      },
    ],
    page: { landscape: false, pagesWide: 1, repeatFirstColumn: false },
  };
}

const twice = operate(column('Length'), '*', 2);
/** A formula of about 4,000 characters. */
const lengthy = Array.from({ length: 130 }).reduce<Expression>(
  (sum) => operate(sum, '+', column('Length')),
  twice,
);

interface Sizes {
  readonly fill: readonly number[];
  readonly refresh: readonly number[];
  readonly report: FillReport;
}

async function sizesOf(count: number, compute: Expression, isRefreshed: boolean): Promise<Sizes> {
  const { standIn, workbook } = openTestWorkbook();
  const inputs = Array.from({ length: count }, (_, i) => ({ Name: `row ${i}`, Length: i }));
  const requests: FillRequest[] = [{ template: template(compute), inputs, form: {} }];
  let report = await fillSheets(workbook, requests, 'fill');
  const fill = standIn.takeRequests();
  if (isRefreshed) report = await fillSheets(workbook, requests, 'refresh');
  standIn.close();
  return { fill, refresh: standIn.takeRequests(), report };
}

const total = (sizes: readonly number[]): number => sizes.reduce((sum, size) => sum + size, 0);

describe('round trips', () => {
  test(`filling ${many} rows takes as many requests as filling ${few}`, async () => {
    const short = await sizesOf(few, twice, false);
    const long = await sizesOf(many, twice, false);
    expect(long.fill.length).toBe(short.fill.length);
    expect(total(long.fill)).toBeLessThan(bytesPerRequest);
  });

  test('more of them only where a request would become too large', async () => {
    const short = await sizesOf(few, lengthy, false);
    const long = await sizesOf(many / 2, lengthy, false);
    const bytes = total(long.fill.filter((size) => size > 100_000));
    expect(bytes).toBeGreaterThan(2 * bytesPerRequest);
    expect(long.fill.length - short.fill.length).toBe(Math.ceil(bytes / bytesPerRequest) - 1);
    expect(Math.max(...long.fill)).toBeLessThan(5_000_000);
  });

  test('a form is read in as many requests as any other, whatever the number of its lines', async () => {
    const { standIn, workbook } = openTestWorkbook();
    const lines = async (count: number): Promise<number> => {
      const template = { ...seasonTemplate, form: seasonTemplate.form.slice(0, count) };
      standIn.takeRequests();
      await readForm(workbook, template);
      return standIn.takeRequests().length;
    };
    await fillSheets(workbook, [{ template: seasonTemplate, inputs: [], form: demoSeason }], 'fill');
    expect(await lines(seasonTemplate.form.length)).toBe(await lines(1));
    standIn.close();
  });

  test(
    `our own sheets with ${many} plots take more than with ${few} only where a request would become too large`,
    { timeout: 300_000 },
    async () => {
      const sizes = async (count: number): Promise<readonly number[]> => {
        const { standIn, workbook } = openTestWorkbook();
        const plots = Array.from({ length: count }, (_, i) => ({
          ...demoPlots[i % demoPlots.length],
          Plot: `plot ${i}`,
        }));
        const requests = allTemplates.map((template) => ({
          template,
          inputs: template === plotsTemplate ? plots : [],
          form: demoSeason,
        }));
        await fillSheets(workbook, requests, 'fill');
        standIn.close();
        return standIn.takeRequests();
      };
      const [short, long] = [await sizes(few), await sizes(many)];
      const isLarge = (size: number): boolean => size > 100_000;
      expect(long.filter((size) => !isLarge(size)).length).toBe(
        short.filter((size) => !isLarge(size)).length,
      );
      // Steps of cells are half a megabyte, so that a request may lack one of being full.
      const large = long.filter(isLarge);
      expect(large.length).toBeLessThanOrEqual(Math.ceil(total(large) / (bytesPerRequest - 600_000)));
      expect(Math.max(...large)).toBeLessThan(5_000_000);
    },
  );

  test('refreshing them takes more only for the cells that one answer cannot hold', async () => {
    const short = await sizesOf(few, twice, true);
    const long = await sizesOf(many, twice, true);
    expect(long.report.refreshed).toEqual(['Rows']);
    const parts = (columns: number): number =>
      Math.ceil((many + 1) / Math.floor(cellsPerAnswer / columns)) - 1;
    // The sheet's stamp twice, the table's values and its formulas, all three columns wide, and the column
    // written over, read for the journal together with the stamp.
    const used = parts(3);
    expect(long.refresh.length - short.refresh.length).toBe(4 * used + parts(1) + 1);
  });
});
