// @vitest-environment jsdom
import { beforeAll, expect, test } from 'vitest';
import { functionTools } from '../../src/entries/functionTools';
import { inUnits } from '../../src/taskpane/inUnits';
import type { Working } from '../../src/taskpane/readWorking';
import { workingView } from '../../src/taskpane/workingView';
import type { FunctionHelp } from '../../src/workbook/functionHelp';
import { dayOfIso, serialOfDay } from '../../src/workbook/serialDate';
import { describeFunctions } from '../functions/describedFunctions';

const serial = (iso: string): number => serialOfDay(dayOfIso(iso) ?? NaN);
function said(shown: number, id: string, args: readonly unknown[], isAsked = true): string {
  const call = { id, isAsked, sentence: null, inputs: [], working: functionTools.explain(id, args) };
  const at = { sheet: 'Plots', row: 7, column: 10, rows: 1, columns: 1 };
  const working: Working = {
    at,
    problem: null,
    tellsAnswer: false,
    shown,
    another: undefined,
    calls: [call],
    around: [],
    notFollowed: [],
  };
  return workingView(working, () => undefined)[0]?.textContent ?? '';
}

test('a date is shown as the grid shows it; days between dates and other numbers as numbers', () => {
  const frost = serial('2027-04-11');
  expect(said(serial('2027-04-25'), 'DATE.SETOUT', [frost])).toBe('Plots K8 shows2027-04-25');
  expect(said(serial('2027-04-25') - frost, 'DATE.SETOUT', [frost])).toBe('Plots K8 shows14');
  expect(said(46_502, 'PLANTS.DENSITY', [2, 36])).toBe('Plots K8 shows46502');
  expect(said(46_502, 'DATE.SETOUT', [frost], false)).toBe('Plots K8 shows46502');
});

test('each change is said with its step; what cannot be varied says so in words', () => {
  const parts = (id: string, args: readonly unknown[]): string => {
    const call = { id, isAsked: true, sentence: null, inputs: [], working: functionTools.explain(id, args) };
    const at = { sheet: 'Plots', row: 7, column: 10, rows: 1, columns: 1 };
    const same = {
      at,
      problem: null,
      tellsAnswer: false,
      shown: null,
      another: undefined,
      around: [],
      notFollowed: [],
    };
    return workingView({ ...same, calls: [call] }, () => undefined)[1]?.textContent ?? '';
  };
  // 3 / 0.5 = 6; 4 / 0.5 = 8.
  expect(parts('SEED.NEEDED', [3, 0.5])).toContain('4 (+1, +33%) gives 8');
  expect(parts('DATE.SUCCESSION', [46151, 46190, 14])).toContain(
    'The answer is a list: told is the last row',
  );
  // 43,560 / (2.2 x 3) = 6,600.
  expect(parts('PLANTS.DENSITY', [2, 36, 'us'])).toMatch(
    /2.2 \(\+10%\) gives 6600.*words are not more or less:unit system$/,
  );
  expect(parts('CROP.NAME', ['zucchini'])).toContain(
    'What would change it mostThere is no number and no date',
  );
  expect(parts('SEED.NEEDED', ['many', 0.5])).not.toContain('What would change it most');
});

test('a list of one date is a date too', () => {
  const args = [serial('2027-05-09'), serial('2027-05-10'), 14];
  expect(functionTools.explain('DATE.SUCCESSION', args)?.result).toBe('2027-05-09');
});

let described: readonly FunctionHelp[] = [];
beforeAll(async () => {
  described = await describeFunctions();
}, 60_000);

test('of two units of an input the one of the system in use is said', () => {
  expect(inUnits('Area in sq ft (sq m)', 'us')).toBe('Area in sq ft');
  expect(inUnits('Width of the bed, ft (m)', 'metric')).toBe('Width of the bed, m');
  expect(inUnits('Depth of water, in (mm)', 'metric')).toBe('Depth of water, mm');
  const both = /\((?:m|cm|mm|ml|g|per g|kg[^)]*|sq m|100 m|per hectare|litres[^)]*)\)/;
  const texts = described
    .filter(({ parameters }) => parameters.some(({ name }) => name === 'units'))
    .flatMap(({ parameters }) => parameters.map(({ description }) => description));
  expect(texts.filter((text) => both.test(text)).length).toBeGreaterThan(30);
  expect(texts.map((text) => inUnits(text, 'us')).filter((text) => both.test(text))).toEqual([]);
});
