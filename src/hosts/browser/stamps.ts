/**
 * The stamps of sheets. To work one out is a quarter of what the pane does after an edit of a thousand plots, and it
 * is asked for time and again: it is kept until something is written.
 */
import { CommandType, ICommandService, type Worksheet } from '@univerjs/core';
import { SetArrayFormulaDataMutation } from '@univerjs/engine-formula';
import { hashText } from '../../workbook/hashText';
import { isCellError } from '../../workbook/port';
import { isCalculationTalk } from './calculation';
import type { Engine } from './engine';
import { forEachContent, readFormula, readValue } from './readWorkbook';

const kept = new WeakMap<Engine, Map<Worksheet, string>>();

/** Of what stands in the cells, not of what formulas make of it: a calculation under way changes nothing. */
export function stampOf(engine: Engine, worksheet: Worksheet): string {
  const stamps = kept.get(engine) ?? keepFor(engine);
  const stamp = stamps.get(worksheet) ?? workOut(engine, worksheet);
  stamps.set(worksheet, stamp);
  return stamp;
}

/** Whatever is written, all are forgotten: a table that is called otherwise stands in the formulas of other sheets. */
function keepFor(engine: Engine): Map<Worksheet, string> {
  const stamps = new Map<Worksheet, string>();
  kept.set(engine, stamps);
  // Before, because a write that fails may have been half done.
  engine.accessor.get(ICommandService).beforeCommandExecuted(({ id, type }, options) => {
    const isOfResults =
      options?.['applyFormulaCalculationResult'] === true || id === SetArrayFormulaDataMutation.id;
    if (type === CommandType.MUTATION && !isOfResults && !isCalculationTalk(id)) stamps.clear();
  });
  return stamps;
}

/** A formula is written out once: the lines of a table have the same, and most of the text would be that. */
function workOut(engine: Engine, worksheet: Worksheet): string {
  const formulas = new Map<string, number>();
  const parts: string[] = [];
  forEachContent(worksheet, (row, column) => {
    const formula = readFormula(engine, worksheet, row, column);
    if (formula !== null) {
      const number = formulas.get(formula) ?? formulas.size;
      formulas.set(formula, number);
      parts.push(`${row},${column},formula,${number}`);
      return;
    }
    const value = readValue(engine, worksheet, row, column);
    parts.push(`${row},${column},${typeof value},${isCellError(value) ? value.error : value}`);
  });
  return hashText([...formulas.keys(), ...parts].join('\n'));
}
