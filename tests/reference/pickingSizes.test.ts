import { expect, test } from 'vitest';
import { cropNamed } from '../../src/calc/crops/cropNamed';
import { cropNames, crops } from '../../src/reference/crops';
import {
  picklingCrops,
  picklingSize,
  ripenessSigns,
  scallopNames,
  scallopSize,
} from '../../src/reference/pickingSizes';
import { sources, unsourcedGrounds } from '../../src/reference/sources';
import { english } from '../../src/texts/english';

test('USDA AIB 539: gherkins about 1 1/2 in, dills 4 in; scallop 3 to 4 in across: common practice, no source', () => {
  expect([picklingSize.low, picklingSize.high, picklingSize.measured]).toEqual([1.5, 4, 'length']);
  expect([scallopSize.low, scallopSize.high, scallopSize.measured]).toEqual([3, 4, 'diameter']);
  expect(scallopSize.grounds).toEqual(['common practice, no source']);
});

test('the pickling cucumber’s own size is that for pickles', () => {
  const own = crops.find(({ name }) => name === 'pickling cucumber')?.figures['picking size'];
  expect(own).toMatchObject({ low: picklingSize.low, high: picklingSize.high });
});

test('names of the reference: no other crop is called a scallop squash', () => {
  for (const crop of picklingCrops) expect(cropNames).toContain(crop);
  for (const name of scallopNames) expect(cropNamed(name)?.name).toBe('summer squash');
});

test('every crop has a picking size or a sign of ripeness, with words and a ground', () => {
  const grounds = [...Object.keys(sources), ...unsourcedGrounds];
  for (const { name, figures } of crops) {
    expect(figures['picking size'] !== undefined || ripenessSigns[name] !== undefined, name).toBe(true);
  }
  for (const [crop, one] of Object.entries(ripenessSigns)) {
    expect(cropNames).toContain(crop);
    expect(Object.keys(english.ripeness)).toContain(one?.sign);
    expect(grounds).toContain(one?.ground);
  }
  for (const ground of [...picklingSize.grounds, ...scallopSize.grounds]) expect(grounds).toContain(ground);
});

test('frozen', () => {
  for (const one of [picklingSize, picklingSize.grounds, picklingCrops, scallopSize, scallopNames]) {
    expect(Object.isFrozen(one)).toBe(true);
  }
  expect(Object.isFrozen(ripenessSigns) && Object.values(ripenessSigns).every(Object.isFrozen)).toBe(true);
});
