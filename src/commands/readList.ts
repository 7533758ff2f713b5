/** The text of the list, or a sentence that says why it cannot be had. */
import { english } from '../texts/english';
import { fill } from '../texts/fill';
import { UsageError } from './planOptions';

const words = english.commands.plan;

/** @throws UsageError; also when the bytes are not UTF-8: guessing would lose letters */
export function readList(file: string, readBytes: (file: string) => Uint8Array): string {
  const bytes = attempt(
    () => readBytes(file),
    (cause) => sayCannotRead(file, cause),
  );
  return attempt(
    () => new TextDecoder('utf-8', { fatal: true }).decode(bytes),
    () => fill(words.notUtf8, { file }),
  );
}

function attempt<Result>(action: () => Result, say: (cause: unknown) => string): Result {
  try {
    return action();
  } catch (cause) {
    throw new UsageError(say(cause), { cause });
  }
}

function sayCannotRead(file: string, cause: unknown): string {
  const code = cause instanceof Error && 'code' in cause ? String(cause.code) : '';
  const sentences: Readonly<Record<string, string>> = words.cannotRead;
  return fill(sentences[code] ?? words.cannotRead.other, { file, reason: code });
}
