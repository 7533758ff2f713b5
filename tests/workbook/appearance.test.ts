import { expect, test } from 'vitest';
import { looks, shades } from '../../src/workbook/appearance';

/** Relative luminance, WCAG 2.2. */
function luminance(rgb: string): number {
  const [red = 0, green = 0, blue = 0] = [0, 2, 4].map((at) => {
    const channel = Number.parseInt(rgb.slice(at, at + 2), 16) / 255;
    return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function contrast(one: string, other: string): number {
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}

test.each(Object.entries(looks))('%s: text stands out from its fill, 4.5 to 1 or more', (_, look) => {
  expect(contrast(look.color, look.fill ?? 'FFFFFF')).toBeGreaterThanOrEqual(4.5);
});

test.each(Object.entries(shades))(
  '%s: text stands out from its shade, 4.5 to 1 or more',
  (_, { color, fill }) => {
    expect(contrast(color, fill)).toBeGreaterThanOrEqual(4.5);
  },
);

test('shades are told from one another in grey, each a darker step (by how much: judgement, no source)', () => {
  const fills = ['FFFFFF', shades.pale.fill, shades.middle.fill, shades.deep.fill];
  const steps = fills.slice(1).map((fill, i) => contrast(fills[i] ?? '', fill));
  expect(luminance(shades.pale.fill)).toBeGreaterThan(luminance(shades.middle.fill));
  expect(luminance(shades.middle.fill)).toBeGreaterThan(luminance(shades.deep.fill));
  expect(steps[0]).toBeGreaterThan(1.3);
  expect(Math.min(...steps.slice(1))).toBeGreaterThan(2.2);
});

test('headers and inputs are told apart from computed cells by lightness alone', () => {
  expect(contrast(looks.header.fill ?? 'FFFFFF', 'FFFFFF')).toBeGreaterThan(3);
  expect(looks.input.fill).not.toBe(looks.computed.fill);
});
