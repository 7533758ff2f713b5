/** A question with a few fields and a button; the answer stands below it and is read aloud. */
import type { CellValue } from '../workbook/port';
import type { FormLine } from '../workbook/template';
import type { NearestNames } from '../templates/sayListProblem';
import { element, paneId, setText } from './elements';
import { createFormField, type FormField } from './formField';

export interface QuestionField extends Pick<FormLine, 'name' | 'format' | 'limits' | 'takenAs'> {
  readonly label: string;
  readonly help: string;
  readonly choices?: readonly string[];
  readonly start?: CellValue;
  /** Nothing stands in for a blank. */
  readonly isWanted: boolean;
}

export type Values = Readonly<Record<string, CellValue>>;

export interface QuestionParts {
  readonly name: string;
  readonly heading: string;
  readonly fields: readonly QuestionField[];
  readonly button: string;
  /** What is said of a blank that nothing stands in for. */
  readonly wanted: string;
  readonly nearestNames: NearestNames;
  /** Asked with every field right. */
  readonly onAsk: (values: Values) => void;
  /** What was asked is no longer what the fields say. */
  readonly onEdit?: () => void;
}

export interface Question {
  readonly element: HTMLElement;
  say(answer: readonly (Node | string)[]): void;
  /** Beside the answer; '' for nothing. */
  remark(sentence: string): void;
  /** What the field starts with from now on; what the person chose stays. */
  startWith(name: string, value: CellValue): void;
}

export function createQuestion(parts: QuestionParts): Question {
  const fields = parts.fields.map((field) => {
    const { help, choices = [], start = null } = field;
    const line = { ...field, kind: 'input', content: start, choices, remark: help } as const;
    const made = createFormField(line, () => mark(made, field), parts.nearestNames);
    made.show(start, false);
    return { made, field };
  });
  const answer = element('div', { role: 'status', class: 'answer' });
  const remark = element('p', { role: 'status', class: 'note' });
  const button = element('button', { type: 'submit' }, parts.button);
  const headingId = paneId(`${parts.name}-question`);
  const form = element(
    'form',
    { novalidate: true, 'aria-labelledby': headingId },
    element('div', { class: 'fields' }, ...fields.map(({ made }) => made.element)),
    element('div', { class: 'buttons' }, button),
    answer,
    remark,
  );

  const wrongWith = (made: FormField, field: QuestionField): string | null => {
    const checked = made.check();
    if ('wrong' in checked) return checked.wrong;
    return field.isWanted && checked.value === null ? parts.wanted : null;
  };
  const mark = (made: FormField, field: QuestionField): void => {
    const wrong = made.isDone() ? wrongWith(made, field) : null;
    made.markWrong(wrong === parts.wanted ? null : wrong);
  };
  const clear = (): void => {
    answer.replaceChildren();
    setText(remark, '');
  };
  form.addEventListener('input', () => {
    clear();
    parts.onEdit?.();
  });
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    const wrong = fields.filter(({ made, field }) => wrongWith(made, field) !== null);
    for (const { made, field } of fields) {
      made.setDone();
      made.markWrong(wrongWith(made, field));
    }
    clear();
    if (wrong[0] !== undefined) return wrong[0].made.focus();
    const values = fields.map(({ made, field }) => {
      const checked = made.check();
      return [field.name, 'value' in checked ? checked.value : null];
    });
    parts.onAsk(Object.fromEntries(values));
  });

  return {
    element: element(
      'details',
      {},
      element('summary', {}, element('h3', { id: headingId }, parts.heading)),
      form,
    ),
    say: (said) => answer.replaceChildren(...said),
    remark: (sentence) => setText(remark, sentence),
    startWith: (name, value) => fields.find(({ field }) => field.name === name)?.made.show(value, false),
  };
}
