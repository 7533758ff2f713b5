import { expect, test } from 'vitest';
import { recordGrounds } from '../../../src/calc/crops/recordGrounds';
import type { Entry } from '../../../src/calc/working';

test('a publication is cited, custom and judgement are assumptions; nobody asking is nothing done', () => {
  const entries: Entry[] = [];
  recordGrounds(['il-squash', 'judgement'], 4, 'ft', 'hill spacing', (entry) => entries.push(entry));
  expect(entries).toEqual([
    { source: 'il-squash' },
    { assumed: 'hill spacing', value: 4, unit: 'ft', ground: 'judgement' },
  ]);
  expect(() => recordGrounds(['judgement'], 4, 'ft', 'hill spacing', undefined)).not.toThrow();
});
