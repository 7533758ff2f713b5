import { describe, expect, test } from 'vitest';
import { decodeText } from '../../src/workbook/decodeText';

const text = 'Date,High (°C),Low (°C)\r\n2020-05-01,12,1\r\n';
// By Node's own encoder, which writes no mark.
const utf16le = [...Buffer.from(text, 'utf16le')];
const utf16be = [...Buffer.from(text, 'utf16le').swap16()];
const utf8 = [...Buffer.from(text, 'utf8')];

describe('a text file', () => {
  test.each([
    ['UTF-8', utf8],
    ['UTF-8 with its mark', [0xef, 0xbb, 0xbf, ...utf8]],
    ['UTF-16, low byte first', utf16le],
    ['UTF-16, low byte first, with its mark', [0xff, 0xfe, ...utf16le]],
    ['UTF-16, high byte first', utf16be],
    ['UTF-16, high byte first, with its mark', [0xfe, 0xff, ...utf16be]],
  ])('is read in %s', (_, bytes) => {
    expect(decodeText(Uint8Array.from(bytes))).toBe(text);
  });

  test('is refused in an encoding of one byte a letter, and where half a letter is lost', () => {
    expect(decodeText(Uint8Array.from(Buffer.from(text, 'latin1')))).toBeNull();
    expect(decodeText(Uint8Array.from([...utf16le, 0x2c]))).toBeNull();
  });

  test('of no bytes is empty', () => expect(decodeText(new Uint8Array())).toBe(''));
});
