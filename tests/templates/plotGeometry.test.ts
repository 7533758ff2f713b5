/**
 * Area, Rows and Row length of random plots against the plants that `calc/plants` counts in them, and against a
 * count that lays out one row after the other in whole thousandths.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { functions } from '../../src/functions';
import { createFileWorkbook } from '../../src/hosts/file/createFileWorkbook';
import { demoSeason } from '../../src/templates/demoGarden';
import { plotsTemplate } from '../../src/templates/plots';
import { allTemplates } from '../../src/templates/sheets';
import { fillSheets } from '../../src/workbook/fillSheets';
import { isCellError, type ReadValue } from '../../src/workbook/port';
import type { InputRow } from '../../src/workbook/template';

type Line = Readonly<Record<string, ReadValue>>;

async function linesOf(plots: readonly InputRow[], units: 'us' | 'metric'): Promise<readonly Line[]> {
  const workbook = createFileWorkbook({ functions: [...functions.values()] });
  await fillSheets(
    workbook,
    allTemplates.map((template) => ({
      template,
      inputs: template === plotsTemplate ? plots.map((plot) => ({ Crop: 'summer squash', ...plot })) : [],
      form: { ...demoSeason, UNITS: units },
    })),
    'test',
  );
  const table = await workbook.readTable('Plots');
  return (table?.rows ?? []).map((row) =>
    Object.fromEntries(table?.headers.map((header, i) => [header, row[i] ?? null]) ?? []),
  );
}

/** Sizes in thousandths, so that counting is exact; many of them fit without a rest. */
const thousandths = (min: number, max: number) => fc.integer({ min: min * 1000, max: max * 1000 });
const tenths = (min: number, max: number) => fc.integer({ min: min * 10, max: max * 10 }).map((n) => n * 100);
const size = (min: number, max: number) => fc.oneof(thousandths(min, max), tenths(min, max));

interface Drawn {
  readonly layout: 'rows' | 'hills' | 'beds';
  readonly length: number;
  readonly width: number;
  readonly row: number;
  readonly plant: number;
  readonly path: number;
  readonly perBed: number;
  readonly perHill: number;
}
const plot: fc.Arbitrary<Drawn> = fc.record({
  layout: fc.constantFrom('rows', 'hills', 'beds'),
  length: size(10, 400),
  width: size(5, 200),
  row: size(1, 8),
  plant: size(4, 80),
  path: size(0, 3),
  perBed: fc.integer({ min: 1, max: 2 }),
  perHill: fc.integer({ min: 1, max: 4 }),
});

/** How many of that width stand side by side, with a gap between them: laid down one by one. */
function layDown(room: number, width: number, gap: number): number {
  let count = 0;
  for (let end = width; end <= room; end += width + gap) count += 1;
  return count;
}

function inputOf({ layout, length, width, row, plant, path, perBed, perHill }: Drawn): InputRow {
  const sides = { Layout: layout, Length: length / 1000, Width: width / 1000 };
  if (layout === 'hills') {
    const hills = { 'Row spacing': row / 1000, 'Hill spacing': row / 2000, 'Plants per hill': perHill };
    return { ...sides, ...hills };
  }
  const inRow = { ...sides, 'Plant spacing': plant / 1000 };
  if (layout === 'rows') return { ...inRow, 'Row spacing': row / 1000 };
  return { ...inRow, 'Bed width': row / 1000, 'Path width': path / 1000, 'Rows per bed': perBed };
}

describe.each([
  ['us', 12],
  ['metric', 100],
] as const)('rows of random plots in %s units', (units, spacingPerLength) => {
  test('are those that stand side by side, and hold the plants', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(plot, { minLength: 20, maxLength: 40 }), async (drawn) => {
        const lines = await linesOf(drawn.map(inputOf), units);
        drawn.forEach((one, i) => {
          const line = lines[i] ?? {};
          if (isCellError(line['Plants'])) {
            for (const header of ['Area', 'Rows', 'Row length']) {
              expect(isCellError(line[header]), header).toBe(true);
            }
            return;
          }
          const isBeds = one.layout === 'beds';
          const rows = layDown(one.width, one.row, isBeds ? one.path : 0) * (isBeds ? one.perBed : 1);
          expect(line['Rows']).toBe(rows);
          expect(line['Area']).toBeCloseTo((one.length * one.width) / 1e6, 6);
          const inRow =
            one.layout === 'hills'
              ? layDown(2 * one.length, one.row, 0)
              : layDown(one.length * spacingPerLength, one.plant, 0);
          const owns = one.layout === 'hills' ? one.row / 2000 : one.plant / 1000 / spacingPerLength;
          expect(line['Row length']).toBeCloseTo(rows * inRow * owns, 6);
        });
      }),
      { seed: 20261126, numRuns: 6 },
    );
  });
});

describe('a plot whose rows are not known', () => {
  const rows = { Layout: 'rows', 'Row spacing': 5, 'Plant spacing': 12 };
  test.each<[string, InputRow]>([
    ['without a width', { ...rows, Length: 100 }],
    ['with a side under 0', { ...rows, Length: 100, Width: -20 }],
    ['with words for a side', { ...rows, Length: 'long', Width: 20 }],
    ['too narrow', { ...rows, Length: 100, Width: 4 }],
    ['of an unknown layout', { ...rows, Layout: 'spiral', Length: 100, Width: 20 }],
  ])('%s has an error in each of the three, never 0', async (_, input) => {
    const [line = {}] = await linesOf([input], 'us');
    for (const header of ['Area', 'Rows', 'Row length']) expect(isCellError(line[header]), header).toBe(true);
  });

  test('counts a size that fits up to the dust of binary fractions (1.2 / 0.4 is 2.9999999999999996)', async () => {
    const input = { Layout: 'rows', Length: 10, Width: 1.2, 'Row spacing': 0.4, 'Plant spacing': 50 };
    const [line = {}] = await linesOf([input], 'metric');
    expect(line).toMatchObject({ Plants: 60, Rows: 3, 'Row length': 30 });
  });

  test('with plants typed over counts no rows of a side that is not there', async () => {
    const workbook = createFileWorkbook({ functions: [...functions.values()] });
    const requests = allTemplates.map((template) => ({
      template,
      inputs: template === plotsTemplate ? [{ Crop: 'zucchini', Length: 100, 'Plant spacing': 12 }] : [],
      form: demoSeason,
    }));
    await fillSheets(workbook, requests, 'test');
    const { area, headers } = (await workbook.readTable('Plots')) ?? {};
    if (area === undefined || headers === undefined) throw new Error('no Plots');
    const place = { sheet: area.sheet, row: area.row + 1, column: area.column + headers.indexOf('Plants') };
    await workbook.apply({
      title: 'test',
      expect: [],
      newSheets: [],
      cells: [{ ...place, contents: [[120]] }],
      tableRows: [],
      pictures: [],
      marks: [],
    });
    const row = (await workbook.readTable('Plots'))?.rows[0] ?? [];
    const of = (header: string) => row[headers.indexOf(header)] ?? null;
    expect(isCellError(of('Area')) && isCellError(of('Rows'))).toBe(true);
    expect(of('Row length')).toBe(120);
  });
});
