/** PNG by the specification of its header (ISO/IEC 15948: signature, IHDR), and pixels by unpacking it here. */
import { readFileSync } from 'node:fs';
import { inflateSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { drawFrostChance } from '../../src/pictures/frostChance';
import { svgToPng } from '../../src/pictures/svgToPng';
import { pngParts } from '../../src/entries/pngParts';
import { chance, wide } from './pictureData';

interface Pixels {
  readonly width: number;
  readonly height: number;
  /** 0 to 255, black to white. */
  grey(x: number, y: number): number;
}

function unpack(png: Uint8Array): Pixels {
  const bytes = Buffer.from(png);
  expect([...bytes.subarray(0, 8)]).toEqual([137, 80, 78, 71, 13, 10, 26, 10]);
  expect(bytes.toString('latin1', 12, 16)).toBe('IHDR');
  const [width, height] = [bytes.readUInt32BE(16), bytes.readUInt32BE(20)];
  // Eight bits of red, green, blue and opacity, row by row.
  expect([...bytes.subarray(24, 29)]).toEqual([8, 6, 0, 0, 0]);
  const parts: Buffer[] = [];
  for (let at = 8; at < bytes.length;) {
    const length = bytes.readUInt32BE(at);
    if (bytes.toString('latin1', at + 4, at + 8) === 'IDAT')
      parts.push(bytes.subarray(at + 8, at + 8 + length));
    at += length + 12;
  }
  const packed = inflateSync(Buffer.concat(parts));
  const rowLength = width * 4;
  const rows = new Uint8Array(rowLength * height);
  const predict = (filter: number, left: number, up: number, corner: number): number => {
    if (filter === 0) return 0;
    if (filter === 1) return left;
    if (filter === 2) return up;
    if (filter === 3) return (left + up) >> 1;
    const guess = left + up - corner;
    const [a, b, c] = [left, up, corner].map((each) => Math.abs(guess - each)) as [number, number, number];
    return a <= b && a <= c ? left : b <= c ? up : corner;
  };
  for (let y = 0; y < height; y++) {
    const filter = packed[y * (rowLength + 1)] ?? 0;
    for (let x = 0; x < rowLength; x++) {
      const at = y * rowLength + x;
      const left = x < 4 ? 0 : (rows[at - 4] ?? 0);
      const up = y === 0 ? 0 : (rows[at - rowLength] ?? 0);
      const corner = x < 4 || y === 0 ? 0 : (rows[at - rowLength - 4] ?? 0);
      rows[at] = (packed[y * (rowLength + 1) + 1 + x] ?? 0) + predict(filter, left, up, corner);
    }
  }
  return {
    width,
    height,
    grey(x, y) {
      const [red = 0, green = 0, blue = 0, opacity = 0] = rows.subarray(
        (y * width + x) * 4,
        (y * width + x) * 4 + 4,
      );
      if (opacity !== 255) throw new Error(`something shines through at ${x}, ${y}`);
      return Math.round(0.2126 * red + 0.7152 * green + 0.0722 * blue);
    },
  };
}

function darkIn(
  pixels: Pixels,
  [left, top, right, bottom]: readonly [number, number, number, number],
): number {
  let dark = 0;
  for (let y = top; y < bottom; y++)
    for (let x = left; x < right; x++) if (pixels.grey(x, y) < 110) dark += 1;
  return dark;
}

test('a picture becomes a PNG of twice its size, on white, with its texts in it', async () => {
  const { svg, widthPx, heightPx } = drawFrostChance({ ...chance, place: '' }, wide);
  const pixels = unpack(await svgToPng(svg, pngParts()));
  expect([pixels.width, pixels.height]).toEqual([2 * widthPx, 2 * heightPx]);
  expect(pixels.grey(0, 0)).toBe(255);
  // The title from 8 to about 200 across, and beside it nothing.
  const title = darkIn(pixels, [16, 16, 400, 50]);
  expect(title).toBeGreaterThan(800);
  expect(darkIn(pixels, [800, 16, 1280, 50])).toBe(0);
  const without = unpack(await svgToPng(svg.replaceAll(/<text[\s\S]*?<\/text>/g, ''), pngParts()));
  expect(darkIn(without, [16, 16, 400, 50])).toBe(0);
});

test.each([
  ['Latin', 'W'],
  ['Latin of Central Europe', 'Ł'],
  ['bold', 'W', 'bold'],
])('there are letters: %s', async (_, letter, weight = 'normal') => {
  const svgOf = (text: string): string =>
    `<svg xmlns="http://www.w3.org/2000/svg" width="40" height="40"><rect width="40" height="40" fill="#fff"/>` +
    `<text x="4" y="30" style="font-size:30px;font-family:Roboto, sans-serif;font-weight:${weight}">${text}</text></svg>`;
  const ink = async (text: string): Promise<number> =>
    darkIn(unpack(await svgToPng(svgOf(text), pngParts())), [0, 0, 80, 80]);
  expect(await ink(letter)).toBeGreaterThan(200);
  expect(await ink(' ')).toBe(0);
});

test('what is readied once draws again, and two at a time', async () => {
  const { svg } = drawFrostChance(chance, wide);
  const [one, other] = await Promise.all([svgToPng(svg, pngParts()), svgToPng(svg, pngParts())]);
  expect(one).toEqual(other);
});

test('the files are those of the packages', () => {
  expect(readFileSync('node_modules/@fontsource/roboto/LICENSE', 'utf8')).toContain('Apache License');
  expect(pngParts().fonts).toHaveLength(4);
});
