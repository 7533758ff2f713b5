/** The bytes of a file, and the text of a list, or a sentence that says why they cannot be had. */
import { english } from '../texts/english';
import { fill } from '../texts/fill';
import { UsageError } from './usageError';

const words = english.commands.plan;

/** @throws UsageError */
export function readBytes(file: string, read: (file: string) => Uint8Array): Uint8Array {
  return attempt(
    () => read(file),
    (cause) => sayCannotRead(file, cause),
  );
}

/** @throws UsageError when the bytes are not UTF-8: guessing would lose letters */
export function textOf(file: string, bytes: Uint8Array): string {
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
