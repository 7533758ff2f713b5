import type { Injector } from '@univerjs/core';
import { StringValueObject, ValueNodeFactory, type BaseAstNode } from '@univerjs/engine-formula';

/**
 * A text written in a formula, made once. The engine asks at every calculation of every cell whether it reads as a
 * date or a number; our notes are mostly texts.
 */
class TextsMadeOnce extends ValueNodeFactory {
  override create(token: string): BaseAstNode {
    const node = super.create(token);
    if (!token.startsWith('"')) return node;
    const make = node.execute.bind(node);
    let text: StringValueObject | null = null;
    node.execute = () => {
      if (text !== null) return node.setValue(text);
      make();
      const made = node.getValue();
      // What became a number may be changed by whoever calculates with it.
      if (made instanceof StringValueObject) text = made;
    };
    return node;
  }
}

/** Before the workbook is made. */
export function makeTextsOnce(injector: Injector): void {
  injector.replace([ValueNodeFactory, { useClass: TextsMadeOnce }]);
}
