/** The bytes of a file, and the text of a list, or a sentence that says why they cannot be had. */
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { decodeText } from '../workbook/decodeText';
import { UsageError } from './usageError';

const words = catalogue.commands.plan;

/** @throws UsageError */
export function readBytes(file: string, read: (file: string) => Uint8Array): Uint8Array {
  try {
    return read(file);
  } catch (cause) {
    throw new UsageError(sayCannotRead(file, cause), { cause });
  }
}

/** @throws UsageError when the bytes are no text that can be read */
export function textOf(file: string, bytes: Uint8Array): string {
  const text = decodeText(bytes);
  if (text === null) throw new UsageError(fill(words.notUtf8, { file }));
  return text;
}

function sayCannotRead(file: string, cause: unknown): string {
  const code = cause instanceof Error && 'code' in cause ? String(cause.code) : '';
  const sentences: Readonly<Record<string, string>> = words.cannotRead;
  return fill(sentences[code] ?? words.cannotRead.other, { file, reason: code });
}
