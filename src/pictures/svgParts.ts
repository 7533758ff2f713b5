/** SVG as text, of the few shapes that a plan is drawn in: no rule, id or class that a page around it would share. */
import { fontFamily, sizes } from './lettering';

export type Point = readonly [x: number, y: number];

/** To a hundredth of a pixel. */
export function px(value: number): string {
  return String(Number(value.toFixed(2)));
}

const escapes: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

interface TextLook {
  readonly fill: string;
  readonly size?: number;
  readonly bold?: boolean;
  readonly anchor?: 'start' | 'middle';
  /** Read from below to above. */
  readonly upward?: boolean;
}

export function textAt(text: string, [x, y]: Point, look: TextLook): string {
  const { fill, size = sizes.text, bold = false, anchor = 'start', upward = false } = look;
  const more = [
    bold ? ' font-weight="bold"' : '',
    anchor === 'middle' ? ' text-anchor="middle"' : '',
    upward ? ` transform="rotate(-90 ${px(x)} ${px(y)})"` : '',
  ].join('');
  // What XML does not let in would spoil the whole picture.
  const shown = text.replace(/[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, ' ');
  const escaped = shown.replace(/[&<>"]/g, (letter) => escapes[letter] ?? letter);
  return `<text x="${px(x)}" y="${px(y)}" font-family="${fontFamily}" font-size="${size}" fill="${fill}"${more}>${escaped}</text>`;
}

/** A measure from one place to another, level or upright, with a stroke at either end. */
export function span([x1, y1]: Point, [x2, y2]: Point, stroke: string): string {
  const [dx, dy] = y1 === y2 ? [0, 3] : [3, 0];
  const end = (x: number, y: number): string => `M${px(x - dx)} ${px(y - dy)}L${px(x + dx)} ${px(y + dy)}`;
  const path = `${end(x1, y1)}M${px(x1)} ${px(y1)}L${px(x2)} ${px(y2)}${end(x2, y2)}`;
  return `<path d="${path}" fill="none" stroke="${stroke}"/>`;
}

export function box([x, y]: Point, [width, height]: Point, look: string): string {
  return `<rect x="${px(x)}" y="${px(y)}" width="${px(width)}" height="${px(height)}" ${look}/>`;
}

export function disc([x, y]: Point, radius: number): string {
  return `<circle cx="${px(x)}" cy="${px(y)}" r="${px(radius)}"/>`;
}

export function diamond([x, y]: Point, out: number): string {
  return `<path d="M${px(x)} ${px(y - out)}L${px(x + out)} ${px(y)}L${px(x)} ${px(y + out)}L${px(x - out)} ${px(y)}z"/>`;
}

/** Shapes that look alike, known by what they are. */
export function group(part: string, look: string, shapes: readonly string[]): string {
  return shapes.length === 0 ? '' : `<g data-part="${part}" ${look}>${shapes.join('')}</g>`;
}
