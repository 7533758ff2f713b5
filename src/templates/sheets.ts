/** Every sheet template, in the order of the workbook's tabs. */
import type { SheetTemplate } from '../workbook/template';
import { cropRangesTemplate, cropsTemplate } from './crops';
import { plotsTemplate } from './plots';
import { seasonTemplate } from './season';

export const allTemplates: readonly SheetTemplate[] = [
  seasonTemplate,
  plotsTemplate,
  cropsTemplate,
  cropRangesTemplate,
];

/** Stands before every function id in a formula, its dot included. */
export const functionNamespace = 'CUCURBIT.';
