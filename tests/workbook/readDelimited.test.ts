import { describe, expect, it } from 'vitest';
import { longestText } from '../../src/workbook/limits';
import { readDelimited } from '../../src/workbook/readDelimited';

describe('readDelimited', () => {
  it.each([
    ['comma', 'Plot,Length\nA,10\n', false],
    ['semicolon', 'Plot;Length\nA;10\n', true],
    ['tab', 'Plot\tLength\nA\t10\n', true],
    ['Windows line ends', 'Plot,Length\r\nA,10\r\n', false],
    ['byte-order mark', '\uFEFFPlot,Length\nA,10', false],
    ['blank lines before, between and after', '\n\nPlot,Length\n\n  \n,\nA,10\n\n', false],
  ])('reads the same cells: %s', (_, text, decimalComma) => {
    const read = readDelimited(text);
    expect(read.headers).toEqual(['Plot', 'Length']);
    expect(read.rows.map((row) => row.cells)).toEqual([['A', '10']]);
    expect(read.problems).toEqual([]);
    expect(read.decimalComma).toBe(decimalComma);
  });

  it('keeps separators, quotes and line ends inside quotes', () => {
    const read = readDelimited('Plot,Remark\n"North, by the ""old"" wall","two\nlines"\nB,x\n');
    expect(read.rows).toEqual([
      { line: 2, cells: ['North, by the "old" wall', 'two\nlines'] },
      { line: 4, cells: ['B', 'x'] },
    ]);
  });

  it.each(['\n', '\r\n', '\r'])('counts the lines of the file, blank ones too (line end %j)', (end) => {
    const read = readDelimited(['', 'Plot,Length', '', 'A,"1', '2"', '', 'B,3'].join(end));
    expect(read.headerLine).toBe(2);
    expect(read.rows.map((row) => row.line)).toEqual([4, 7]);
  });

  it('takes known headers, in their order, where the first line has none of them', () => {
    const headers = ['Plot', 'Crop', 'Length'];
    const known = { headers, mayBeBare: true };
    expect(readDelimited('\nA,gourd,10\nB,gourd,20\n', known)).toMatchObject({
      headers,
      isHeaded: false,
      rows: [
        { line: 2, cells: ['A', 'gourd', '10'] },
        { line: 3, cells: ['B', 'gourd', '20'] },
      ],
      problems: [],
    });
    expect(readDelimited('A\tgourd\n', known).headers).toEqual(['Plot', 'Crop']);
    expect(readDelimited('A,gourd,10,more\n', known).headers).toEqual([...headers, '']);
    expect(readDelimited('LENGTH,mine\n10,x\n', known)).toMatchObject({
      headers: ['LENGTH', 'mine'],
      rows: [{ line: 2, cells: ['10', 'x'] }],
    });
  });

  it('takes headers of another language for its own, whatever the accents', () => {
    const known = {
      headers: ['Parcela', 'Inicio'],
      mayBeBare: false,
      elsewhere: { Plot: 'Parcela', Début: 'Inicio' },
    };
    expect(readDelimited('plot,debut\nA,x\n', known)).toMatchObject({
      headers: ['Parcela', 'Inicio'],
      rows: [{ line: 2, cells: ['A', 'x'] }],
    });
    expect(readDelimited('Plot,Parcela\nA,B\n', known).problems).toEqual([
      { code: 'duplicateHeader', line: 1, header: 'Parcela', column: 2, firstColumn: 1 },
    ]);
  });

  it.each([',', ';', '\t'])(
    'finds known headers below the title of a saved sheet (between cells %j)',
    (between) => {
      const lines = [
        ['Plots', '', ''],
        ['"A lead, with a comma; and more."', '', ''],
        ['', '', ''],
        ['', '', 'ft'],
        ['Plot', 'Crop', '"Length"'],
        ['A', 'gourd', '10'],
      ];
      const text = lines.map((cells) => cells.join(between)).join('\r\n');
      for (const mayBeBare of [true, false]) {
        expect(readDelimited(text, { headers: ['Plot', 'Crop', 'Length'], mayBeBare })).toMatchObject({
          headers: ['Plot', 'Crop', 'Length'],
          headerLine: 5,
          isHeaded: true,
          rows: [{ line: 6, cells: ['A', 'gourd', '10'] }],
          problems: [],
        });
      }
    },
  );

  it('takes no line for headers by one name that may be a value', () => {
    const known = { headers: ['Plot', 'Layout', 'Rows'], mayBeBare: true, telling: ['Plot', 'Layout'] };
    expect(readDelimited('Bank 1\trows\nBank 2\thills\n', known)).toMatchObject({
      headers: ['Plot', 'Layout'],
      isHeaded: false,
      rows: [{ cells: ['Bank 1', 'rows'] }, { cells: ['Bank 2', 'hills'] }],
    });
    expect(readDelimited('Layout\tmine\nrows\tx\n', known).isHeaded).toBe(true);
    expect(readDelimited('Rows\tPlot\n4\tBank 1\n', known).isHeaded).toBe(true);
  });

  it('takes the first line for headers where none is known and the columns have no order', () => {
    const known = { headers: ['Plot', 'Crop'], mayBeBare: false };
    expect(readDelimited('Bed,Kind\nA,gourd\n', known)).toMatchObject({
      headers: ['Bed', 'Kind'],
      isHeaded: true,
    });
  });

  it('keeps every text as it is', () => {
    const read = readDelimited('Plot,Length\n007,1e3\n=2+2,+1\n');
    expect(read.rows.map((row) => row.cells)).toEqual([
      ['007', '1e3'],
      ['=2+2', '+1'],
    ]);
  });

  it('keeps a decimal comma in a semicolon file, also in the headers', () => {
    const read = readDelimited('Plot;Length, ft\nA;0,85\n');
    expect(read.headers).toEqual(['Plot', 'Length, ft']);
    expect(read.rows[0]?.cells).toEqual(['A', '0,85']);
  });

  it('names a line with too many cells and does not take it', () => {
    const read = readDelimited('Plot,Length\nB,2\nC,3,4\n');
    expect(read.problems).toEqual([{ code: 'raggedLine', line: 3, expected: 2, found: 3 }]);
    expect(read.rows.map((row) => row.cells[0])).toEqual(['B']);
  });

  it.each([
    ['a line', 'Plot,Crop\nA,gourd\nB,', 3],
    ['the header', 'Plot,', 1],
  ])('names a cell that no spreadsheet could hold, in %s, and does not take it', (_, before, line) => {
    const read = readDelimited(`${before}${'x'.repeat(longestText + 1)}\nC,gourd\n`);
    expect(read.problems).toEqual([
      { code: 'longCell', line, column: 2, length: longestText + 1, most: longestText },
    ]);
    expect(read.rows.map((row) => row.cells[0])).toEqual(line === 1 ? [] : ['A', 'C']);
    expect(readDelimited(`Plot,Crop\n${'x'.repeat(longestText)},gourd`).problems).toEqual([]);
  });

  it('takes a line that stops before its last blank cells, or has more of them', () => {
    const read = readDelimited('Plot,Crop,Length\nA\nB,gourd\nC,gourd,3,,\n');
    expect(read.problems).toEqual([]);
    expect(read.rows.map((row) => row.cells)).toEqual([
      ['A', '', ''],
      ['B', 'gourd', ''],
      ['C', 'gourd', '3'],
    ]);
  });

  it('takes such lines without a header too: the longest says how many of the known columns there are', () => {
    const known = { headers: ['Plot', 'Crop', 'Length'], mayBeBare: true };
    expect(readDelimited('A,gourd\nB,gourd,20\nC\nD,gourd,5,more\n', known)).toMatchObject({
      headers: known.headers,
      rows: [{ cells: ['A', 'gourd', ''] }, { cells: ['B', 'gourd', '20'] }, { cells: ['C', '', ''] }],
      problems: [{ code: 'raggedLine', line: 4, expected: 3, found: 4 }],
    });
  });

  it.each(['', '\n \n', '\uFEFF'])('says that %j is empty', (text) => {
    expect(readDelimited(text).problems).toEqual([{ code: 'empty' }]);
  });

  it('takes no line when a header stands twice, in any case: which column counts would be a guess', () => {
    expect(readDelimited('Plot,Length, plot\nA,1,B\nC\n')).toMatchObject({
      rows: [],
      problems: [{ code: 'duplicateHeader', line: 1, header: 'plot', column: 3, firstColumn: 1 }],
    });
  });

  it('takes columns without a header side by side', () => {
    expect(readDelimited('Plot,,\nA,,\n')).toMatchObject({ problems: [], rows: [{ cells: ['A', '', ''] }] });
  });

  it('names the line where a quote opens that never closes', () => {
    const read = readDelimited('Plot,Length\nA,1\nB,"2\nC,3\n');
    expect(read.problems).toEqual([{ code: 'openQuote', line: 3 }]);
    expect(read.rows.map((row) => row.cells[0])).toEqual(['A']);
  });

  it('names the line of a quote that closes inside a cell', () => {
    expect(readDelimited('Plot,Length\n"A"x,1\n').problems).toContainEqual({ code: 'openQuote', line: 2 });
  });

  it('names only the header line when a quote opens in it: it swallows the rest', () => {
    expect(readDelimited('\nPlot,"Length\nA,1\n').problems).toEqual([{ code: 'openQuote', line: 2 }]);
  });

  it('takes a file without rows', () => {
    expect(readDelimited('Plot,Length\n')).toMatchObject({ rows: [], problems: [] });
  });
});
