/** One part of the package as XML, as it is unpacked: nothing of it is kept but what a reader takes. */
import { SaxesParser } from 'saxes';
import { HostError } from '../../workbook/port';
import type { Package } from './readPackage';
import { damaged, tooBig } from './refusals';

/** Sheets nest about ten deep. */
export const mostDepth = 64;
/** Between one tag and the next. The longest text of a cell has 32,767 characters, each at most six when escaped. */
export const mostBetweenTags = 1_000_000;

export interface XmlReader {
  /** Names are without their prefix. */
  open?(name: string, attribute: (name: string) => string | undefined): void;
  text?(text: string): void;
  close?(name: string): void;
}

/** Nothing happens where there is no such part. @throws HostError */
export function readXml(parts: Package, name: string, reader: XmlReader): void {
  const parser = new SaxesParser({ xmlns: true, position: false });
  const decoder = new TextDecoder('utf-8', { fatal: true });
  let depth = 0;
  let sinceTag = 0;
  parser.on('doctype', () => {
    throw damaged(`${name} declares a document type`);
  });
  parser.on('error', (cause) => {
    throw damaged(name, cause);
  });
  parser.on('opentag', (tag) => {
    sinceTag = 0;
    depth += 1;
    if (depth > mostDepth) throw tooBig(`${name} nests deeper than ${mostDepth}`);
    reader.open?.(tag.local, (wanted) => {
      // Prefixes are whatever the program chose; only ids of relations have one.
      return Object.values(tag.attributes).find(
        ({ local, prefix }) => (prefix === '' ? local : `:${local}`) === wanted,
      )?.value;
    });
  });
  parser.on('closetag', (tag) => {
    sinceTag = 0;
    depth -= 1;
    reader.close?.(tag.local);
  });
  parser.on('text', (text) => reader.text?.(text));
  parser.on('cdata', (text) => reader.text?.(text));
  const feed = (text: string): void => {
    sinceTag += text.length;
    parser.write(text);
    if (sinceTag > mostBetweenTags) throw tooBig(`${name} has ${sinceTag} characters without a tag`);
  };
  try {
    parts.read(name, (piece) => feed(decoder.decode(piece, { stream: true })));
    if (!parts.has(name)) return;
    feed(decoder.decode());
    parser.close();
  } catch (cause) {
    throw cause instanceof HostError ? cause : damaged(name, cause);
  }
}
