import { expect, test } from 'vitest';
import { practice } from '../../src/reference/practice';
import { sources, unsourcedGrounds } from '../../src/reference/sources';

test('waits in days, shares of all plants and of the stand, hives an acre, each with its ground', () => {
  // 7 and 14 days, one plant in ten: common practice, no source. A leap year between frosts, no wait at a risk of a
  // tenth: judgement. 1 to 3: University of Delaware, pollenizers.
  // 1 hive an acre of cucumbers: North Carolina Beekeeping Note 7B. Three quarters of a stand: judgement.
  // The ranges of the growing notes: common practice, no source. 25 plants looked at: judgement. 120 and 90 days
  // after raw manure: 7 CFR 205.203(c)(1). 2 to 3 seasons between cucurbits: North Carolina AG-552. Curing: Alabama
  // Extension. 11 visits of bees for a good cucumber: North Carolina Beekeeping Note 7B.
  const valueOf = (figure: (typeof practice)[keyof typeof practice]) =>
    'value' in figure ? figure.value : [figure.low, figure.high, figure.unit];
  expect(
    Object.fromEntries(Object.entries(practice).map(([name, figure]) => [name, valueOf(figure)])),
  ).toEqual({
    setOutWait: 14,
    sowingWait: 7,
    noWaitRisk: 0.1,
    mostSeasonDays: 366,
    gynoeciousPollenizers: 0.1,
    triploidPollenizers: 1 / (1 + 3),
    hives: 1,
    leastStand: 0.75,
    viningRoom: [6, 8, 'ft'],
    bushRoom: [2, 3, 'ft'],
    hillWidth: [2, 2, 'ft'],
    hillHeight: [6, 8, 'in'],
    hillTransplants: [3, 3, 'plants'],
    hillTransplantGap: [3, 3, 'in'],
    pottingDepth: [1, 1, 'in'],
    seedsPerPot: [1, 2, 'seeds'],
    firstTrueLeaf: [2, 2, 'weeks'],
    leavesAtSettingOut: [4, 4, 'none'],
    plantsScouted: 25,
    manureTouchingSoil: 120,
    manureOffTheSoil: 90,
    seasonsFree: [2, 3, 'none'],
    curing: [10, 10, 'days'],
    curingWarmth: [80, 85, 'F'],
    visitsForFruit: [11, 11, 'none'],
  });
  const known = new Set<string>([...Object.keys(sources), ...unsourcedGrounds]);
  for (const { ground } of Object.values(practice)) expect(known).toContain(ground);
});

test('frozen', () => {
  expect(Object.isFrozen(practice)).toBe(true);
  for (const figure of Object.values(practice)) expect(Object.isFrozen(figure)).toBe(true);
});
