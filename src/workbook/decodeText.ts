/** The letters of a text file. */

/** Of its first bytes, to tell UTF-16 without its mark: digits, separators and line ends have a byte of 0 each. */
const looked = 1000;

/**
 * UTF-8, or UTF-16 as spreadsheet programs save "Unicode text", with its mark at the beginning or without.
 *
 * @returns without the mark; null when the bytes are neither: guessing would lose letters
 */
export function decodeText(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder(encodingOf(bytes), { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}

function encodingOf(bytes: Uint8Array): 'utf-8' | 'utf-16le' | 'utf-16be' {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return 'utf-16le';
  if (first === 0xfe && second === 0xff) return 'utf-16be';
  const some = bytes.subarray(0, looked);
  const zeros = (side: 0 | 1): number => some.filter((byte, at) => byte === 0 && at % 2 === side).length;
  // No text in UTF-8 has a byte of 0.
  if (zeros(1) > zeros(0)) return 'utf-16le';
  return zeros(0) > 0 ? 'utf-16be' : 'utf-8';
}
