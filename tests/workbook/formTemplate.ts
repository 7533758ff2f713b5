import { input, operate } from '../../src/workbook/expressions';
import type { FormLine, SheetTemplate } from '../../src/workbook/template';

const line = (name: string, content: FormLine['content']): FormLine => ({
  label: name,
  name,
  kind: typeof content === 'object' && content !== null ? 'computed' : 'input',
  content,
  format: 'general',
  choices: [],
  remark: '',
});

/** A sheet of two inputs and what is computed from one of them. */
export const formTemplate: SheetTemplate = {
  id: 'form',
  version: 1,
  sheet: 'Form',
  title: 'Form',
  lead: [],
  cautions: [],
  form: [
    line('YEAR_OF_PLAN', null),
    line('SHARE_KEPT', 0.5),
    line('NEXT_YEAR', { compute: operate(input('YEAR_OF_PLAN'), '+', 1) }),
  ],
  tables: [],
  page: { landscape: false, pagesWide: 1, repeatFirstColumn: false },
};
