import { expect, test } from 'vitest';
import type { LeftOut } from '../../src/templates/readPlotDates';
import { sayLeftOut } from '../../src/templates/sayCalendar';

const leftOut = (plot: string, why: string, isWhole: boolean): LeftOut => ({
  plot,
  kind: 'dates',
  lacks: 'First pick',
  why,
  isWhole,
});

test('reasons of several plots are sentences one after the other', () => {
  const missing = 'The days to maturity is missing. Fill it in.';
  expect(
    sayLeftOut([
      leftOut('Lane', missing, true),
      leftOut('Hill', 'No known crop.', true),
      leftOut('Late', 'The first frost comes first.', false),
    ]),
  ).toEqual([
    `Not in the calendar: Lane: ${missing} Hill: No known crop.`,
    'Not with all of its work: Late, without First pick: The first frost comes first.',
  ]);
});

test('five of them are named, the others counted', () => {
  const plots = ['A', 'B', 'C', 'D', 'E', 'F', 'G'];
  const [said] = sayLeftOut(plots.map((plot) => leftOut(plot, 'No known crop.', true)));
  expect(said).toMatch(/: A: No known crop\. B: .* E: No known crop\. And 2 more\.$/);
});
