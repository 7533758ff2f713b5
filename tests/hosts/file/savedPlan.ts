/** A plan with what is easily lost on the way through a file: odd names, shares, blanks, a figure typed over. */
import { demoFilling, demoPlots } from '../../../src/templates/demoGarden';
import { plotsTemplate } from '../../../src/templates/plots';
import { cropsTemplate } from '../../../src/templates/crops';
import type { FillRequest } from '../../../src/workbook/fillSheets';
import type { CellContent, InputRow, SheetTemplate } from '../../../src/workbook/template';

export const oddNames = [
  '007',
  '=2+2',
  '1/2',
  'TRUE',
  '_x0041_',
  'Joe\'s "best" <plot> & more',
  'Überfeld – 北',
];

export const savedPlots: readonly InputRow[] = [
  ...demoPlots,
  ...oddNames.map((Plot) => ({ Plot, Crop: 'pumpkin', Length: 100.3, Width: 26, Germination: 0.07 })),
];

/** Nobody's figure: it only has to differ. */
export const typedFigure = { crop: 'pumpkin', trait: 'row spacing', value: 11.5 };

const typedOver = (template: SheetTemplate): SheetTemplate => ({
  ...template,
  tables: template.tables.map((table) => {
    const column = table.columns.findIndex(({ header }) => header === typedFigure.trait);
    const rows = table.rows?.map((cells) =>
      cells.map((cell, index): CellContent =>
        cells[0] === typedFigure.crop && index === column ? typedFigure.value : cell,
      ),
    );
    return { ...table, rows: rows ?? null };
  }),
});

export const savedPlan: readonly FillRequest[] = demoFilling.map(({ template, inputs, form }) => ({
  template: template === cropsTemplate ? typedOver(template) : template,
  inputs: template === plotsTemplate ? savedPlots : inputs,
  form: { ...form, UNITS: 'metric', ASSURANCE: 0.95 },
}));
