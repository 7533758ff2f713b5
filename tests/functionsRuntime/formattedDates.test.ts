/** Dates that go to Excel as dates, and come back into the next function. */
import { describe, expect, inject, test } from 'vitest';
import { functions } from '../../src/functions';
import { asRich, eachCell, flags } from './arguments';
import { normalCalls } from './normalCalls';
import { openRuntime, type Runtime } from './openRuntime';

type Answer = (set: string, version: string) => boolean;
const open = (answer: Answer): Runtime => openRuntime(inject('builtAddin'), answer);

/** Excel of a requirement level: the sets that bring rich results and doubles with a format. */
const excel =
  (functionsRuntime: number, api: number): Answer =>
  (set, version) => {
    const minor = Number(version.split('.')[1]);
    return minor <= (set === 'CustomFunctionsRuntime' ? functionsRuntime : set === 'ExcelApi' ? api : 0);
  };

const isDated = ([id]: readonly [string, unknown]): boolean => functions.get(id)?.result === 'day';
const dated = Object.entries(normalCalls).filter(isDated);
const setOut = { id: 'DATE.SETOUT', args: normalCalls['DATE.SETOUT']?.args ?? [] };
/** 16 May 2026, as Excel's own DATE function counts. */
const may16 = 46158;

describe('dates', () => {
  test('go back with their format where Excel takes one', async () => {
    const delivered = await open(excel(4, 19)).call(dated.map(([id, { args }]) => ({ id, args })));
    const formatted = (date: unknown): unknown => ({
      type: 'Double',
      basicValue: date,
      numberFormat: 'yyyy-mm-dd',
    });
    expect(delivered).toEqual(dated.map(([, { gives }]) => ({ value: eachCell(gives, formatted) })));
  });

  test.each([
    ['no rich results', excel(3, 19)],
    ['no format in a double', excel(4, 18)],
    ['neither', () => false],
  ])('go back as their serial number where Excel has %s', async (_, answer) => {
    expect(await open(answer).call([setOut])).toEqual([{ value: may16 }]);
  });

  test('Excel is asked once, however many dates there are', async () => {
    const asked: string[] = [];
    const runtime = open((set, version) => {
      asked.push(`${set} ${version}`);
      return true;
    });
    expect(asked).toEqual([]);
    await runtime.call([setOut, setOut]);
    await runtime.call([setOut]);
    expect(asked).toEqual(['CustomFunctionsRuntime 1.4', 'ExcelApi 1.19']);
  });

  test('nothing but dates gets a format', async () => {
    const others = Object.entries(normalCalls).filter((entry) => !isDated(entry));
    const delivered = await open(() => true).call(others.map(([id, { args }]) => ({ id, args })));
    expect(delivered).toEqual(others.map(([, { gives }]) => ({ value: gives })));
  });

  test.each([
    ['alone', (date: unknown) => date],
    ['in a range of one cell', (date: unknown) => [[date]]],
  ])('a date that one function gave is read by the next, %s', async (_, put) => {
    const runtime = open(() => true);
    const [given] = await runtime.call([setOut]);
    const date = put(asRich(given !== undefined && 'value' in given ? given.value : null));
    const next = await runtime.call([
      { id: 'DATE.STARTTRANSPLANTS', args: [date, 3], flags: flags.richValues },
      { id: 'SEASON.DAYS', args: [date, may16 + 100], flags: flags.richValues },
    ]);
    expect(next).toEqual([
      // Three weeks before 16 May 2026.
      { value: { type: 'Double', basicValue: may16 - 21, numberFormat: 'yyyy-mm-dd' } },
      { value: 100 },
    ]);
  });
});
