import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import type { FormLine } from '../workbook/template';

/** A choice as a list says it: what goes into the cell stands behind another word for it. */
export function sayChoice({ takenAs, words }: Pick<FormLine, 'takenAs' | 'words'>, choice: string): string {
  const crop = takenAs?.[choice];
  if (crop !== undefined) return fill(catalogue.pane.takenAs, { name: choice, crop });
  const word = words?.[choice]?.[0] ?? choice;
  return word === choice ? choice : fill(catalogue.pane.choice, { word, choice });
}
