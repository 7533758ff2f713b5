import { expect, test } from 'vitest';
import { explain } from '../../src/functions/explain';
import { threshold, verdict } from '../../src/functions/beetle';
import { cropNames } from '../../src/reference/crops';
import { english } from '../../src/texts/english';
import { leftOut, run } from './run';

const caution = english.cautions.pesticides;

test('BEETLE.THRESHOLD: 1 or 5 (sources in beetleThreshold.test)', () => {
  for (const nothing of leftOut) expect(run('BEETLE.THRESHOLD', 'Cantaloupe', nothing)).toBe(1);
  expect(run('BEETLE.THRESHOLD', [['zucchini']], 'no')).toBe(5);
  expect(run('BEETLE.THRESHOLD', 'watermelon', true)).toBe(1);
  expect(run('BEETLE.THRESHOLD', 'cucmber')).toMatch(/^#N\/A .*Near it: cucumber/);
});

test('BEETLE.VERDICT: what is read', () => {
  expect(run('BEETLE.VERDICT', 12, 30, 'cucumber', 'Seedling')).toBe(
    'Below the threshold: 0.4 a plant, the threshold is 1.',
  );
  expect(run('BEETLE.VERDICT', 60, 30, 'cucumber', 'cotyledon')).toBe(
    `At the threshold: 2 a plant, the threshold is 1. ${caution}`,
  );
  expect(run('BEETLE.VERDICT', 60, 12, 'zucchini', 'older', false)).toBe(
    `At the threshold: 5 a plant, the threshold is 5. Plants with more than about 5 leaves stand more feeding. Too few plants were looked at: look at 25 or more across the field. ${caution}`,
  );
  // Nearly one is not said as one.
  expect(run('BEETLE.VERDICT', 999, 1000, 'cucumber', 'seedling')).toMatch(/: 0\.99 a plant/);
});

test('refusals', () => {
  expect(run('BEETLE.VERDICT', -1, 30, 'cucumber', 'seedling')).toBe(
    '#VALUE! The number of beetles is -1. It must be at least 0.',
  );
  expect(run('BEETLE.VERDICT', 12, 0, 'cucumber', 'seedling')).toMatch(/at least 1 plant/);
  expect(run('BEETLE.VERDICT', 12, 30, 'cucumber', 'vining')).toBe(
    '#VALUE! The stage of the plants is "vining". Choose one of: cotyledon, seedling, older.',
  );
  expect(run('BEETLE.VERDICT', 12, 30, 'cucumber')).toMatch(/stage of the plants is missing/);
});

test('no verdict and no working says to spray; the label, the extension office and the bees are named', () => {
  for (const crop of cropNames) {
    const verdictSaid = String(run('BEETLE.VERDICT', 500, 30, crop, 'seedling'));
    expect(verdictSaid, crop).toMatch(/The label is the law.*extension office.*bees/);
    expect(verdictSaid, crop).not.toMatch(/spray/i);
  }
  for (const [definition, args] of [
    [threshold, ['pumpkin']],
    [verdict, [60, 30, 'pumpkin', 'seedling']],
  ] as const) {
    const said = explain(definition, args)
      .map((line) => Object.values(line).join(' '))
      .join('\n');
    expect(said).toMatch(/The label is the law/);
    expect(said).toMatch(/Purdue University Extension[^]*Ontario acts at 1/);
    expect(said).not.toMatch(/spray/i);
    expect(said).not.toMatch(/[{}_]/);
  }
});
