/// <reference types="office-js" />

/** Rules on what cells hold, for sheets that exist. */
import { shades } from '../../workbook/appearance';
import type { Area, ShadeRule } from '../../workbook/port';
import { printText } from '../../workbook/printFormula';
import { askExcel } from './askExcel';
import { rangeOf } from './readCells';
import { step, type WriteStep } from './writeSteps';

/** Where a rule is looked for: it holds for this cell, on this text. */
export type RulePlace = Pick<Area, 'sheet' | 'row' | 'column'> & Pick<ShadeRule, 'equals'>;

/** The ids of the rules on that text that hold for that cell, of each place. @throws HostError */
export async function findRules(
  excel: typeof Excel,
  places: readonly RulePlace[],
): Promise<readonly (readonly string[])[]> {
  if (places.length === 0) return [];
  const known = await askExcel(excel, 'read', (context) => {
    const all = places.map((place) => rulesAt(context, place).load('items/id,items/type'));
    return () => all.map(({ items }) => items.filter(({ type }) => type === 'CellValue').map(({ id }) => id));
  });
  return askExcel(excel, 'read', (context) => {
    const all = places.map((place, i) =>
      (known[i] ?? []).map((id) => ({
        id,
        cellValue: rulesAt(context, place).getItem(id).cellValue.load('rule'),
      })),
    );
    return () =>
      all.map((found, i) =>
        found.filter(({ cellValue }) => isOn(cellValue.rule, places[i]?.equals ?? '')).map(({ id }) => id),
      );
  });
}

function rulesAt(context: Excel.RequestContext, place: RulePlace): Excel.ConditionalFormatCollection {
  return rangeOf(context, { ...place, rows: 1, columns: 1 }).conditionalFormats;
}

function isOn({ operator, formula1 }: Excel.ConditionalCellValueRule, equals: string): boolean {
  return operator === 'EqualTo' && formula1.replace(/^=/, '') === printText(equals);
}

export function putRule(range: Excel.Range, { equals, shade }: ShadeRule): Excel.ConditionalFormat {
  const rule = range.conditionalFormats.add('CellValue');
  const { cellValue } = rule;
  cellValue.format.font.color = `#${shades[shade].color}`;
  cellValue.format.fill.color = `#${shades[shade].fill}`;
  cellValue.rule = { formula1: `=${printText(equals)}`, operator: 'EqualTo' };
  return rule;
}

/** Excel puts a new rule before the others; from behind it is the last. */
export function addRule(area: Area, rule: ShadeRule): WriteStep {
  return step(7, (context) => {
    putRule(rangeOf(context, area), rule).priority = -1;
  });
}

export function removeRule(place: RulePlace, id: string): WriteStep {
  return step(2, (context) => rulesAt(context, place).getItem(id).delete());
}
