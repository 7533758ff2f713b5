import {
  functionLookup,
  FUNCTION_NAMES_LOOKUP,
  type BaseFunction,
  type BaseReferenceObject,
  type BaseValueObject,
  type FunctionVariantType,
} from '@univerjs/engine-formula';

/** The engine's INDEX. The list that exports it is typed as if every entry might be any class or a name. */
const Index = functionLookup.find(([, name]) => name === FUNCTION_NAMES_LOOKUP.INDEX)?.[0] as
  (new (name: string) => BaseFunction) | undefined;
if (Index === undefined) throw new Error('the engine has no INDEX');

/**
 * INDEX over a column of a table on another sheet. The engine makes the cell it finds anew from the sheet's name,
 * which a reference to a table lacks, and then reads the cell on the formula's own sheet.
 */
export class TableIndex extends Index {
  override needsReferenceObject = true;
  override needsSheetsInfo = true;
  override minParams = 2;
  override maxParams = 4;

  override calculate(...variants: BaseValueObject[]): ReturnType<BaseFunction['calculate']> {
    const [from] = variants as FunctionVariantType[];
    if (from?.isReferenceObject()) nameSheet(from as BaseReferenceObject, this.getSheetsInfo().sheetNameMap);
    return super.calculate(...variants);
  }
}

function nameSheet(reference: BaseReferenceObject, sheetNames: Readonly<Record<string, string>>): void {
  if (!reference.isTable()) return;
  const name = sheetNames[reference.getForcedSheetId() ?? ''];
  if (name !== undefined) reference.setForcedSheetName(name);
}
