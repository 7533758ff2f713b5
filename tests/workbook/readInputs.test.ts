import { describe, expect, it } from 'vitest';
import { readDelimited } from '../../src/workbook/readDelimited';
import { readInputs } from '../../src/workbook/readInputs';
import type { TableColumn, TableTemplate } from '../../src/workbook/template';

const asked = (header: string, format: TableColumn['format'], choices: string[] = []): TableColumn => ({
  header,
  kind: 'input',
  compute: null,
  format,
  width: 9,
  choices,
  note: '',
  unit: null,
});
const table: TableTemplate = {
  name: 'Things',
  heading: '',
  rows: null,
  grows: true,
  columns: [
    asked('Name', 'text'),
    asked('Kind', 'text', ['Round', 'Long']),
    asked('Size', 'general'),
    asked('Day', 'date'),
    { ...asked('Twice', 'general'), kind: 'computed', compute: { value: 2 } },
  ],
};
const read = (text: string) => readInputs(table, readDelimited(text));

describe('readInputs', () => {
  it('reads each cell as its column asks, whatever the order and case of the headers', () => {
    // Serial 46144 is 2026-05-02 (serialDate.test).
    expect(read('size,NAME,Day,Kind\n85%,007,2026-05-02,ROUND\n,=2+2,,\n')).toEqual({
      inputs: [{ Name: '007', Kind: 'ROUND', Size: 0.85, Day: 46144 }, { Name: '=2+2' }],
      problems: [],
      leftOut: [],
    });
  });

  it('puts the choice into the cell where another word for it was typed, whatever its accents and capitals', () => {
    const spoken: TableTemplate = {
      ...table,
      columns: [
        asked('Name', 'text'),
        {
          ...asked('Kind', 'text', ['Round', 'Long']),
          words: { Round: ['redondo', 'bola'], Long: ['larguísimo'] },
        },
      ],
    };
    const { inputs, problems } = readInputs(
      spoken,
      readDelimited('Name,Kind\nA,BOLA\nB,larguisimo\nC,ROUND\nD,cuadrado\n'),
    );
    expect(inputs.map(({ Kind }) => Kind)).toEqual(['Round', 'Long', 'ROUND', 'cuadrado']);
    expect(problems).toMatchObject([{ code: 'notAChoice', line: 5, choices: ['Round', 'Long'] }]);
  });

  it('keeps what cannot be read, marked where programs might read a number, and names line and column', () => {
    const { inputs, problems } = read('Name,Kind,Size,Day\nA,square,"1,000",2 May\nB,long,$5,\n');
    expect(inputs).toEqual([
      { Name: 'A', Kind: 'square', Size: '1,000?', Day: '2 May' },
      { Name: 'B', Kind: 'long', Size: '$5?' },
    ]);
    expect(problems).toEqual([
      { code: 'notAChoice', line: 2, header: 'Kind', given: 'square', choices: ['Round', 'Long'] },
      { code: 'commaInNumber', line: 2, header: 'Size', given: '1,000' },
      { code: 'notADate', line: 2, header: 'Day', given: '2 May' },
      { code: 'currencySign', line: 3, header: 'Size', given: '$5' },
    ]);
  });

  it('quotes what comes back with our mark as it was typed first, and leaves a mark that a person put', () => {
    const { inputs, problems } = read('Name,Kind,Size,Day\nA,Long,"1,000?",\nB,Long,$5?,\nC,Long,5?,\n');
    expect(inputs.map(({ Size }) => Size)).toEqual(['1,000?', '$5?', '5?']);
    expect(problems).toEqual([
      { code: 'commaInNumber', line: 2, header: 'Size', given: '1,000' },
      { code: 'currencySign', line: 3, header: 'Size', given: '$5' },
      { code: 'notANumber', line: 4, header: 'Size', given: '5?' },
    ]);
  });

  it('joins a number that a comma between digits has split: no whole number begins with a 0', () => {
    const numbers: TableTemplate = {
      ...table,
      columns: [asked('Name', 'text'), asked('Size', 'price'), asked('Count', 'whole'), asked('Lot', 'text')],
    };
    const readNumbers = (text: string) => readInputs(numbers, readDelimited(text));
    const { inputs, problems } = readNumbers('Name,Size,Count,Lot\nA,0,04,\nB,12,05%,\nC,0,4,\nD,1,0,05\n');
    expect(inputs).toEqual([
      { Name: 'A', Size: '0,04?' },
      { Name: 'B', Size: '12,05%?' },
      { Name: 'C', Size: 0, Count: 4 },
      { Name: 'D', Size: 1, Count: 0, Lot: '05' },
    ]);
    expect(problems).toEqual([
      { code: 'commaInNumber', line: 2, header: 'Size', given: '0,04' },
      { code: 'commaInNumber', line: 3, header: 'Size', given: '12,05%' },
    ]);
    expect(readNumbers('Name;Size;Count\nA;0;04\n').inputs).toEqual([{ Name: 'A', Size: 0, Count: 4 }]);
  });

  it('joins such a number before free text too: cents, or what comes after a 0 that cannot be', () => {
    const priced: TableTemplate = {
      ...table,
      columns: [
        asked('Name', 'text'),
        { ...asked('Price', 'money'), limits: { above: 0 } },
        asked('Lot', 'text'),
      ],
    };
    const readPriced = (...lines: readonly string[]) =>
      readInputs(priced, readDelimited(['Name,Price,Lot', ...lines].join('\n'))).inputs;
    expect(readPriced('A,0,04', 'B,3,50', 'C,0,5', 'D,3,50%')).toEqual([
      { Name: 'A', Price: '0,04?' },
      { Name: 'B', Price: '3,50?' },
      { Name: 'C', Price: '0,5?' },
      { Name: 'D', Price: '3,50%?' },
    ]);
    // Numbers of lots and notes stay.
    expect(readPriced('A,4,007', 'B,3,5', 'C,3.50,50', 'D,3,50 seeds', 'E,3,2026')).toEqual([
      { Name: 'A', Price: 4, Lot: '007' },
      { Name: 'B', Price: 3, Lot: '5' },
      { Name: 'C', Price: 3.5, Lot: '50' },
      { Name: 'D', Price: 3, Lot: '50 seeds' },
      { Name: 'E', Price: 3, Lot: '2026' },
    ]);
  });

  it('keeps a number that its column does not take, and says why', () => {
    const rows = 'Name,Share,Count\nA,85,2.5\nB,185%,0\nC,1.5,\nD,85%,3\n';
    const limited: TableTemplate = {
      ...table,
      columns: [
        asked('Name', 'text'),
        { ...asked('Share', 'percent'), limits: { above: 0, atMost: 1 } },
        { ...asked('Count', 'general'), limits: { atLeast: 1, isWhole: true } },
      ],
    };
    const { inputs, problems } = readInputs(limited, readDelimited(rows));
    expect(inputs).toEqual([
      { Name: 'A', Share: 85, Count: 2.5 },
      { Name: 'B', Share: 1.85, Count: 0 },
      { Name: 'C', Share: 1.5 },
      { Name: 'D', Share: 0.85, Count: 3 },
    ]);
    expect(problems).toEqual([
      { code: 'percentForShare', line: 2, header: 'Share', given: '85', value: 85 },
      { code: 'notWhole', line: 2, header: 'Count', given: '2.5' },
      expect.objectContaining({ code: 'outOfRange', line: 3, header: 'Share', given: '185%' }),
      expect.objectContaining({ code: 'outOfRange', line: 3, header: 'Count', given: '0' }),
      expect.objectContaining({ code: 'outOfRange', line: 4, header: 'Share', given: '1.5' }),
    ]);
  });

  it('names a name that stands twice and a row without one', () => {
    expect(read('Name,Size\nA,1\n,2\na,3\n,4\n').problems).toEqual([
      { code: 'noName', line: 3, header: 'Name' },
      { code: 'sameName', line: 4, header: 'Name', given: 'a', firstLine: 2 },
      { code: 'noName', line: 5, header: 'Name' },
    ]);
  });

  it('says once that the column of names is missing', () => {
    expect(read('Size\n1\n2\n').problems).toEqual([{ code: 'missingHeader', line: 1, header: 'Name' }]);
  });

  it('names a column that is not asked for, and apart from it one that is computed', () => {
    expect(read('Name,twice,Colour\nA,4,red\n')).toMatchObject({
      problems: [{ code: 'unknownHeader', line: 1, header: 'Colour' }],
      leftOut: ['twice'],
    });
  });

  it('names a column without a header only when something stands in it', () => {
    expect(read('Name,,\nA,,\n').problems).toEqual([]);
    expect(read('Name,,\nA,,x\n').problems).toEqual([{ code: 'unnamedColumn', line: 1, column: 3 }]);
  });

  it('has nothing to add where there is no header line to read', () => {
    expect(read('')).toEqual({ inputs: [], problems: [], leftOut: [] });
    expect(read('Name,"Size\nA,1\n')).toEqual({ inputs: [], problems: [], leftOut: [] });
    expect(read('Size,Size\n1,2\n')).toEqual({ inputs: [], problems: [], leftOut: [] });
  });
});
