/** What the runtime makes of functions that misbehave: the tests of ours would notice each. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { openRuntime, type Runtime } from './openRuntime';

const folder = mkdtempSync(join(tmpdir(), 'cucurbit-misbehaving-'));
afterAll(() => rmSync(folder, { recursive: true }));

const bodies = {
  THROWS: 'throw new Error("a slip")',
  NAN: 'return NaN',
  INFINITE: 'return Infinity',
  NOTHING: 'return undefined',
  SPILLED: 'return [[1, NaN], [undefined, "text"]]',
  ADVISES: 'throw new CustomFunctions.Error("#N/A", "No such crop.")',
  LATE: 'return Promise.resolve(7)',
  COUNTS: 'return arguments.length',
};

let runtime: Runtime;
beforeAll(() => {
  const lines = Object.entries(bodies).map(
    ([id, body]) => `CustomFunctions.associate(${JSON.stringify(id)}, function () { ${body}; });`,
  );
  writeFileSync(join(folder, 'functions.js'), lines.join('\n'));
  runtime = openRuntime(folder, () => false, ['functions.js']);
});

test.each([
  ['THROWS', { code: 2, message: '' }],
  ['NAN', { code: 0, message: 'NaN' }],
  ['INFINITE', { code: 6, message: 'Infinity' }],
  ['NOTHING', { value: null }],
  [
    'SPILLED',
    {
      value: [
        [1, null],
        [null, 'text'],
      ],
    },
  ],
  ['ADVISES', { code: 1, message: 'No such crop.' }],
  ['LATE', { value: 7 }],
  // The invocation comes after the arguments.
  ['COUNTS', { value: 3 }],
  ['UNKNOWN', { code: 2, message: '' }],
])('%s', async (id, delivered) => {
  expect(await runtime.call([{ id, args: [1, 2] }])).toEqual([delivered]);
});
