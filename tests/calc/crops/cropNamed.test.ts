import { expect, test } from 'vitest';
import { cropNamed } from '../../../src/calc/crops/cropNamed';
import { findCrop } from '../../../src/calc/crops/findCrop';
import { crops } from '../../../src/reference/crops';

test('agrees with findCrop on every name, and has nothing for an unknown one', () => {
  for (const name of crops.flatMap((crop) => [crop.name, ...crop.synonyms])) {
    expect(cropNamed(`  ${name.toLowerCase()} `)).toBe(findCrop(name));
  }
  for (const name of ['', 'tomato', '__proto__', 'constructor']) expect(cropNamed(name)).toBeUndefined();
});
