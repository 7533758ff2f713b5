import { IUniverInstanceService, UniverInstanceType, type IAccessor } from '@univerjs/core';
import { SheetsDataValidationValidatorService } from '@univerjs/sheets-data-validation';

/**
 * The engine holds cells to their pick lists when the page is idle. By then their workbook may have been put away, and
 * the engine would complain into the page's console: there is nothing left to hold.
 */
export function dropLateChecks(accessor: IAccessor): void {
  const instances = accessor.get(IUniverInstanceService);
  const validator = accessor.get(SheetsDataValidationValidatorService);
  const check = validator.validatorRanges.bind(validator);
  validator.validatorRanges = async (unitId, sheetId, ranges) => {
    const workbook = instances.getUnit(unitId, UniverInstanceType.UNIVER_SHEET);
    return workbook == null ? [] : check(unitId, sheetId, ranges);
  };
}
