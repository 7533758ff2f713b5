import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';

const folder = new URL('../../src/reference/', import.meta.url);
const read = (path: string): string => readFileSync(new URL(path, folder), 'utf8');

export interface SourceRecord {
  readonly title: string;
  readonly compiler: string;
  readonly year: number;
  readonly where: string;
  readonly retrieved: string;
  readonly licence: string;
  readonly columns: Readonly<Record<string, string>>;
  readonly transformations: readonly string[];
  readonly sha256: string;
}

export function sourceRecord(table: string): SourceRecord {
  return JSON.parse(read(`${table}/source.json`)) as SourceRecord;
}

/** The hash that source.json must have: put it there after reading over what changed. */
export function dataHash(table: string): string {
  return createHash('sha256')
    .update(read(`${table}/data.json`))
    .digest('hex');
}
