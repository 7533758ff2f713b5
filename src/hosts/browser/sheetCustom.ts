/** What we keep with a sheet inside the engine's own data, so that it lives, dies and comes back with the sheet. */
import type { Worksheet } from '@univerjs/core';
import type { Expression, Mark } from '../../workbook/port';

/** By the table's id: what a new row computes, by header. */
type Growth = Readonly<Record<string, Readonly<Record<string, Expression>>>>;

export interface SheetCustom {
  readonly mark: Mark | null;
  readonly growth: Growth;
}

const markKey = 'templateMark';
const growthKey = 'tableGrowth';

/** @param custom as the engine keeps it with a sheet */
export function markIn(custom: Readonly<Record<string, unknown>> | null | undefined): Mark | null {
  return (custom?.[markKey] as Mark | null | undefined) ?? null;
}

export function packCustom({ mark, growth }: SheetCustom): Record<string, unknown> {
  return { [markKey]: mark, [growthKey]: growth };
}

export function setMark(worksheet: Worksheet, mark: Mark | null): void {
  const config = worksheet.getConfig();
  config.custom = { ...config.custom, [markKey]: mark };
}

export function customOf(worksheet: Worksheet): SheetCustom {
  const custom: Record<string, unknown> = worksheet.getConfig().custom ?? {};
  return {
    mark: markIn(custom),
    growth: (custom[growthKey] as Growth | undefined) ?? {},
  };
}
