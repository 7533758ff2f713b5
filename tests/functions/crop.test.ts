import { describe, expect, test } from 'vitest';
import { functions } from '../../src/functions';
import { cropNames, crops, traits } from '../../src/reference/crops';
import { sources } from '../../src/reference/sources';

const run = (id: string, ...args: unknown[]) => {
  const definition = functions.get(id);
  if (definition === undefined) throw new Error(`${id} is not registered`);
  return definition.run(args);
};
const message = (id: string, ...args: unknown[]): string => {
  const outcome = run(id, ...args);
  if (!('error' in outcome)) throw new Error(`${id} gave ${String(outcome.value)}`);
  return `${outcome.error} ${outcome.message}`;
};

describe('CROP.VALUE', () => {
  test('figures of the Illinois guide, in both unit systems', () => {
    expect(run('CROP.VALUE', 'cucumber', 'row spacing', 'low', 'us')).toEqual({ value: 4 });
    expect(run('CROP.VALUE', ' Cucumber ', 'Plant Spacing', 'mid', 'metric')).toEqual({ value: 30.48 });
    expect(run('CROP.VALUE', 'English cucumber', 'flower type', 'mid', 'us')).toEqual({
      value: 'parthenocarpic',
    });
  });

  test.each([[null], [undefined], ['']])('bound and units left out as %j: the middle, us', (empty) => {
    expect(run('CROP.VALUE', 'cucumber', 'days to maturity', empty, empty)).toEqual({ value: 60 });
  });

  test('a matrix of one cell is that cell; capitals of a choice do not count', () => {
    expect(run('CROP.VALUE', [['zucchini']], [['row spacing']], [['HIGH']], [['US']])).toEqual({ value: 4 });
  });

  test('what is wrong is said with what to do', () => {
    expect(message('CROP.VALUE', 'pumkin', 'row spacing')).toMatch(
      /^#N\/A .*no crop called "pumkin".*Near it: .*pumpkin/,
    );
    expect(message('CROP.VALUE', 'tomato', 'row spacing')).toMatch(/^#N\/A .*See the Crops sheet/);
    expect(message('CROP.VALUE', 'pumpkin', 'row spaceing')).toMatch(
      /^#N\/A .*no figure called.*Near it: row spacing/,
    );
    expect(message('CROP.VALUE', 'gourd', 'yield per 100')).toBe(
      '#N/A The reference has no published yield per 100 for gourd. Type your own figure.',
    );
    expect(message('CROP.VALUE', 'gourd', 'row spacing', 'middle')).toMatch(
      /^#VALUE! .*Choose one of: low, mid, high/,
    );
    expect(message('CROP.VALUE', 'gourd', 'row spacing', 'low', 'feet')).toMatch(/^#VALUE! .*us, metric/);
    expect(message('CROP.VALUE', null, 'row spacing')).toMatch(/^#VALUE! .*Fill it in/);
    expect(message('CROP.VALUE', { type: 'Error', error: '#REF!' }, 'row spacing')).toMatch(
      /^#VALUE! .*#REF!/,
    );
    expect(message('CROP.VALUE', [['gourd', 'pumpkin']], 'row spacing')).toMatch(/^#VALUE! .*Give one cell/);
    expect(message('CROP.VALUE', 12, 'row spacing')).toMatch(/^#N\/A .*"12"/);
  });

  test('a crop or figure that has no place to hide in: names of the object itself', () => {
    expect(message('CROP.VALUE', '__proto__', 'row spacing')).toMatch(/^#N\/A/);
    expect(message('CROP.VALUE', 'gourd', 'constructor')).toMatch(/^#N\/A/);
  });
});

describe('CROP.NAME', () => {
  test('every name that is understood, however it is spaced, is its crop', () => {
    for (const crop of crops) {
      for (const name of [crop.name, ...crop.synonyms]) {
        expect(run('CROP.NAME', `  ${name.toUpperCase().replace(' ', '   ')} `)).toEqual({
          value: crop.name,
        });
      }
    }
    expect(message('CROP.NAME', 'zuchini')).toMatch(/^#N\/A .*Near it: zucchini/);
    expect(message('CROP.NAME', '')).toMatch(/^#VALUE! The crop is missing/);
  });
});

describe('CROP.SOURCE', () => {
  test('a publication, with its place in it', () => {
    expect(run('CROP.SOURCE', 'cucumber', 'germination standard')).toEqual({
      value: expect.stringMatching(
        /USDA Agricultural Marketing Service: .*\(1994\), 7 CFR 201\.31/,
      ) as unknown,
    });
  });

  test('two publications, custom, memory, copies and remarks are all said', () => {
    const said = (crop: string, trait: string): string => {
      const outcome = run('CROP.SOURCE', crop, trait);
      return 'error' in outcome ? outcome.message : String(outcome.value);
    };
    expect(said('zucchini', 'yield per 100')).toMatch(/Texas.*; .*Florida.*Low end Texas/);
    expect(said('gourd', 'hill spacing')).toBe('common practice, no source');
    expect(said('muskmelon', 'species')).toMatch(/; from memory, check$/);
    expect(said('pumpkin', 'days to maturity')).toMatch(/North Dakota.*; read in a secondary copy$/);
    expect(said('bush cucumber', 'plant spacing')).toMatch(
      /^common practice, no source\. Common practice for bush/,
    );
  });

  test('every figure of the reference has one, without a placeholder left', () => {
    for (const crop of crops) {
      for (const trait of Object.keys(crop.figures)) {
        const outcome = run('CROP.SOURCE', crop.name, trait);
        if ('error' in outcome) throw new Error(outcome.message);
        expect(outcome.value).not.toMatch(/[{}]|undefined|null/);
        expect(String(outcome.value).length).toBeGreaterThan(8);
      }
    }
  });

  test('an absent figure and an unknown name are #N/A', () => {
    expect(message('CROP.SOURCE', 'gourd', 'yield per 100')).toMatch(/^#N\/A .*Type your own/);
    expect(message('CROP.SOURCE', 'tomato', 'species')).toMatch(/^#N\/A/);
    expect(message('CROP.SOURCE', '', 'species')).toMatch(/^#VALUE!/);
  });
});

describe('CROP.LIST and CROP.TRAITS', () => {
  test('spill one name a row, and each name is understood', () => {
    expect(run('CROP.LIST')).toEqual({ value: cropNames.map((name) => [name]) });
    expect(run('CROP.TRAITS')).toEqual({ value: Object.keys(traits).map((name) => [name]) });
    for (const name of cropNames) expect('value' in run('CROP.VALUE', name, 'species')).toBe(true);
  });
});

test('no citation names a missing publication', () => {
  const cited = crops.flatMap(({ figures }) => Object.values(figures).flatMap(({ grounds }) => grounds));
  for (const ground of cited) {
    expect(Object.hasOwn(sources, ground) || /^(common practice, no source|judgement)$/.test(ground)).toBe(
      true,
    );
  }
});
