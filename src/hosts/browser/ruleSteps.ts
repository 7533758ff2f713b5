/** Rules on what cells hold. */
import { generateRandomId, type IMutationInfo } from '@univerjs/core';
import {
  AddConditionalRuleMutation,
  CFRuleType,
  CFSubRuleType,
  CFTextOperator,
  ConditionalFormattingRuleModel,
  DeleteConditionalRuleMutation,
  MoveConditionalRuleMutation,
  type IConditionFormattingRule,
} from '@univerjs/sheets-conditional-formatting';
import { shades } from '../../workbook/appearance';
import type { ShadeRule } from '../../workbook/port';
import type { Engine } from './engine';
import { rangeOf } from './rangeOf';
import { demandSheet } from './readWorkbook';
import { isInside } from './sheetSnapshot';
import { spanOf } from './tables';
import type { WriteStep } from './writeSteps';

export function addRule(engine: Engine, sheetId: string, asked: ShadeRule): WriteStep {
  return addOwn(engine, sheetId, ruleOf(asked));
}

/** As `Change.rules` has it: the engine puts a new rule before the others, so that it is moved behind them. */
export function addMissingRule(
  engine: Engine,
  { sheet, ...asked }: ShadeRule & { readonly sheet: string },
): WriteStep[] {
  const sheetId = demandSheet(engine, sheet).getSheetId();
  const others = rulesOf(engine, sheetId);
  if (others.some((other) => isLike(other, asked))) return [];
  const own = ruleOf(asked);
  const adding = addOwn(engine, sheetId, own);
  if (others.length === 0) return [adding];
  const move = (id: string | undefined, type: 'before' | 'after'): IMutationInfo => ({
    id: MoveConditionalRuleMutation.id,
    params: {
      unitId: engine.unitId,
      subUnitId: sheetId,
      start: { id: own.cfId, type: 'self' },
      end: { id, type },
    },
  });
  const moving: WriteStep = {
    name: 'rule',
    mutations() {
      const ids = rulesOf(engine, sheetId).map(({ cfId }) => cfId);
      return { redo: move(ids.at(-1), 'after'), undo: move(ids[1], 'before') };
    },
  };
  return [adding, moving];
}

function rulesOf(engine: Engine, sheetId: string): readonly IConditionFormattingRule[] {
  return engine.accessor.get(ConditionalFormattingRuleModel).getSubunitRules(engine.unitId, sheetId) ?? [];
}

function addOwn(engine: Engine, sheetId: string, rule: IConditionFormattingRule): WriteStep {
  const place = { unitId: engine.unitId, subUnitId: sheetId };
  return {
    name: 'rule',
    mutations: () => ({
      redo: { id: AddConditionalRuleMutation.id, params: { ...place, rule } },
      undo: { id: DeleteConditionalRuleMutation.id, params: { ...place, cfId: rule.cfId } },
    }),
  };
}

function ruleOf({ equals, shade, ...span }: ShadeRule): IConditionFormattingRule {
  const { color, fill } = shades[shade];
  return {
    cfId: generateRandomId(),
    ranges: [rangeOf(span)],
    stopIfTrue: false,
    rule: {
      type: CFRuleType.highlightCell,
      subType: CFSubRuleType.text,
      operator: CFTextOperator.equal,
      value: equals,
      style: { cl: { rgb: `#${color}` }, bg: { rgb: `#${fill}` } },
    },
  };
}

function isLike({ rule, ranges }: IConditionFormattingRule, { equals, row, column }: ShadeRule): boolean {
  return (
    rule.type === CFRuleType.highlightCell &&
    rule.subType === CFSubRuleType.text &&
    rule.operator === CFTextOperator.equal &&
    rule.value === equals &&
    ranges.some((range) => isInside(spanOf(range), row, column))
  );
}
