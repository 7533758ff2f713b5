/** Roles and formats as styles of the engine, each under an id of its own. */
import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  VerticalAlign,
  WrapStrategy,
  type IStyleData,
} from '@univerjs/core';
import { borderColor, formatCodes, isIndented, looks } from '../../workbook/appearance';
import type { Format, Role } from '../../workbook/port';

/** As wide as an indent of .xlsx. */
const indentPx = 9;

export function styleId(role: Role, format: Format): string {
  return `${role}-${format}`;
}

export function styleOf(role: Role, format: Format): IStyleData {
  const look = looks[role];
  const side = { s: BorderStyleTypes.THIN, cl: { rgb: `#${borderColor}` } };
  return {
    ff: 'Arial',
    fs: look.sizePt,
    cl: { rgb: `#${look.color}` },
    bl: look.bold ? BooleanNumber.TRUE : BooleanNumber.FALSE,
    it: look.italic ? BooleanNumber.TRUE : BooleanNumber.FALSE,
    vt: VerticalAlign.MIDDLE,
    ...(look.centred ? { ht: HorizontalAlign.CENTER } : {}),
    ...(isIndented({ role, format }) ? { ht: HorizontalAlign.LEFT, pd: { l: indentPx } } : {}),
    ...(look.fill === null ? {} : { bg: { rgb: `#${look.fill}` } }),
    ...(look.wrap ? { tb: WrapStrategy.WRAP } : {}),
    ...(look.border ? { bd: { t: side, r: side, b: side, l: side } } : {}),
    ...(formatCodes[format] === formatCodes.general ? {} : { n: { pattern: formatCodes[format] } }),
  };
}
