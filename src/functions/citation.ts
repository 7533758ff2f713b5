/** A publication as the product cites it; the words that stand where there is none pass through. */
import { sources, type SourceId } from '../reference/sources';
import { english } from '../texts/english';
import { fill } from '../texts/fill';

const isSource = (ground: string): ground is SourceId => Object.hasOwn(sources, ground);

/** "publisher: title (year), where", with a word on copies and memory. */
export function sayGround(ground: string): string {
  if (!isSource(ground)) return ground;
  const { publisher, title, year, where, status } = sources[ground];
  const pattern = year === null ? english.citations.undated : english.citations.dated;
  return fill(pattern, { publisher, title, year: year ?? '', where }) + english.citations[status];
}

/** All grounds of a figure in one line, with the remark on it where there is one. */
export function sayGrounds(grounds: readonly string[], note?: string): string {
  const said = grounds.map(sayGround).join(english.citations.and);
  const remark = (english.cropNotes as Readonly<Record<string, string>>)[note ?? ''];
  return remark === undefined ? said : said + fill(english.citations.note, { note: remark });
}
