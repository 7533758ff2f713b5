/** A plan with what is easily lost on the way through a file: odd names, shares, blanks, a figure typed over. */
import { demoFilling, demoPlots } from '../../../src/templates/demoGarden';
import { plotsTemplate } from '../../../src/templates/plots';
import { cropsTemplate } from '../../../src/templates/crops';
import type { FillRequest } from '../../../src/workbook/fillSheets';
import type { CellContent, InputRow, SheetTemplate } from '../../../src/workbook/template';
import { withTyped } from '../../../src/workbook/withTyped';

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

/** In metric units no bushel is published: 48 lb (USDA AIB 539) in kg. */
const bushel = { CropPrices: { 'slicing cucumber': { 'Weight of one': 21.77 } } };

export const savedPlan: readonly FillRequest[] = demoFilling.map(({ template, inputs, form }) => ({
  template: template === cropsTemplate ? typedOver(template) : withTyped(template, bushel),
  inputs: template === plotsTemplate ? savedPlots : inputs,
  form: { ...form, UNITS: 'metric', ASSURANCE: 0.95 },
}));
