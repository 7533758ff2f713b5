import { mkdtempSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { NewFile } from 'excelize-wasm';
import { strFromU8, unzipSync } from 'fflate';
import { beforeAll, describe, expect, it } from 'vitest';
import { createFileWorkbook } from '../../../src/hosts/file/createFileWorkbook';
import { functions, longList, planChange, plotNames } from './planSheets';

/** Another library reads what ours wrote. */
const excelize = createRequire(import.meta.url)('excelize-wasm') as typeof import('excelize-wasm');
const plots = "Joe's plots";
let file: NewFile;
let parts: Record<string, string>;

beforeAll(async () => {
  const path = join(mkdtempSync(join(tmpdir(), 'file-host-')), 'plan.xlsx');
  const workbook = createFileWorkbook({ functions });
  await workbook.apply(planChange);
  await workbook.save(path, { replace: false });
  const bytes = new Uint8Array(readFileSync(path));
  const library = await excelize.init(
    createRequire(import.meta.url).resolve('excelize-wasm/excelize.wasm.gz'),
  );
  file = library.OpenReader(bytes);
  parts = Object.fromEntries(Object.entries(unzipSync(bytes)).map(([name, part]) => [name, strFromU8(part)]));
});

const raw = (sheet: string, cell: string): string =>
  file.GetCellValue(sheet, cell, { RawCellValue: true }).value;
const formula = (sheet: string, cell: string): string => file.GetCellFormula(sheet, cell).formula;
/** The cell as it is stored. */
function stored(sheetNumber: number, cell: string): string {
  return (
    new RegExp(`<c r="${cell}"[^>]*?(/>|>.*?</c>)`).exec(
      parts[`xl/worksheets/sheet${sheetNumber}.xml`] ?? '',
    )?.[0] ?? ''
  );
}

describe('values', () => {
  it('keeps every text as it was typed, never as a formula', () => {
    const texts = plotNames.map((_, index) => raw(plots, `A${index + 4}`));
    expect(texts).toEqual(plotNames);
    plotNames.forEach((_, index) => {
      expect(formula(plots, `A${index + 4}`)).toBe('');
      expect(stored(2, `A${index + 4}`)).toContain('t="s"');
      expect(file.GetStyle(file.GetCellStyle(plots, `A${index + 4}`).style).style).toMatchObject({
        NumFmt: 49,
      });
    });
    expect(raw('Season', 'B9')).toBe('=1+1');
    expect(file.GetStyle(file.GetCellStyle('Season', 'B9').style).style).toMatchObject({ NumFmt: 49 });
  });

  it('stores dates as serials shown as dates', () => {
    expect(stored(1, 'B2')).toContain('<v>46144</v>');
    expect(file.GetCellValue('Season', 'B2').value).toBe('2026-05-02');
    expect(stored(2, 'F4')).toContain('<v>46144</v>');
    expect(file.GetCellValue(plots, 'F4').value).toBe('2026-05-02');
    expect(file.GetCellValue(plots, 'D4').value).toBe('20');
  });

  it('stores what our functions computed as values, a refusal as an error with its message in a note', () => {
    expect(formula(plots, 'D4')).toBe('');
    expect(raw(plots, 'D4')).toBe('20');
    expect(stored(2, 'D5')).toMatch(/t="e"><v>#VALUE!<\/v>/);
    const note = file.GetComments(plots).comments.find(({ Cell }) => Cell === 'D5');
    expect(note).toMatchObject({ Paragraph: [{ Text: 'Length must be a number, for example 100.' }] });
  });
});

describe('formulas', () => {
  it.each([
    [1, 'Season', 'B3', 'SUM(TestPlots[[Length (ft)]])', '<v>430</v>'],
    [1, 'Season', 'B4', 'YEAR(LAST_FROST)', '<v>2026</v>'],
    [1, 'Season', 'B5', 'INDEX(TestPlots[Twice],MATCH("007",TestPlots[Plot],0))', '<v>20</v>'],
    [1, 'Season', 'B6', 'SUM(TestPlots[Twice])', '<v>#VALUE!</v>'],
    [1, 'Season', 'B7', '1=2', '<v>0</v>'],
    [1, 'Season', 'B8', '1-1', '<v>0</v>'],
    [2, plots, 'E4', 'TestPlots[[#This Row],[Length (ft)]]*3', '<v>30</v>'],
    [2, plots, 'E5', 'TestPlots[[#This Row],[Length (ft)]]*3', '<v>#VALUE!</v>'],
    [2, plots, 'G4', 'IF(TestPlots[[#This Row],[Thrice]]>100,"long & ""wide""","")', '<v></v>'],
    [
      2,
      plots,
      'G8',
      'IF(TestPlots[[#This Row],[Thrice]]>100,"long & ""wide""","")',
      '<v>long &amp; &quot;wide&quot;</v>',
    ],
    [2, plots, 'C2', 'IF(UNITS="us","ft","m")', '<v>ft</v>'],
  ])('sheet %d: %s!%s is %s with its result', (number, sheet, cell, text, result) => {
    expect(formula(sheet, cell)).toBe(text);
    expect(stored(number, cell)).toContain(result);
  });
});

describe('names, tables, lists, notes', () => {
  it('names the inputs and marks each sheet by a hidden name of its own', () => {
    const names = file.GetDefinedName().definedNames;
    expect(names).toContainEqual({
      Comment: '',
      Name: 'UNITS',
      RefersTo: "'Season'!$B$1",
      Scope: 'Workbook',
    });
    expect(names).toContainEqual({
      Comment: '',
      Name: 'LAST_FROST',
      RefersTo: "'Season'!$B$2",
      Scope: 'Workbook',
    });
    expect(names).toContainEqual({
      Comment: '',
      Name: '_made_by_template',
      RefersTo: '"season 1"',
      Scope: 'Season',
    });
    expect(names).toContainEqual({
      Comment: '',
      Name: '_made_by_template',
      RefersTo: '"plots 3"',
      Scope: plots,
    });
    expect(parts['xl/workbook.xml']).toContain('name="_made_by_template" localSheetId="1" hidden="1"');
  });

  it('holds the table, and the formula that a new row gets where any program can compute it', () => {
    expect(file.GetTables(plots).tables).toMatchObject([{ Name: 'TestPlots', Range: 'A3:G12' }]);
    const table = parts['xl/tables/table1.xml'] ?? '';
    const columns = [...table.matchAll(/<tableColumn id="\d+" name="([^"]*)"(?:\/>|>(.*?)<\/tableColumn>)/g)];
    expect(columns.map(([, name]) => name)).toEqual(planChange.newSheets[1]?.tables[0]?.headers);
    expect(columns[4]?.[2]).toBe(
      '<calculatedColumnFormula>TestPlots[[#This Row],[Length (ft)]]*3</calculatedColumnFormula>',
    );
    expect(columns[3]?.[2]).toBeUndefined();
  });

  it('offers lists, long ones from a hidden sheet, and lets other entries in', () => {
    const validation = (sheet: number): string =>
      /<dataValidation .*?<\/dataValidation>/.exec(parts[`xl/worksheets/sheet${sheet}.xml`] ?? '')?.[0] ?? '';
    expect(validation(1)).toBe(
      '<dataValidation type="list" allowBlank="1" sqref="B1"><formula1>&quot;us,metric&quot;</formula1></dataValidation>',
    );
    expect(validation(2)).toBe(
      '<dataValidation type="list" allowBlank="1" sqref="B4:B12"><formula1>&apos;_lists&apos;!$A$1:$A$40</formula1></dataValidation>',
    );
    expect(file.GetSheetVisible('_lists').visible).toBe(false);
    expect(file.GetRows('_lists').result.map(([value]) => value)).toEqual(longList);
  });

  it('gives each note a box for its text', () => {
    const shapes = [
      ...(parts['xl/drawings/vmlDrawing2.vml'] ?? '').matchAll(/<v:shape [\s\S]*?<\/v:shape>/g),
    ];
    const heights = shapes.map(([shape]) => Number(/height:([\d.]+)pt/.exec(shape)?.[1]));
    expect(heights).toHaveLength(3);
    const [long = 0, short = 0] = heights;
    expect(long).toBeGreaterThan(short * 2);
    expect(parts['xl/comments2.xml']).toContain('<author></author>');
  });

  it('carries the picture with its alt text', () => {
    const [picture] = file.GetPictures('Season', 'A12').pictures;
    expect(picture?.Format.AltText).toBe('A dot & "nothing" else');
    expect([...(picture?.File ?? [])]).toEqual([...(planChange.pictures[0]?.png ?? [])]);
  });
});

describe('page and view', () => {
  it('prints landscape, one page wide, with its titles on every page and the page numbers below', () => {
    expect(file.GetPageLayout(plots).opts).toMatchObject({
      Orientation: 'landscape',
      FitToWidth: 1,
      FitToHeight: 0,
    });
    expect(parts['xl/worksheets/sheet2.xml']).toContain('<pageSetUpPr fitToPage="1"');
    expect(file.GetDefinedName().definedNames).toContainEqual({
      Comment: '',
      Name: '_xlnm.Print_Titles',
      RefersTo: "'Joe''s plots'!$A:$A,'Joe''s plots'!$2:$3",
      Scope: plots,
    });
    expect(file.GetHeaderFooter(plots).opts.OddFooter).toBe('&L&A&R&P / &N');
  });

  it('freezes headers and the first column, and keeps the widths', () => {
    expect(file.GetPanes(plots).panes).toMatchObject({ Freeze: true, XSplit: 1, YSplit: 3 });
    expect(file.GetColWidth(plots, 'G').width).toBe(24);
  });
});

it('writes a workbook without sheets as a file that opens', async () => {
  const path = join(mkdtempSync(join(tmpdir(), 'file-host-')), 'empty.xlsx');
  await createFileWorkbook({ functions }).save(path, { replace: false });
  const library = await excelize.init(
    createRequire(import.meta.url).resolve('excelize-wasm/excelize.wasm.gz'),
  );
  expect(library.OpenReader(new Uint8Array(readFileSync(path))).GetSheetList().list).toEqual(['Sheet1']);
});
