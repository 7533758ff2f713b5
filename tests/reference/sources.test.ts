import { describe, expect, test } from 'vitest';
import { crops } from '../../src/reference/crops';
import { seedStandardSource } from '../../src/reference/seedStandards';
import { sources, unsourcedGrounds } from '../../src/reference/sources';
import { dataHash, sourceRecord } from './sourceRecord';

const tables = [
  'sources',
  'crops',
  'seedStandards',
  'germinationTolerances',
  'seedLife',
  'emergence',
  'heatBases',
  'practice',
  'bushels',
  'pickingSizes',
  'pickling',
  'beetles',
  'tasks',
  'unitFactors',
];

describe.each(tables)('source record of %s', (table) => {
  const record = sourceRecord(table);

  test('every field is filled in', () => {
    expect(Object.keys(record).sort()).toEqual(
      'columns compiler licence retrieved sha256 title transformations where year'.split(' '),
    );
    for (const text of [record.title, record.compiler, record.where, record.licence]) {
      expect(text.trim()).not.toBe('');
    }
    expect(record.retrieved).toMatch(/^\d{4}-\d{2}-\d{2}$/);
    expect(record.year).toBeGreaterThan(1900);
    expect(record.transformations.length).toBeGreaterThan(0);
    expect(record.licence).not.toBe('undetermined');
  });

  test('the hash is that of data.json', () => {
    expect(record.sha256, `update sha256 in src/reference/${table}/source.json`).toBe(dataHash(table));
  });
});

describe('the publications', () => {
  test.each(Object.entries(sources))('%s has every field', (id, source) => {
    expect(id).toMatch(/^[a-z0-9-]+$/);
    expect(Object.keys(source)).toEqual(Object.keys(sourceRecord('sources').columns));
    for (const text of [source.title, source.publisher, source.where, source.licence]) {
      expect(text.trim()).not.toBe('');
    }
    if (source.year !== null) expect(source.year).toSatisfy((year) => year > 1850 && year <= 2026);
    expect(['read', 'secondary copy', 'from memory, check']).toContain(source.status);
    if (source.status !== 'from memory, check') expect(source.address).toMatch(/^https:\/\//);
  });

  test('regulations of the United States are in the public domain', () => {
    for (const [id, source] of Object.entries(sources)) {
      if (id.startsWith('cfr-')) expect(source.licence).toBe('US public domain');
    }
  });

  test('every ground that is cited exists', () => {
    const known = new Set<string>([...Object.keys(sources), ...unsourcedGrounds]);
    const cited = crops.flatMap((crop) => Object.values(crop.figures).flatMap((figure) => figure.grounds));
    for (const ground of [...cited, seedStandardSource]) expect(known).toContain(ground);
  });

  test('are frozen', () => {
    expect(Object.isFrozen(sources)).toBe(true);
    for (const source of Object.values(sources)) expect(Object.isFrozen(source)).toBe(true);
  });
});
