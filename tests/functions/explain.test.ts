import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { functions } from '../../src/functions';
import { explain, sayWorking } from '../../src/functions/explain';
import type { FunctionDefinition } from '../../src/functions/define';
import { sources, unsourcedGrounds } from '../../src/reference/sources';
import { remarks, steps } from '../../src/texts/english/workings';

function definitionOf(id: string): FunctionDefinition {
  const definition = functions.get(id);
  if (definition === undefined) throw new Error(`no function ${id}`);
  return definition;
}

const calcSources = readdirSync('src/calc', { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts'))
  .map((name) => readFileSync(join('src/calc', name), 'utf8'));

/** Every key that calc writes after `word:`, both arms of a choice included. */
function keysAfter(word: string): string[] {
  const pattern = new RegExp(`\\b${word}: (?:[^,'{}]*\\? )?'([^']+)'(?: : '([^']+)')?`, 'g');
  return calcSources.flatMap((text) =>
    [...text.matchAll(pattern)].flatMap((match) => match.slice(1).filter((key) => key !== undefined)),
  );
}

describe('explain', () => {
  test('a step shows its name, formula, numbers, result and unit (hand computed: 2 ft x 36 in = 6 sq ft)', () => {
    expect(explain(definitionOf('PLANTS.DENSITY'), [2, 36])).toEqual([
      {
        kind: 'step',
        title: 'area per plant',
        formula: 'row spacing × plant spacing ÷ 12',
        numbersPutIn: 'row spacing 2, plant spacing 36, spacing units in one length unit 12',
        result: '6',
        unit: 'sq ft',
        rounding: '',
      },
      {
        kind: 'step',
        title: 'plants per acre or hectare',
        formula: 'area of an acre or hectare ÷ area per plant',
        numbersPutIn: 'area of an acre or hectare 43560, area per plant 6',
        result: '7260',
        unit: 'per acre',
        rounding: '',
      },
      {
        kind: 'source',
        title: expect.stringContaining('Farm and Garden Rule-Book'),
        formula: '',
        numbersPutIn: '',
        result: '',
        unit: '',
        rounding: '',
      },
    ]);
  });

  test('days are dates, among the numbers put in and as results, from one step to the next', () => {
    const lines = explain(definitionOf('DATE.LASTPICK'), ['2026-09-25', 21, '2026-10-10']);
    expect(lines.map(({ numbersPutIn, result }) => [numbersPutIn, result])).toEqual([
      ['first pick 2026-09-25, number of harvest days 21', '2026-10-16'],
      ['end of the harvest 2026-10-16, first frost 2026-10-10', '2026-10-09'],
      ['', ''],
      ['', ''],
    ]);
    expect(lines.slice(-2)).toMatchObject([
      { kind: 'remark', title: 'Frost ends this harvest before its time.' },
      { kind: 'source', title: 'project convention, no source' },
    ]);
  });

  test('a default is named with its value, unit and ground', () => {
    const [assumed] = explain(definitionOf('DATE.SETOUT'), ['2026-05-02']);
    expect(assumed).toEqual({
      kind: 'assumption',
      title: 'assumed: number of days after the last frost',
      formula: 'common practice, no source',
      numbersPutIn: '',
      result: '14',
      unit: 'days',
      rounding: '',
    });
    expect(explain(definitionOf('DATE.SETOUT'), ['2026-05-02', 14]).map(({ kind }) => kind)).not.toContain(
      'assumption',
    );
  });

  test('a published default is cited, secondary copies are called so', () => {
    const [harvest, fall] = explain(definitionOf('DATE.LASTSOWING'), ['2026-10-10', 60]);
    expect(harvest?.formula).toContain('North Carolina Cooperative Extension Service');
    expect(fall?.formula).toContain('Virginia Cooperative Extension');
    expect(fall?.formula).toContain('secondary copy');
  });

  test('a rounding is told where one happened', () => {
    const rounding = (days: number): (string | undefined)[] =>
      explain(definitionOf('DATE.LASTSOWING'), ['2026-10-10', days, 0, 0, 0])
        .filter(({ kind }) => kind === 'step')
        .map((line) => line.rounding);
    expect(rounding(52.5)).toEqual(['', 'rounded down']);
    expect(rounding(52)).toEqual(['', '']);
  });

  test('a refusal is the last line, after the steps before it', () => {
    const lines = explain(definitionOf('DATE.LASTPICK'), ['2026-10-12', 21, '2026-10-10']);
    expect(lines.map(({ kind }) => kind)).toEqual(['step', 'remark']);
    expect(lines.at(-1)?.title).toContain('Sow earlier');
    expect(explain(definitionOf('SEASON.DAYS'), ['tomorrow', null])).toMatchObject([
      { kind: 'remark', title: expect.stringContaining('Type a date such as 2026-05-02') },
    ]);
  });

  test('truth is yes or no, and what is said twice is said once', () => {
    const remark = { remark: 'soilDecides' };
    const source = { source: 'vce-fall-garden' };
    const lines = sayWorking([
      { assumed: 'screened', value: false, unit: 'none', ground: 'judgement' },
      { assumed: 'screened', value: true, unit: 'none', ground: 'judgement' },
      remark,
      source,
      remark,
      source,
    ]);
    expect(lines.map(({ kind, result }) => [kind, result])).toEqual([
      ['assumption', 'no'],
      ['assumption', 'yes'],
      ['remark', ''],
      ['source', ''],
    ]);
  });

  test('every argument that is read as a day is shown as one', () => {
    const definitions = [...functions.values()].filter(({ parameters }) => parameters.length > 0);
    const dayNames = new Set(
      definitions.flatMap(({ parameters }) =>
        parameters.filter((parameter) => readsDay(parameter)).map(({ name }) => name),
      ),
    );
    expect(dayNames).toContain('first_pick');
    for (const name of dayNames) {
      const [line] = sayWorking([{ step: 'setOut', inputs: { [name]: 20575 }, result: 20575, unit: 'date' }]);
      expect(line?.numbersPutIn, name).toContain('2026-05-02');
    }
  });
});

describe('the texts of every working', () => {
  test.each([
    ['step', steps],
    ['remark', remarks],
  ])('each %s of calc has its text', (word, texts) => {
    const keys = keysAfter(word);
    expect(keys.length).toBeGreaterThan(5);
    for (const key of keys) expect(Object.keys(texts), key).toContain(key);
  });

  test('each source cited in calc exists', () => {
    const keys = keysAfter('source');
    expect(keys.length).toBeGreaterThan(2);
    for (const key of keys) expect(Object.keys(sources), key).toContain(key);
  });

  test('each default of the date, season and harvest functions names a known ground', () => {
    const shortCalls: Readonly<Record<string, readonly unknown[]>> = {
      'DATE.SETOUT': ['2026-05-02'],
      'DATE.STARTTRANSPLANTS': ['2026-05-16'],
      'DATE.HARDENOFF': ['2026-05-16'],
      'DATE.FIRSTSOWING': ['2026-05-02'],
      'DATE.LASTSOWING': ['2026-10-10', 60],
      'DATE.FIRSTPICK': ['2026-05-16', 60, 'transplant'],
      'DATE.COVEROFF': ['2026-07-15', 'summer squash'],
      'HARVEST.YIELD': [250, 150],
    };
    const grounds = [...Object.keys(sources), ...unsourcedGrounds];
    for (const [id, args] of Object.entries(shortCalls)) {
      const assumptions = definitionOf(id)
        .explain(args)
        .entries.filter((entry) => 'assumed' in entry);
      expect(assumptions.length, id).toBeGreaterThan(0);
      for (const { ground } of assumptions) expect(grounds, id).toContain(ground);
    }
  });
});

function readsDay(parameter: FunctionDefinition['parameters'][number]): boolean {
  try {
    return parameter.read('2026-05-02') === 20575;
  } catch {
    return false;
  }
}
