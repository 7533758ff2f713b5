/** Contrast of the pane's colours. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { contrast } from '../contrast';

const css = readFileSync('src/taskpane/colours.css', 'utf8');
const [lightPart = '', darkPart = ''] = css.split('@media (prefers-color-scheme: dark)');

function coloursOf(part: string): Readonly<Record<string, string>> {
  return Object.fromEntries(
    [...part.matchAll(/--([\w-]+): (#[0-9a-f]{6});/g)].map(([, name, value]) => [name, value]),
  );
}

/** Text needs 4.5:1 (1.4.3), the edge of a field and the focus 3:1 (1.4.11). */
const pairs: readonly (readonly [string, string, number])[] = [
  ['text', 'ground', 4.5],
  ['text-quiet', 'ground', 4.5],
  ['wrong', 'ground', 4.5],
  ['note', 'ground', 4.5],
  ['typed-text', 'typed-ground', 4.5],
  ['action-text', 'action', 4.5],
  ['edge', 'ground', 3],
  ['edge', 'typed-ground', 3],
  ['wrong', 'typed-ground', 3],
  ['action', 'ground', 3],
  // Of links too.
  ['focus', 'ground', 4.5],
];

it('computes contrast as the standard does: black on white 21, #767676 on white just above 4.5', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 10);
  expect(contrast('#767676', '#ffffff')).toBeGreaterThan(4.5);
  expect(contrast('#777777', '#ffffff')).toBeLessThan(4.5);
});

describe.each([
  ['light', coloursOf(lightPart)],
  ['dark', coloursOf(darkPart)],
])('%s', (_, colours) => {
  it.each(pairs)('%s on %s is at least %d to 1', (front, back, least) => {
    expect(contrast(colours[front] ?? '', colours[back] ?? '')).toBeGreaterThanOrEqual(least);
  });
});

it('gives every colour for both', () => {
  expect(Object.keys(coloursOf(darkPart)).sort()).toEqual(Object.keys(coloursOf(lightPart)).sort());
});
