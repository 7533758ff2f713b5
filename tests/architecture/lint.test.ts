/** .oxlintrc.json has the floors' table again, as patterns: on one probe for every arrow the two must agree. */
import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, posix, resolve } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { brokenArrows, floors } from './floors';

interface Diagnostic {
  readonly code: string;
  readonly filename: string;
}

const targets = [
  ...Object.keys(floors).map((floor) => `src/${floor}/there/module`),
  'src/functions',
  'src/functions/explain',
  'src/workbook/serialDate',
  'src/workbook/parseNumber',
  'src/workbook/port',
  'node:fs',
  'some-package',
  '@some/package',
];

const probes = Object.keys(floors).flatMap((floor) =>
  targets.map((target, i) => {
    const path = `src/${floor}/here/probe${i}.ts`;
    const specifier = target.startsWith('src/') ? posix.relative(posix.dirname(path), target) : target;
    return { path, text: `import { x } from '${specifier}';\nexport const y = x;\n` };
  }),
);
const saying = ['src/taskpane/here/office.ts', 'src/calc/here/office.ts', 'src/hosts/file/here/office.ts'];
const maySay = 'src/hosts/excel/here/office.ts';

const oxlint = resolve('node_modules/.bin/oxlint');
let house = '';
let found: readonly Diagnostic[] = [];

beforeAll(() => {
  house = mkdtempSync(join(tmpdir(), 'floors-'));
  cpSync('.oxlintrc.json', join(house, '.oxlintrc.json'));
  const excel = [...saying, maySay].map((path) => ({ path, text: 'export const y = Excel.run(Office);\n' }));
  for (const { path, text } of [...probes, ...excel]) {
    mkdirSync(dirname(join(house, path)), { recursive: true });
    writeFileSync(join(house, path), text);
  }
  const { stdout } = spawnSync(oxlint, ['--format=json'], { cwd: house, encoding: 'utf8', maxBuffer: 1e8 });
  found = (JSON.parse(stdout) as { diagnostics: Diagnostic[] }).diagnostics;
});

afterAll(() => rmSync(house, { recursive: true, force: true }));

const filesWith = (rule: string): string[] => [
  ...new Set(
    found.filter(({ code }) => code.includes(rule)).map(({ filename }) => filename.replaceAll('\\', '/')),
  ),
];

test('the linter and the floors test break on the same arrows', () => {
  const broken = probes
    .filter(({ path, text }) => brokenArrows(path, text).length > 0)
    .map(({ path }) => path);
  expect(broken.length).toBeGreaterThan(80);
  expect(broken.length).toBeLessThan(probes.length);
  expect(filesWith('no-restricted-imports').sort()).toEqual(broken.sort());
});

test('only hosts/excel may say Excel and Office', () => {
  expect(filesWith('no-restricted-globals').sort()).toEqual(saying.sort());
});
