import { expect, test } from 'vitest';
import { beetleThresholds, wiltProneCrops } from '../../src/reference/beetles';
import { cropNames } from '../../src/reference/crops';
import { sources } from '../../src/reference/sources';

test('Purdue Vegetable Crops Hotline: 1 a plant on cucumber and muskmelon, 5 where there is no wilt', () => {
  expect(beetleThresholds.wiltProne.beetlesPerPlant).toBe(1);
  expect(beetleThresholds.notWiltProne.beetlesPerPlant).toBe(5);
});

test('watermelon takes no wilt (Purdue); squash and pumpkin are taken to (Ontario); nothing of gourd was read', () => {
  const prone = (wanted: boolean) =>
    Object.keys(wiltProneCrops).filter((crop) => wiltProneCrops[crop]?.prone === wanted);
  expect(prone(false)).toEqual(['watermelon', 'triploid watermelon']);
  expect(cropNames.filter((name) => wiltProneCrops[name] === undefined)).toEqual(['gourd']);
  for (const crop of prone(true)) expect(cropNames).toContain(crop);
});

test('each has its source, frozen', () => {
  const known = Object.keys(sources);
  for (const one of [...Object.values(beetleThresholds), ...Object.values(wiltProneCrops)]) {
    expect(known).toContain(one?.ground);
    expect(Object.isFrozen(one)).toBe(true);
  }
  expect(Object.isFrozen(beetleThresholds) && Object.isFrozen(wiltProneCrops)).toBe(true);
});
