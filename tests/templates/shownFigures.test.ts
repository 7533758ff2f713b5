/** How figures look: those of the Crops sheets in metric units, short to read and exact where Plots computes on them. */
import exceljs from 'exceljs';
import { expect, test } from 'vitest';
import { functions } from '../../src/functions';
import { createFileWorkbook } from '../../src/hosts/file/createFileWorkbook';
import { createMemoryWorkbook } from '../../src/hosts/file/createMemoryWorkbook';
import { demoFilling, demoSeason } from '../../src/templates/demoGarden';
import { cropsTemplate } from '../../src/templates/crops';
import { fillSheets } from '../../src/workbook/fillSheets';
import { formatCodes } from '../../src/workbook/appearance';
import type { ReadValue } from '../../src/workbook/port';

async function metricTable(name: string) {
  const workbook = createFileWorkbook({ functions: [...functions.values()] });
  const form = { ...demoSeason, UNITS: 'metric' };
  await fillSheets(
    workbook,
    demoFilling.map((request) => ({ ...request, form })),
    'test',
  );
  const table = await workbook.readTable(name);
  if (table === null) throw new Error(`no table ${name}`);
  return table;
}

test('the ranges have at most two decimals', async () => {
  const { rows } = await metricTable('CropFigures');
  const figures = rows.map((row) => row.slice(2, 4)).flat();
  expect(
    figures.filter((value) => typeof value === 'number' && !/^\d+(\.\d{1,2})?$/.test(String(value))),
  ).toEqual([]);
  const lowOf = (crop: string, trait: string): ReadValue | undefined =>
    rows.find(([name, figure]) => name === crop && figure === trait)?.[2];
  // 60 °F (Ohio State University): 28 / 1.8 = 15.6.
  expect(lowOf('slicing cucumber', 'soil minimum')).toBe(16);
  // 4 ft (University of Illinois) x 0.3048.
  expect(lowOf('slicing cucumber', 'row spacing')).toBe(1.22);
  // 1,000 an ounce (North Carolina AG-552) / 28.3495.
  expect(lowOf('slicing cucumber', 'seeds per weight')).toBe(35.3);
});

test('the growing notes stand under their ground, with every figure put in', async () => {
  const { rows } = await metricTable('CropNotes');
  const notes = rows.map(([of, note]) => `${String(of)}: ${String(note)}`);
  // Common practice, no source.
  expect(notes).toContain('Vining types: 6 to 8 ft (about 2 m) of room a plant.');
  expect(notes).toContain('Hills of transplants: 3 in a hill, about 3 in (8 cm) apart.');
  expect(notes).toContain('Sowing in pots: 1 to 2 seeds to a plantable pot, 1 in (2.5 cm) deep.');
  expect(notes).toContain('Gynoecious seed: About 10% of a lot is monoecious seed, often dyed.');
  // North Carolina AG-552; Alabama Extension.
  expect(notes).toContain(
    'Rotation: 2 to 3 full seasons free of all cucurbits (North Carolina); never two years running (Cornell).',
  );
  expect(notes.find((note) => note.startsWith('Curing'))).toMatch(/ 10 days at 80 to 85 °F/);
  expect(notes.join()).not.toMatch(/[{}]/);
});

test('the figures that Plots computes on are exact, in columns that show them short', async () => {
  const { rows, headers } = await metricTable('Crops');
  const slicing = rows.find(([name]) => name === 'slicing cucumber');
  // 1,000 / 28.349523125 g.
  expect(slicing?.[headers.indexOf('seeds per weight')]).toBeCloseTo(35.27396194958, 10);
  const long = headers.filter((_, column) =>
    rows.some((row) => typeof row[column] === 'number' && String(row[column]).length > 6),
  );
  expect(long).toContain('soil minimum');
  const formats = new Map(cropsTemplate.tables[0]?.columns.map(({ header, format }) => [header, format]));
  for (const header of long)
    expect(formatCodes[formats.get(header) ?? 'general'], header).toMatch(/^(#,##0|0%)/);
});

test('shares of the Prices sheet are shown per cent with a decimal, prices with two to four, what a rate comes to as it is', async () => {
  const workbook = createMemoryWorkbook({ functions: [...functions.values()] });
  await fillSheets(workbook, demoFilling, 'test');
  const file = new exceljs.Workbook();
  await file.xlsx.load((await workbook.bytes()).buffer as ArrayBuffer);
  const shown = async (name: string): Promise<Map<string, unknown[]>> => {
    const table = await workbook.readTable(name);
    const { row = 0, column = 0 } = table?.area ?? {};
    return new Map(
      table?.rows.map(([of], index) => [
        String(of),
        [3, 4, 5, 6].map(
          (at) => file.getWorksheet('Prices')?.getCell(row + index + 2, column + at + 1).numFmt ?? 'General',
        ),
      ]),
    );
  };
  const [percent, money, plain] = ['0.0%', '#,##0.00##', 'General'];
  const prices = await shown('Prices');
  for (const share of ['Selling', 'Interest', 'Yield'])
    expect(prices.get(share)).toEqual([percent, percent, percent, percent]);
  expect(prices.get('Wages')).toEqual([money, money, money, money]);
  const rates = await shown('Rates');
  expect(rates.get('Nitrogen in the bag')).toEqual([percent, percent, plain, plain]);
  expect(rates.get('Volume of a cell')).toEqual([plain, plain, plain, plain]);
});
