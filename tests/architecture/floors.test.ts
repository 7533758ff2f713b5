import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { brokenArrows, floors, importsOf, poorNames, saidWords, unexplainedLength } from './floors';
import { unitFactors } from '../../src/reference/unitFactors';

const paths = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .map((name) => `src/${name.replaceAll('\\', '/')}`)
  .filter((path) => path.endsWith('.ts') || path.endsWith('.tsx'));
const files = paths.map((path) => [path, readFileSync(path, 'utf8')] as const);

describe('the house', () => {
  test('imports go downward only', () => {
    expect(files.flatMap(([path, text]) => brokenArrows(path, text))).toEqual([]);
  });

  test('no floor says what it must not know', () => {
    expect(files.flatMap(([path, text]) => saidWords(path, text))).toEqual([]);
  });

  test('a factor between units is written once, in the reference', () => {
    const { cmPerInch, metresPerFoot, squareFeetPerAcre, gramsPerOunce, kgPerPound } = unitFactors;
    const factors = [cmPerInch, metresPerFoot, squareFeetPerAcre, gramsPerOunce, kgPerPound].map(String);
    for (const [path, text] of files) {
      const numbers = text.replaceAll(/\/\*[\s\S]*?\*\/|\/\/.*/g, '').match(/\b\d[\d_]*(?:\.\d+)?\b/g) ?? [];
      const again = numbers.map((one) => one.replaceAll('_', '')).filter((one) => factors.includes(one));
      expect(again, path).toEqual([]);
    }
  });

  test('every file is named for its job', () => {
    expect(paths.flatMap(poorNames)).toEqual([]);
  });

  test('long files say why', () => {
    expect(files.flatMap(([path, text]) => unexplainedLength(path, text))).toEqual([]);
  });

  test('the files were really looked at', () => {
    expect(files.length).toBeGreaterThan(40);
    const all = files.flatMap(([, text]) => importsOf(text));
    expect(all.length).toBeGreaterThan(100);
    for (const folder of ['calc', 'functions', 'templates', 'workbook']) {
      expect(
        paths.some((path) => path.startsWith(`src/${folder}/`)),
        folder,
      ).toBe(true);
    }
  });

  test('every folder of src has a floor', () => {
    const onNoFloor = paths.filter(
      (path) => !Object.keys(floors).some((name) => path.startsWith(`src/${name}/`)),
    );
    expect(onNoFloor).toEqual([]);
  });
});

describe('the guard itself', () => {
  test.each([
    [
      'src/calc/dates/a.ts',
      "import { x } from '../../workbook/port';",
      'src/calc/dates/a.ts → src/workbook/port: calc may import only calc, reference',
    ],
    [
      'src/calc/dates/a.ts',
      "export { x } from '../../texts/english';",
      'src/calc/dates/a.ts → src/texts/english: calc may import only calc, reference',
    ],
    [
      'src/calc/dates/a.ts',
      "import { readFileSync } from 'node:fs';",
      'src/calc/dates/a.ts → node:fs: calc imports no node: module',
    ],
    [
      'src/workbook/a.ts',
      "import type { Unit } from '../calc/units/units';",
      'src/workbook/a.ts → src/calc/units/units: workbook may import only workbook',
    ],
    [
      'src/templates/a.ts',
      "const f = import('../functions');",
      'src/templates/a.ts → src/functions: templates may import only templates, workbook, reference, texts',
    ],
    [
      'src/functions/a.ts',
      "import { x } from '../workbook/port';",
      'src/functions/a.ts → src/workbook/port: functions may import only functions, calc, reference, texts, workbook/serialDate, workbook/parseNumber',
    ],
    [
      'src/hosts/file/a.ts',
      "import { x } from '../browser/engine';",
      'src/hosts/file/a.ts → src/hosts/browser/engine: hosts/file may import only hosts/file, workbook',
    ],
    [
      'src/taskpane/a.ts',
      "import { functions } from '../functions';",
      'src/taskpane/a.ts → src/functions: taskpane may import only taskpane, workbook, templates, texts, functions/explain',
    ],
    ['src/texts/a.ts', "import fc from 'papaparse';", 'src/texts/a.ts → papaparse: texts imports no package'],
    [
      'src/attic/a.ts',
      "import { x } from './b';",
      'src/attic/a.ts: stands on no floor (see tests/architecture/floors.ts)',
    ],
  ])('%s with %s is a broken arrow', (path, text, arrow) => {
    expect(brokenArrows(path, text)).toEqual([arrow]);
  });

  test.each([
    ['src/functions/a.ts', "import { x } from '../workbook/serialDate';"],
    ['src/taskpane/a.ts', "import { explain } from '../functions/explain';"],
    ['src/hosts/file/a.ts', "import { x } from 'node:fs'; import { y } from '../../workbook/port';"],
    ['src/entries/a.ts', "import { x } from '../hosts/browser/engine'; import { y } from '../calc/errors';"],
    [
      'src/calc/dates/a.ts',
      "import { x } from './b'; import { y } from '../errors'; import { z } from '../../reference/crops';",
    ],
    ['src/calc/dates/a.ts', "// import { x } from '../../workbook/port';"],
  ])('%s with %s is none', (path, text) => {
    expect(brokenArrows(path, text)).toEqual([]);
  });

  test.each([
    ['src/taskpane/a.ts', 'Office.onReady();', ['src/taskpane/a.ts: says "Office"']],
    ['src/calc/a/b.ts', 'export const now = Date.now();', ['src/calc/a/b.ts: says "Date.now"']],
    ['src/calc/a/b.ts', 'export const now = new Date();', ['src/calc/a/b.ts: says "new Date()"']],
    [
      'src/calc/a/b.ts',
      'export async function f() { await g(); }',
      ['src/calc/a/b.ts: says "async"', 'src/calc/a/b.ts: says "await"'],
    ],
    ['src/reference/a/b.ts', 'document.title', ['src/reference/a/b.ts: says "document"']],
    ['src/workbook/a.ts', "const sheet = 'Plots';", ['src/workbook/a.ts: says "Plot"']],
    ['src/hosts/excel/a.ts', 'await Excel.run(f);', []],
    ['src/taskpane/a.ts', '/* Excel and Office */ export const program = "Excel";', []],
    ['src/calc/a/b.ts', '/** Date.now, a document */ export const day = new Date(0);', []],
  ])('%s with %s', (path, text, said) => {
    expect(saidWords(path, text)).toEqual(said);
  });

  test('names and lengths', () => {
    expect(poorNames('src/calc/dates/dateUtils.ts')).toEqual([
      'src/calc/dates/dateUtils.ts: "utils" names no job',
    ]);
    expect(poorNames('src/helpers/day.ts')).toHaveLength(1);
    expect(poorNames('src/calc/dates/utilization.ts')).toEqual([]);
    const long = 'export const a = 1;\n'.repeat(251);
    expect(unexplainedLength('src/calc/a/b.ts', long)).toHaveLength(1);
    expect(unexplainedLength('src/calc/a/b.ts', `/** Long: one table. */\n${long}`)).toEqual([]);
    expect(unexplainedLength('src/calc/a/b.ts', long.slice(20))).toEqual([]);
    expect(unexplainedLength('src/entries/a.ts', long.slice(0, 31 * 20))).toHaveLength(1);
    expect(unexplainedLength('src/entries/a.ts', "import '../functions/a';\n".repeat(31))).toEqual([]);
  });
});
