import { expect, test } from 'vitest';
import { sayGround, sayGrounds } from '../../src/functions/citation';
import { sources } from '../../src/reference/sources';

test('every publication is said whole', () => {
  for (const [id, source] of Object.entries(sources)) {
    const said = sayGround(id);
    for (const part of [source.publisher, source.title, source.where]) expect(said).toContain(part);
    expect(said).toContain(source.year === null ? 'no date' : String(source.year));
    expect(said.includes('secondary copy')).toBe(source.status === 'secondary copy');
    expect(said.includes('from memory, check')).toBe(source.status === 'from memory, check');
    expect(said).not.toMatch(/[{}]/);
  }
});

test('the words for no source, and ids that are none, pass through', () => {
  expect(sayGround('judgement')).toBe('judgement');
  expect(sayGround('toString')).toBe('toString');
});

test('several grounds in one line, a remark after them, an unknown note left out', () => {
  expect(sayGrounds(['judgement', 'common practice, no source'])).toBe(
    'judgement; common practice, no source',
  );
  expect(sayGrounds(['judgement'], 'asSquash')).toBe('judgement. Taken to be as squash.');
  expect(sayGrounds(['judgement'], 'no such note')).toBe('judgement');
});
