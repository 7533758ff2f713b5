/** A question that is answered from the sheets; its answer says when they have changed since. */
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { createQuestion, type QuestionParts, type Values } from './question';

export type Said = readonly (Node | string)[];

export interface SheetQuestion {
  readonly element: HTMLElement;
  /** After a new reading of the sheets. */
  recheck(): void;
}

/** @param answer from what the sheets say when it is called */
export function createSheetQuestion(
  parts: Omit<QuestionParts, 'onAsk' | 'onEdit'>,
  answer: (values: Values) => Said,
): SheetQuestion {
  let answered: { readonly values: Values; readonly text: string; isOld: boolean } | null = null;
  const question = createQuestion({
    ...parts,
    onAsk(values) {
      const said = answer(values);
      answered = { values, text: textOf(said), isOld: false };
      question.say(said);
    },
    onEdit: () => (answered = null),
  });
  return {
    element: question.element,
    recheck() {
      if (answered === null) return;
      const isOld = textOf(answer(answered.values)) !== answered.text;
      const sentence = fill(catalogue.pane.questions.isOld, { button: parts.button });
      if (isOld !== answered.isOld) question.remark(isOld ? sentence : '');
      answered.isOld = isOld;
    },
  };
}

function textOf(said: Said): string {
  return said.map((part) => (typeof part === 'string' ? part : part.textContent)).join('\n');
}
