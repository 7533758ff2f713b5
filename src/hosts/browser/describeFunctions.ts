/** What the cell editor and the formula bar say of our functions while somebody types. */
import { BooleanNumber } from '@univerjs/core';
import { FunctionType, type IFunctionInfo } from '@univerjs/engine-formula';
import { IDescriptionService } from '@univerjs/sheets-formula';
import type { FunctionHelp } from '../../workbook/functionHelp';
import type { Engine } from './engine';

export function describeFunctions({ accessor, namespace }: Engine, help: readonly FunctionHelp[]): void {
  const infoOf = ({ id, description, parameters }: FunctionHelp): IFunctionInfo => ({
    functionName: `${namespace}${id}`,
    functionType: FunctionType.User,
    description,
    abstract: description,
    functionParameter: parameters.map(({ name, description: detail, optional }) => ({
      name,
      detail,
      example: name,
      require: optional === true ? BooleanNumber.FALSE : BooleanNumber.TRUE,
      repeat: BooleanNumber.FALSE,
    })),
  });
  accessor.get(IDescriptionService).registerDescriptions(help.map(infoOf));
}
