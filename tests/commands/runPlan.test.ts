/** The plan command: what it writes, what it says, and how it ends. */
import { describe, expect, test } from 'vitest';
import { decodeText, runPlan } from '../../src/commands/runPlan';
import { functions } from '../../src/functions';
import { createFileWorkbook } from '../../src/hosts/file/createFileWorkbook';

const frosts = ['--last-frost', '2026-05-02', '--first-frost', '2026-10-10'];

/** Runs the command over a text; the file is kept in mind only. */
async function plan(csv: string, options: readonly string[] = frosts) {
  const said: string[] = [];
  const saved: string[] = [];
  const code = await runPlan(['plots.csv', ...options, '--out', 'plan.xlsx'], {
    readText: () => csv,
    makeWorkbook: () => ({
      ...createFileWorkbook({ functions: [...functions.values()] }),
      save: async (path) => void saved.push(path),
    }),
    say: (line) => said.push(line),
    warn: (line) => said.push(line),
  });
  return { code, said: said.join('\n'), saved };
}

const header = 'Plot,Crop,Length,Width';

describe('plan', () => {
  test('writes the workbook and prints the plots', async () => {
    const { code, said, saved } = await plan(`${header}\nCreek,slicing cucumber,100,20\n`);
    expect([code, saved]).toEqual([0, ['plan.xlsx']]);
    // Hand computed: 4 rows 5 ft apart, 100 plants a foot apart in each.
    expect(said).toMatch(/Creek\s+slicing cucumber\s+400 /);
  });

  test('names the line and column of what cannot be read, and keeps the other plots', async () => {
    const { code, said, saved } = await plan(`${header}\nA,gourd,long,20\nB,slicing cucumber,100,20\n`);
    expect([code, saved]).toEqual([1, ['plan.xlsx']]);
    expect(said).toContain('plots.csv, line 2: column Length: "long" is not a number');
    expect(said).toMatch(/B\s+slicing cucumber\s+400 /);
  });

  test.each([
    ['an unknown crop', 'A,zuchini,100,20'],
    ['a plot narrower than its row', 'A,slicing cucumber,100,2'],
    ['a negative length', 'A,slicing cucumber,-100,20'],
  ])('ends with 1 when %s spoils a plot', async (_, line) => {
    expect((await plan(`${header}\n${line}\n`)).code).toBe(1);
  });

  test.each([
    ['an empty file', '', frosts, 'has no plots'],
    ['a header alone', `${header}\n`, frosts, 'has no plots'],
    ['a missing date', `${header}\nA,gourd,9,9\n`, frosts.slice(0, 2), '--first-frost is missing'],
    [
      'frosts the wrong way round',
      `${header}\nA,gourd,9,9\n`,
      ['--last-frost', '2026-10-10', '--first-frost', '2026-05-02'],
      'must come after --last-frost',
    ],
    [
      'a day that is none',
      `${header}\nA,gourd,9,9\n`,
      [...frosts, '--last-frost', '2026-02-30'],
      'not a date',
    ],
  ] as const)('%s: nothing is written, and it says why', async (_, csv, options, sentence) => {
    const { code, said, saved } = await plan(csv, options);
    expect([code, saved]).toEqual([2, []]);
    expect(said).toContain(sentence);
    expect(said).toContain('Nothing was written.');
  });
});

describe('decodeText', () => {
  test('refuses bytes that are not UTF-8, so that no letter is lost', () => {
    expect(decodeText(Buffer.from('Créek', 'utf8'))).toBe('Créek');
    expect(() => decodeText(Buffer.from('Créek', 'latin1'))).toThrow('CSV UTF-8');
    expect(() => decodeText(Buffer.from('\ufeffPlot', 'utf16le'))).toThrow('CSV UTF-8');
  });
});
