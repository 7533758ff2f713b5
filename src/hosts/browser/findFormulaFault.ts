/** What keeps the engine from reading a formula. The engine itself only says #NAME? or #VALUE!. */
import type { IAccessor } from '@univerjs/core';
import { IFunctionService, LexerTreeBuilder, sequenceNodeType } from '@univerjs/engine-formula';
import type { FormulaFault } from '../../workbook/formulaFault';

/** @param formula with its "="; null when the engine can read it */
export function findFormulaFault(accessor: IAccessor, formula: string): FormulaFault | null {
  const lexer = accessor.get(LexerTreeBuilder);
  const functions = accessor.get(IFunctionService);
  const words = wordsOf(lexer, formula);
  const unknown = words.find(({ word, isCalled }) => isCalled && !functions.hasExecutor(word.toUpperCase()));
  if (unknown !== undefined) {
    return {
      code: 'unknownFunction',
      name: unknown.word,
      known: [...functions.getExecutors().keys()].map(String),
    };
  }
  const missing = lexer.checkIfAddBracket(formula);
  if (missing > 0) return { code: 'missingBrackets', count: missing };
  // An error of the builder comes as its text.
  if (typeof lexer.treeBuilder(formula) === 'string') return { code: 'unreadable' };
  const stray = words.find(({ isCalled }) => !isCalled);
  return stray === undefined ? null : { code: 'unknownWord', word: stray.word };
}

interface Word {
  readonly word: string;
  readonly isCalled: boolean;
}

/** What the lexer took for the name of a function, with or without an opening bracket behind it. */
function wordsOf(lexer: LexerTreeBuilder, formula: string): Word[] {
  const nodes = lexer.sequenceNodesBuilder(formula) ?? [];
  return nodes.flatMap((node, index) => {
    if (typeof node === 'string' || node.nodeType !== sequenceNodeType.FUNCTION) return [];
    const word = node.token.replace(/^[\s+@-]+/, '').trim();
    return /^(true|false)$/i.test(word) ? [] : [{ word, isCalled: nodes[index + 1] === '(' }];
  });
}
