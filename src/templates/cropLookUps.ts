/** What other sheets look up in the tables of the Crops sheet. */
import type { Trait } from '../reference/crops';
import { call, lookUp, native } from '../workbook/expressions';
import type { Expression } from '../workbook/template';
import { catalogue } from '../texts/catalogue';

const { columns, traits } = catalogue.sheets.crops;

/** The figure that the sheet has for the crop: ours, or what somebody typed over it. */
export const cropFigure = (crop: Expression, trait: Trait): Expression =>
  lookUp(crop, 'Crops', columns.crop, traits[trait]);

/** The high end of its published yield. */
export const highYield = (crop: Expression): Expression =>
  lookUp(crop, 'Crops', columns.crop, columns.yieldHigh);

/** The crop of the Crops sheet that a name of the trade stands for. */
export const cropOfName = (name: Expression): Expression =>
  lookUp(name, 'CropNames', columns.name, columns.crop);

/**
 * As people type it: where the look-up finds nothing, our function knows more ways of writing a name, says why it is
 * none and names what is near.
 */
export const cropTakenAs = (name: Expression): Expression =>
  native('IFERROR', cropOfName(name), cropOfName(call('CROP.NAME', name)));
