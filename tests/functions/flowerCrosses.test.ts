import { describe, expect, test } from 'vitest';
import { explain } from '../../src/functions/explain';
import { crosses } from '../../src/functions/flowerCrosses';
import { cropNames } from '../../src/reference/crops';
import { english } from '../../src/texts/english';
import { leftOut, run } from './run';

const bitter = english.crossings.bitter;

describe('FLOWER.CROSSES', () => {
  test('each verdict, as it is read', () => {
    for (const nothing of [...leftOut, false, 'no', 0]) {
      expect(run('FLOWER.CROSSES', 'zucchini', ' Jack-o-lantern ', nothing)).toBe(
        'They cross: both are Cucurbita pepo. This year’s fruit is unaffected. Seed saved from them would be mixed.',
      );
    }
    expect(run('FLOWER.CROSSES', 'butternut', [['zucchini']])).toBe(
      'They cross where both are of one species (Cucurbita pepo): read it on the packet. This year’s fruit is unaffected. Seed saved from them would be mixed.',
    );
    expect(run('FLOWER.CROSSES', 'cucumber', 'cantaloupe')).toBe(
      'They do not cross: they are different species. This year’s fruit is unaffected.',
    );
    expect(run('FLOWER.CROSSES', 'seedless watermelon', 'watermelon', true)).toMatch(
      /^Both are Citrullus lanatus, but triploid watermelon bears no seed worth saving/,
    );
    expect(run('FLOWER.CROSSES', 'gourd', 'gourd')).toContain('(Cucurbita pepo or Lagenaria siceraria)');
  });

  test('pollen does spoil this year’s parthenocarpic cucumbers (Florida CV268)', () => {
    expect(run('FLOWER.CROSSES', 'English cucumber', 'pickles')).toBe(
      'They cross: both are Cucumis sativus. Pollen makes this year’s parthenocarpic cucumbers seedy and misshapen: keep bees off them. Seed saved from them would be mixed.',
    );
  });

  test('saving seed of what may be Cucurbita pepo brings the caution on bitter fruit', () => {
    for (const yes of [true, 'yes', 1]) {
      expect(run('FLOWER.CROSSES', 'zucchini', 'ornamental gourd', yes)).toBe(
        `They cross where both are of one species (Cucurbita pepo): read it on the packet. This year’s fruit is unaffected. Seed saved from them is mixed unless you keep bees off the flowers and pollinate them by hand. ${bitter}`,
      );
    }
    const withPepo = [
      'summer squash',
      'bush winter squash',
      'winter squash',
      'small pumpkin',
      'pumpkin',
      'gourd',
    ];
    for (const name of cropNames) {
      const said = String(run('FLOWER.CROSSES', name, 'muskmelon', true));
      expect(said.endsWith(bitter), name).toBe(withPepo.includes(name));
      expect(run('FLOWER.CROSSES', name, 'muskmelon')).not.toContain(bitter);
    }
    expect(bitter).toMatch(/spit it out and do not eat it/);
  });

  test('refusals', () => {
    expect(run('FLOWER.CROSSES', 'zuchini', 'pumpkin')).toMatch(/^#N\/A .*Near it: zucchini/);
    expect(run('FLOWER.CROSSES', 'zucchini', 'tomato')).toMatch(/^#N\/A .*Crops sheet/);
    expect(run('FLOWER.CROSSES', 'zucchini', null)).toBe('#VALUE! The second crop is missing. Fill it in.');
    expect(run('FLOWER.CROSSES', 'zucchini', 'pumpkin', 'maybe')).toBe(
      '#VALUE! The saving of seed is "maybe". Answer yes or no (TRUE or FALSE).',
    );
    expect(run('FLOWER.CROSSES', { error: '#REF!' }, 'pumpkin')).toMatch(/Mend that cell first/);
  });

  test('no sentence has a placeholder left, for any two crops', () => {
    for (const a of cropNames) {
      for (const b of cropNames) expect(String(run('FLOWER.CROSSES', a, b, true))).not.toMatch(/[{}]/);
    }
  });

  test('the working cites the extension services', () => {
    const lines = explain(crosses, ['zucchini', 'pumpkin', true]);
    const said = lines.map(({ title, formula }) => `${title} ${formula}`).join('\n');
    expect(said).toMatch(/Iowa State/);
    expect(said).toMatch(/Toxic squash/);
    expect(said).not.toMatch(/[{}_]/);
  });
});
