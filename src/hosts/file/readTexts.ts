/** Texts in a workbook's XML: those that cells share, and how odd characters are written. */
import { longestText } from '../../workbook/limits';
import type { Package } from './readPackage';
import { readXml } from './readXml';
import { tooBig } from './refusals';

export const mostTexts = 500_000;

/** @param part null where there is none. @throws HostError */
export function readTexts(parts: Package, part: string | null): string[] {
  const texts: string[] = [];
  if (part === null) return texts;
  const collector = textCollector(part);
  readXml(parts, part, {
    open: (name) => {
      if (name === 'si') collector.begin();
      collector.open(name);
    },
    text: collector.text,
    close(name) {
      collector.close(name);
      if (name !== 'si') return;
      texts.push(collector.end());
      if (texts.length > mostTexts) throw tooBig(`more than ${mostTexts} texts`);
    },
  });
  return texts;
}

export interface TextCollector {
  begin(): void;
  open(name: string): void;
  text(text: string): void;
  close(name: string): void;
  end(): string;
}

/** Joins the runs of a text; how it is to be pronounced is not part of it. */
export function textCollector(part: string): TextCollector {
  let collected = '';
  let isText = false;
  let isSound = false;
  return {
    begin: () => void (collected = ''),
    open(name) {
      if (name === 't') isText = !isSound;
      if (name === 'rPh') isSound = true;
    },
    text(text) {
      if (!isText) return;
      collected += text;
      // An escaped character takes seven.
      if (collected.length > 7 * longestText) throw tooBig(`${part} has a text of more than ${longestText}`);
    },
    close(name) {
      if (name === 't') isText = false;
      if (name === 'rPh') isSound = false;
    },
    end: () => unescapeCharacters(collected),
  };
}

/** _x000D_ stands for the character, _x005F_ for the underscore of a text that only looks like that. */
export function unescapeCharacters(text: string): string {
  return text.replace(/_x([0-9a-f]{4})_/gi, (_, code: string) =>
    String.fromCharCode(Number.parseInt(code, 16)),
  );
}
