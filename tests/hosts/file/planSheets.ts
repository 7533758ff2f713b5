/** Two sheets like the real ones, small: named inputs, a growing table, calls, natives, refusals, texts as people type. */
import { allOf, call, column, input, native, operate, when } from '../../../src/workbook/expressions';
import type { Change, NewSheet } from '../../../src/workbook/port';
import type { FileFunction } from '../../../src/hosts/file/evaluate';
import { change } from '../../contract/contractWorkbook';

export const plotNames = [
  '007',
  '=2+2',
  '+1',
  '@x',
  '-5',
  '1/2',
  'TRUE',
  'Joe\'s "best" <plot> & more',
  '_x0041_',
];
export const longList = Array.from({ length: 40 }, (_, index) => `crop number ${index + 1}, long name`);

/** 1 × 1 transparent. */
export const png = Uint8Array.from(
  Buffer.from(
    'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNkYPhfDwAChwGA60e6kgAAAABJRU5ErkJggg==',
    'base64',
  ),
);

export const functions: readonly FileFunction[] = [
  {
    id: 'TEST.DOUBLE',
    run: ([value]) =>
      typeof value === 'number'
        ? { value: value * 2 }
        : { error: '#VALUE!', message: 'Length must be a number, for example 100.' },
  },
  { id: 'TEST.DAY', run: () => ({ value: 46144, pattern: 'yyyy-mm-dd' }) },
];

const headers = ['Plot', 'Crop', 'Length (ft)', 'Twice', 'Thrice', 'Day', 'Remark'];
const computes = [
  null,
  null,
  null,
  call('TEST.DOUBLE', column('Length (ft)')),
  operate(column('Length (ft)'), '*', 3),
  call('TEST.DAY'),
  when(operate(column('Thrice'), '>', 100), 'long & "wide"', ''),
];

export const plotsSheet: NewSheet = {
  name: "Joe's plots",
  mark: { template: 'plots', version: 3 },
  blocks: [
    { row: 0, column: 0, contents: [['Plots of a test']] },
    {
      row: 1,
      column: 0,
      contents: [['', '', { compute: when(operate(input('UNITS'), '=', 'us'), 'ft', 'm') }]],
    },
    {
      row: 2,
      column: 0,
      contents: [
        headers,
        ...plotNames.map((name, index) => [
          name,
          'squash',
          index === 1 ? 'ten' : (index + 1) * 10,
          ...computes.slice(3).map((compute) => (compute === null ? null : { compute })),
        ]),
      ],
    },
  ],
  tables: [
    {
      name: 'TestPlots',
      headers,
      row: 2,
      column: 0,
      rows: plotNames.length + 1,
      columns: 7,
      grows: computes,
    },
  ],
  dressings: [
    { row: 0, column: 0, rows: 1, columns: 1, role: 'title', format: 'general' },
    { row: 1, column: 0, rows: 1, columns: 7, role: 'unit', format: 'general' },
    { row: 2, column: 0, rows: 1, columns: 7, role: 'header', format: 'text' },
    { row: 3, column: 0, rows: plotNames.length, columns: 2, role: 'input', format: 'text' },
    { row: 3, column: 2, rows: plotNames.length, columns: 1, role: 'input', format: 'tenth' },
    { row: 3, column: 3, rows: plotNames.length, columns: 4, role: 'computed', format: 'general' },
  ],
  rules: [],
  lists: [{ row: 3, column: 1, rows: plotNames.length, columns: 1, values: longList }],
  notes: [
    { row: 2, column: 3, text: `TEST.DOUBLE\n${'Twice the length, in the unit above. '.repeat(8)}` },
    { row: 2, column: 4, text: 'Three times the length.' },
  ],
  names: {},
  widths: [14, 12, 10, 10, 10, 12, 24],
  frozenRows: 3,
  frozenColumns: 1,
  page: { landscape: true, pagesWide: 1, repeatRows: [1, 2], repeatColumns: [0, 0] },
};

export const seasonSheet: NewSheet = {
  name: 'Season',
  mark: { template: 'season', version: 1 },
  blocks: [
    {
      row: 0,
      column: 0,
      contents: [
        ['Units', 'us'],
        ['Last frost', 46144],
        ['All lengths', { compute: native('SUM', allOf('TestPlots', 'Length (ft)')) }],
        ['Year', { compute: native('YEAR', input('LAST_FROST')) }],
        [
          'Of 007',
          {
            compute: native(
              'INDEX',
              allOf('TestPlots', 'Twice'),
              native('MATCH', '007', allOf('TestPlots', 'Plot'), 0),
            ),
          },
        ],
        ['Sum with error', { compute: native('SUM', allOf('TestPlots', 'Twice')) }],
        ['Is it so', { compute: operate(1, '=', 2) }],
        ['None', { compute: operate(1, '-', 1) }],
        ['Typed', '=1+1'],
      ],
    },
  ],
  tables: [],
  dressings: [{ row: 1, column: 1, rows: 1, columns: 1, role: 'input', format: 'date' }],
  rules: [],
  lists: [{ row: 0, column: 1, rows: 1, columns: 1, values: ['us', 'metric'] }],
  notes: [],
  names: { UNITS: [0, 1], LAST_FROST: [1, 1] },
  widths: [34, 16],
  frozenRows: 0,
  frozenColumns: 0,
  page: { landscape: false, pagesWide: 1, repeatRows: null, repeatColumns: null },
};

export const planChange: Change = {
  title: 'Fill the test sheets',
  expect: [],
  newSheets: [seasonSheet, plotsSheet],
  cells: [],
  tableRows: [],
  marks: [],
  pictures: [
    {
      name: 'dot',
      sheet: 'Season',
      row: 11,
      column: 0,
      png,
      widthPx: 64,
      heightPx: 48,
      altText: 'A dot & "nothing" else',
    },
  ],
};

export const emptyChange: Change = change({});
