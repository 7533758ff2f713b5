/// <reference types="office-js" />

/**
 * Whether this Excel takes from a worksheet function a number together with its number format. Rich results came
 * with CustomFunctionsRuntime 1.4; a plain double that carries its format, with ExcelApi 1.19.
 */
export function takesFormattedNumbers(): boolean {
  const requirements = typeof Office === 'undefined' ? undefined : Office.context?.requirements;
  return (
    requirements !== undefined &&
    requirements.isSetSupported('CustomFunctionsRuntime', '1.4') &&
    requirements.isSetSupported('ExcelApi', '1.19')
  );
}
