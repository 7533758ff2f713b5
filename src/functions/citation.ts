/** A publication as the product cites it, or the words that stand where there is none; any other text passes through. */
import { sources, type SourceId } from '../reference/sources';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { sayCitation } from '../texts/sayCitation';

const isSource = (ground: string): ground is SourceId => Object.hasOwn(sources, ground);

export function sayGround(ground: string): string {
  if (isSource(ground)) return sayCitation(sources[ground]);
  const { grounds } = catalogue.citations;
  return Object.hasOwn(grounds, ground) ? grounds[ground as keyof typeof grounds] : ground;
}

/** All grounds of a figure in one line, with the remark on it where there is one. */
export function sayGrounds(grounds: readonly string[], note?: string): string {
  const said = grounds.map(sayGround).join(catalogue.citations.and);
  const remark = (catalogue.cropNotes as Readonly<Record<string, string>>)[note ?? ''];
  return remark === undefined ? said : said + fill(catalogue.citations.note, { note: remark });
}
