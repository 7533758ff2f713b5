/** What we use beyond ExcelApi 1.9, the floor of the manifest. Below its version a feature is lacking, not the host. */
const versions = {
  /** Notes on cells. Without them a header's note is left out; unit and remarks stand in cells. */
  notes: '1.18',
  /** Rows put under a table by us; people add theirs by typing in any version. */
  tableRows: '1.13',
  /** Pictures at a cell. */
  pictures: '1.10',
} as const;

export type ExcelFeature = keyof typeof versions;

export type IsSetSupported = (name: string, version: string) => boolean;

export function lackedFeatures(isSetSupported: IsSetSupported): readonly ExcelFeature[] {
  const features = Object.keys(versions) as ExcelFeature[];
  return features.filter((feature) => !isSetSupported('ExcelApi', versions[feature]));
}
