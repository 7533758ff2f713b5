/** Without a text the grid shows the key itself. Which keys there are stands in the code of its packages. */
import { LocaleService, LocaleType } from '@univerjs/core';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { pageLocales } from '../../../src/hosts/browser/pageLocales';
import { english } from '../../../src/texts/english';
import { spanish } from '../../../src/texts/spanish';

const hosts = ['engine', 'openPage'].map((name) => readFileSync(`src/hosts/browser/${name}.ts`, 'utf8'));
const packages = new Set(
  [...hosts.join('').matchAll(/ from '(@univerjs\/[a-z-]+)'/g)].map(([, name]) => name),
);

function keysAskedFor(name: string): string[] {
  const code = readFileSync(`node_modules/${name}/lib/es/index.js`, 'utf8');
  return [...code.matchAll(/\bt\("([\w-]+\.[\w.-]+)"/g)].map(([, key]) => key ?? '');
}

describe.each([
  ['en', english, 'Paste'],
  ['es', spanish, 'Pegar'],
] as const)('the words of the grid (%s)', (language, { grid }, paste) => {
  const words = new LocaleService();
  words.load(pageLocales(language, grid));
  words.setLocale(LocaleType.EN_US);
  const asked = [...packages].flatMap((name) => keysAskedFor(name ?? ''));

  it('have a text for how far a calculation is', () => {
    expect(asked).toContain('sheets-formula.progress.calculating');
    expect(words.t('sheets-formula.progress.calculating')).toBe(grid['sheets-formula'].progress.calculating);
  });

  it('have a text for every key that its packages ask for by name', () => {
    expect(asked.filter((key) => words.t(key) === key)).toEqual([]);
  });

  it('still have what the packages bring under the same names', () => {
    expect(words.t('sheets-formula.functionList.ABS.abstract')).not.toContain('functionList');
    expect(words.t('sheets-ui.rightClick.paste')).toBe(paste);
  });
});
