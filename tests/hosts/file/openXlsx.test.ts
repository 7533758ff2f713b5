/** Plans come back in, whichever program saved them; what is hostile is refused before it is read to its end. */
import exceljs from 'exceljs';
import { zipSync } from 'fflate';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import { functions } from '../../../src/functions';
import { createMemoryWorkbook } from '../../../src/hosts/file/createMemoryWorkbook';
import { openXlsx } from '../../../src/hosts/file/openXlsx';
import { mostParts, mostRatio, mostUnpackedBytes } from '../../../src/hosts/file/readPackage';
import { mostCells } from '../../../src/hosts/file/readSheetCells';
import { longestText } from '../../../src/workbook/limits';
import { mostBetweenTags, mostDepth } from '../../../src/hosts/file/readXml';
import { demoSeason } from '../../../src/templates/demoGarden';
import { allTemplates } from '../../../src/templates/sheets';
import { mostFileBytes } from '../../../src/workbook/fileLimits';
import { fillSheets } from '../../../src/workbook/fillSheets';
import { HostError, type ReadValue } from '../../../src/workbook/port';
import { readFilling } from '../../../src/workbook/readFilling';
import { packBook, sheetXml, tableParts, tableXml, workbookXml } from './packedBook';
import { savedPlan, savedPlots, typedFigure } from './savedPlan';

const empty = () => createMemoryWorkbook({ functions: [...functions.values()] });
const readPlan = (bytes: Uint8Array) => readFilling(openXlsx(bytes), allTemplates, empty);

async function ours(): Promise<Uint8Array> {
  const workbook = empty();
  await fillSheets(workbook, savedPlan, 'plan');
  return workbook.bytes();
}

const converted = join(import.meta.dirname, '../../fixtures/libreoffice-7.4.7/plan.xlsx');

describe('a plan comes back', () => {
  it.each([
    ['as this tool wrote it', ours],
    ['as LibreOffice saved it', async () => new Uint8Array(readFileSync(converted))],
  ])('%s', async (_, file) => {
    const filling = await readPlan(await file());
    const plots = filling?.requests.find(({ template }) => template.id === 'plots');
    expect(plots).toMatchObject({ inputs: savedPlots, problems: [] });
    expect(filling?.requests[0]?.form).toMatchObject({ ...demoSeason, UNITS: 'metric', ASSURANCE: 0.95 });
    expect(filling?.typedOver).toBe(1);
    const again = empty();
    await fillSheets(again, filling?.requests ?? [], 'again');
    const crops = await again.readTable('Crops');
    const row = crops?.rows.find(([crop]) => crop === typedFigure.crop);
    expect(row?.[crops?.headers.indexOf(typedFigure.trait) ?? -1]).toBe(typedFigure.value);
  });

  it('written back by exceljs 4.4, which keeps only names of cells', async () => {
    const book = new exceljs.Workbook();
    await book.xlsx.load((await ours()).buffer as ArrayBuffer);
    book.addWorksheet('Plots 2027').getCell('A1').value = 'Plots';
    const written = new Uint8Array(await book.xlsx.writeBuffer());
    const filling = await readPlan(written);
    const plots = filling?.requests.find(({ template }) => template.id === 'plots');
    // It takes the escape of a text for what it stands for, and does not write it as one again.
    const kept = savedPlots.map((row) => (row['Plot'] === '_x0041_' ? { ...row, Plot: 'A' } : row));
    expect(plots).toMatchObject({ inputs: kept, problems: [] });
    expect(filling?.requests[0]?.form).toMatchObject({ ...demoSeason, UNITS: 'metric', ASSURANCE: 0.95 });
    expect(filling?.typedOver).toBe(1);
    const sheets = await openXlsx(written).sheets();
    expect(sheets.filter(({ mark }) => mark === null).map(({ name }) => name)).toEqual([
      '_lists',
      'Plots 2027',
    ]);
  });
});

describe('a workbook that another program wrote', () => {
  const header =
    '<row r="3"><c r="B3" t="inlineStr"><is><t>Crop</t></is></c><c r="C3" t="s"><v>0</v></c><c r="D3" t="str"><v>Own</v></c></row>';
  const table = (rows: string): Record<string, string> => ({
    'xl/worksheets/sheet2.xml': sheetXml(header + rows, tableParts),
    'xl/tables/table1.xml': tableXml('B3:D5'),
    'xl/sharedStrings.xml':
      '<sst xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><si><t>Plot</t></si><si><r><t>rich </t></r><r><rPr><b/></rPr><t xml:space="preserve">text </t></r><rPh sb="0" eb="1"><t>said</t></rPh></si><si><t>a_x000D__x005F_x0041_</t></si></sst>',
  });
  const rowsOf = async (rows: string): Promise<readonly (readonly ReadValue[])[] | undefined> =>
    (await openXlsx(packBook(table(rows))).readTable('plots'))?.rows;

  it('has its table wherever it stands, in a sheet of any name, with columns in any order', async () => {
    const book = openXlsx(packBook(table('<row r="4"><c r="C4"><v>1</v></c></row>')));
    expect(await book.sheets()).toMatchObject([
      { name: 'Notes', mark: null },
      { name: "Joe's plots", mark: { template: 'plots', version: 1 } },
    ]);
    expect(await book.readTable('Plots')).toEqual({
      name: 'Plots',
      // The fifth line of the table is not there.
      area: { sheet: "Joe's plots", row: 2, column: 1, rows: 2, columns: 3 },
      headers: ['Crop', 'Plot', 'Own'],
      rows: [[null, 1, null]],
    });
  });

  it('has values of every type', async () => {
    const cells = [
      '<c r="B4" t="s"><v>1</v></c><c r="C4" t="s"><v>2</v></c><c r="D4" t="b"><v>1</v></c>',
      '<c r="B5" t="e"><v>#REF!</v></c><c r="C5" t="d"><v>2026-05-02T00:00:00</v></c><c r="D5"><v>1.5E-7</v></c>',
    ];
    expect(await rowsOf(`<row r="4">${cells[0]}</row><row r="5">${cells[1]}</row>`)).toEqual([
      ['rich text ', 'a\r_x0041_', true],
      [{ error: '#REF!', message: null }, '2026-05-02', 1.5e-7],
    ]);
  });

  it('has cells without addresses, in the order they stand in', async () => {
    expect(await rowsOf('<row><c/><c><v>7</v></c><c/><c><v>8</v></c></row>')).toEqual([[7, null, 8]]);
  });

  it('has the value of a formula and its text, and an error where nobody has calculated it', async () => {
    const rows =
      '<row r="4"><c r="B4"><f>1+1</f><v>2</v></c><c r="C4" t="str"><f>A1</f><v>x</v></c><c r="D4"><f>B4</f></c></row>';
    const book = openXlsx(packBook(table(rows)));
    const area = { sheet: "Joe's plots", row: 3, column: 1, rows: 1, columns: 3 };
    expect(await book.read(area)).toEqual({
      values: [[2, 'x', { error: '#N/A', message: null }]],
      formulas: [['=1+1', '=A1', '=B4']],
    });
  });

  it.each(['NaN', '1e999', 'INF', '0x10', '1,5', ''])(
    'keeps what is no number as the text it is: "%s"',
    async (text) => {
      expect(await rowsOf(`<row r="4"><c r="B4"><v>${text}</v></c></row>`)).toEqual([[text, null, null]]);
    },
  );

  it('has tags with a prefix, and its names in quotes', async () => {
    const names =
      '<definedName name="last_frost">\'Joe\'\'s plots\'!$B$2</definedName><definedName name="WHOLE">\'Joe\'\'s plots\'!$B$2:$B$3</definedName><definedName name="ELSEWHERE">Notes!$A$1</definedName><definedName name="GONE">#REF!</definedName>';
    const prefixed = workbookXml(names)
      .replace('xmlns=', 'xmlns:x=')
      .replace(/<(\/?)(?=[a-z])/g, '<$1x:');
    const book = openXlsx(packBook({ 'xl/workbook.xml': prefixed }));
    expect(await book.locate('LAST_FROST')).toEqual({
      sheet: "Joe's plots",
      row: 1,
      column: 1,
      rows: 1,
      columns: 1,
    });
    for (const name of ['WHOLE', 'ELSEWHERE', 'GONE', 'NONE']) expect(await book.locate(name)).toBeNull();
  });

  it.each([
    ['1', 1462],
    ['true', 1462],
    ['0', 0],
    ['false', 0],
  ])('says what its days count from: date1904="%s"', (value, days) => {
    const properties = ` date1904="${value}"`;
    expect(openXlsx(packBook({ 'xl/workbook.xml': workbookXml('', properties) })).daysToAdd).toBe(days);
  });
});

describe('a file that is no plan', () => {
  const refusal = (bytes: Uint8Array): unknown => {
    try {
      openXlsx(bytes);
    } catch (error) {
      if (error instanceof HostError) return error.problem;
      throw error;
    }
    return 'taken';
  };
  const compound = (text: string): Uint8Array =>
    Uint8Array.from([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1, ...Buffer.from(text, 'utf16le')]);
  const zipOf = (...names: string[]): Uint8Array =>
    zipSync(Object.fromEntries(names.map((name) => [name, new Uint8Array(3)])));

  it.each([
    ['an older workbook', compound('Workbook'), { code: 'fileOtherKind', kind: '.xls' }],
    ['one with a password', compound('EncryptedPackage'), { code: 'fileEncrypted' }],
    ['an .ods', zipOf('mimetype', 'content.xml'), { code: 'fileOtherKind', kind: '.ods' }],
    ['an .xlsb', zipOf('xl/workbook.bin'), { code: 'fileOtherKind', kind: '.xlsb' }],
    ['a .numbers', zipOf('Index/Document.iwa'), { code: 'fileOtherKind', kind: '.numbers' }],
    ['another zip', zipOf('photo.jpg'), { code: 'fileNoWorkbook' }],
    ['a picture', Uint8Array.from([0x89, 0x50, 0x4e, 0x47]), { code: 'fileNoWorkbook' }],
    ['nothing', new Uint8Array(), { code: 'fileNoWorkbook' }],
    ['the beginning of a zip', packBook().subarray(0, 500), { code: 'fileDamaged' }],
  ])('%s is named', (_, bytes, problem) => expect(refusal(bytes)).toEqual(problem));

  it('a zip with a password is named', () => {
    const bytes = packBook();
    // The first entry of the directory; its ninth byte has the flag.
    bytes[Buffer.from(bytes).indexOf('PK\x01\x02') + 8] = 1;
    expect(refusal(bytes)).toEqual({ code: 'fileEncrypted' });
  });

  it('a workbook without a sheet of ours is none of ours', async () => {
    const unmarked = workbookXml().replace('_made_by_template', 'other');
    const read = vi.fn();
    const book = openXlsx(packBook({ 'xl/workbook.xml': unmarked, 'xl/worksheets/sheet2.xml': '<not read' }));
    expect(await readFilling(book, allTemplates, read)).toBeNull();
  });

  it('one that lost a cell or a table says which', async () => {
    await expect(readPlan(packBook())).rejects.toMatchObject({
      problem: { code: 'sheetDamaged', sheet: "Joe's plots", missing: 'Plots' },
    });
  });

  it('cut off anywhere, or with any byte changed, is refused or read: nothing else happens', () => {
    const bytes = packBook();
    for (let length = 0; length < bytes.length; length += 7) {
      expect(refusal(bytes.slice(0, length))).toMatchObject({ code: expect.stringMatching(/^file/) });
    }
    for (let at = 0; at < bytes.length; at++) {
      const changed = bytes.slice();
      changed[at] = (changed[at] ?? 0) ^ 0x55;
      const problem = refusal(changed);
      if (problem !== 'taken') expect(problem).toMatchObject({ code: expect.stringMatching(/^file/) });
    }
  });
});

describe('a hostile file is not read to its end', () => {
  /** Why, in our words for whoever is asked for help. */
  const stopped = (bytes: Uint8Array): { code: string; detail: string } => {
    try {
      openXlsx(bytes);
    } catch (error) {
      if (error instanceof HostError)
        return { code: error.problem.code, detail: String((error.cause as Error).message) };
      throw error;
    }
    throw new Error('taken');
  };
  const numberIn = (detail: string): number => Number(/\d{4,}/.exec(detail)?.[0]);
  const sheet = (rows: string): Uint8Array => packBook({ 'xl/worksheets/sheet2.xml': sheetXml(rows) });

  it('of more bytes than a plan has', () => {
    const bytes = new Uint8Array(mostFileBytes + 1);
    bytes.set(packBook());
    expect(stopped(bytes)).toEqual({ code: 'fileTooBig', detail: `${mostFileBytes + 1} bytes` });
  });

  it('that unpacks to a thousand times its size', () => {
    const { code, detail } = stopped(
      packBook({ 'xl/worksheets/sheet2.xml': new Uint8Array(50_000_000).fill(32) }),
    );
    expect(code).toBe('fileTooBig');
    // The million that is let through, and what the next bit of packed bytes gave: of fifty.
    expect(numberIn(detail)).toBeLessThan(1_000_000 + 4096 * 1032);
    expect(mostRatio).toBeLessThan(1032);
  });

  /** Hardly packs when it stands alone, 65 to 1 when it is repeated: within the ratio. */
  const noise = Array.from({ length: 4000 }, (_, index) => ((index * 7919) % 99_991) + 10_000).join('');

  it('that unpacks to more than the memory should hold, though not at a suspicious ratio', () => {
    const row = `<row><c t="str"><v>${noise}</v></c></row>`;
    const { code, detail } = stopped(sheet(row.repeat(Math.ceil((2 * mostUnpackedBytes) / row.length))));
    expect(code).toBe('fileTooBig');
    expect(numberIn(detail)).toBeGreaterThan(mostUnpackedBytes);
    expect(numberIn(detail)).toBeLessThan(mostUnpackedBytes + 4096 * 1032);
  });

  it('of more parts than a workbook has', () => {
    const many = Object.fromEntries(Array.from({ length: mostParts }, (_, index) => [`part${index}`, '']));
    expect(stopped(packBook(many))).toMatchObject({
      code: 'fileTooBig',
      detail: expect.stringContaining('parts'),
    });
  });

  it('that nests without end', () => {
    const { code, detail } = stopped(sheet('<a>'.repeat(1000)));
    expect(code).toBe('fileTooBig');
    expect(detail).toContain(`deeper than ${mostDepth}`);
  });

  it.each([
    ['entities that multiply', '<!DOCTYPE a [<!ENTITY b "bbb"><!ENTITY c "&b;&b;">]>'],
    ['an entity out of another file', '<!DOCTYPE a [<!ENTITY b SYSTEM "file:///etc/passwd">]>'],
  ])('with %s', (_, declaration) => {
    const bytes = packBook({
      'xl/worksheets/sheet2.xml': declaration + sheetXml('<row><c t="str"><v>&c;</v></c></row>'),
    });
    expect(stopped(bytes)).toMatchObject({
      code: 'fileDamaged',
      detail: expect.stringContaining('document type'),
    });
  });

  it.each([
    ['a text', 'inlineStr', '<is><t>', '</t></is>'],
    ['a value', 'n', '<v>', '</v>'],
    ['a comment', 'n', '<!--', '-->'],
    ['a name', 'n', '<', '/>'],
  ])('with %s of twenty million characters', (_, type, before, after) => {
    const long = `a${noise}`.repeat(20_000_000 / noise.length);
    const { code, detail } = stopped(sheet(`<row><c t="${type}">${before}${long}${after}</c></row>`));
    expect(code).toBe('fileTooBig');
    if (detail.includes('characters')) expect(numberIn(detail)).toBeLessThan(2 * mostBetweenTags);
    else expect(detail).toContain(`more than ${longestText}`);
  });

  it('with more cells than a plan has', () => {
    const cells = Array.from(
      { length: 2 * mostCells },
      (_, index) => `<c><v>${(index * 7919) % 99_991}</v></c>`,
    );
    const rows = Array.from({ length: 800 }, (_, index) =>
      ['<row>', ...cells.slice(index * 1000, index * 1000 + 1000), '</row>'].join(''),
    );
    expect(stopped(sheet(rows.join('')))).toMatchObject({
      code: 'fileTooBig',
      detail: expect.stringContaining(`${mostCells} cells`),
    });
  });

  it('whose table says that it has all rows and columns of a sheet', async () => {
    const far =
      '<row r="1"><c r="A1"><v>1</v></c></row><row r="1048576"><c r="XFD1048576"><v>1</v></c></row>';
    const whole = { 'xl/tables/table1.xml': tableXml('A1:XFD1048576') };
    const bytes = packBook({ 'xl/worksheets/sheet2.xml': sheetXml(far, tableParts), ...whole });
    await expect(openXlsx(bytes).readTable('Plots')).rejects.toMatchObject({
      problem: { code: 'fileTooBig' },
    });
    const near = sheetXml(
      '<dimension ref="A1:XFD1048576"/><row r="1"><c r="A1"><v>1</v></c></row>',
      tableParts,
    );
    const small = packBook({ 'xl/worksheets/sheet2.xml': near, ...whole });
    expect(await openXlsx(small).readTable('Plots')).toMatchObject({ area: { rows: 1, columns: 1 } });
  });

  it.each([
    ['a shared text that is not there', '<row><c t="s"><v>7</v></c></row>'],
    ['a shared text before the first', '<row><c t="s"><v>-1</v></c></row>'],
    ['a row that is no number', '<row r="x"><c><v>1</v></c></row>'],
    ['a cell that no sheet has', '<row r="1"><c r="XFE1"><v>1</v></c></row>'],
    ['a cell without a row', '<row r="1"><c r="A"><v>1</v></c></row>'],
    ['an entity that is none', '<row><c t="str"><v>&nbsp;</v></c></row>'],
    ['a tag that is not closed', '<row><c>'],
  ])('with %s', (_, rows) => expect(stopped(sheet(rows)).code).toBe('fileDamaged'));

  /** As programs write a colour that was given to whole columns of rows. */
  const formatted = (rows: number): string =>
    Array.from(
      { length: rows },
      (_, i) => `<row r="${i + 2}" s="3" customFormat="1"><c r="A${i + 2}" s="3"/></row>`,
    ).join('');
  const filled = '<row r="1"><c r="A1"><v>1</v></c></row>';

  it.each([
    // Here they nest too deep; a million of them come to more bytes than are unpacked, which takes a test a minute.
    ['then something that is not read', filled + formatted(2000) + '<a>'.repeat(mostDepth)],
    ['more than a sheet has', `${filled}<row r="1048577"><c><v>1</v></c></row>`],
  ])('with empty rows, %s', (_, rows) => {
    expect(stopped(sheet(rows)).code).toBe('fileEmptyRows');
  });

  it('but not one with some empty rows that have a format', async () => {
    expect(await openXlsx(sheet(filled + formatted(5000))).sheets()).not.toEqual([]);
  });

  it('with another length of a part than the file says', () => {
    const bytes = packBook();
    // The unpacked length of the first entry of the directory.
    const at = Buffer.from(bytes).indexOf('PK\x01\x02') + 24;
    bytes[at] = (bytes[at] ?? 0) + 1;
    expect(stopped(bytes)).toMatchObject({
      code: 'fileDamaged',
      detail: expect.stringContaining('instead of'),
    });
  });

  it('with bytes that are no text', () => {
    const bytes = packBook({ 'xl/worksheets/sheet2.xml': Uint8Array.of(0xff, 0xfe, 0x3c, 0x00) });
    expect(stopped(bytes).code).toBe('fileDamaged');
  });
});
