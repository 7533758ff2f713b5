/** What to look at in the sheets with a form: their errors, named as their lines are. */
import { causesAmong, type Finding } from '../workbook/findFindings';
import { isCellError } from '../workbook/port';
import type { FormRead } from '../workbook/readForm';
import type { SheetTemplate } from '../workbook/template';
import { catalogue } from '../texts/catalogue';

/** The line that compares the year with the dates; its answer is a sentence, not an error. */
const yearCheck = 'YEAR_CHECK';

/** Every error of the form and of the first cells of its lists, then its remarks. */
function findAll(template: SheetTemplate, read: FormRead): Finding[] {
  const errors: Finding[] = [];
  const remarks: Finding[] = [];
  const firstCells = (template.lists ?? []).flatMap(({ heading, columns }) =>
    columns.slice(0, 1).map(({ name }) => ({ name, label: heading })),
  );
  for (const { name, label } of [...firstCells, ...template.form]) {
    const value = read.values[name] ?? null;
    const area = read.areas[name];
    if (area === undefined) continue;
    const place = { row: read.sheet, header: label, area };
    if (isCellError(value)) errors.push({ ...place, kind: 'error', text: value.message ?? value.error });
    else if (name === yearCheck && value === catalogue.sheets.season.yearDiffers) {
      remarks.push({ ...place, kind: 'remark', text: value });
    }
  }
  return [...errors, ...remarks];
}

/**
 * @param forms each sheet's template and what was read of it. An error that only follows from one of another sheet is
 *   left out.
 */
export function findInForms(forms: readonly (readonly [SheetTemplate, FormRead])[]): Finding[] {
  const found = forms.flatMap(([template, read]) => findAll(template, read));
  const isError = ({ kind }: Finding): boolean => kind === 'error';
  return [...causesAmong(found.filter(isError)), ...found.filter((finding) => !isError(finding))];
}

/** What is found in the plots, without errors that say nothing of their own while the season has one that does. */
export function withoutFollowers(
  inPlots: readonly Finding[],
  inSeason: readonly Finding[],
): readonly Finding[] {
  if (!inSeason.some(({ kind }) => kind === 'error')) return inPlots;
  return inPlots.filter(({ kind, text }) => kind === 'remark' || !text.startsWith('#'));
}
