/** What a manifest must be, as data. Sources: the vendor's manifest reference and MS-OWEMXML, read in 2026. */

/**
 * Children in the order that is enforced, for each element that has any. An element of two kinds is named with its
 * parent or its type.
 */
export const childrenInOrder: Readonly<Record<string, readonly string[]>> = {
  OfficeApp: [
    'Id',
    'AlternateId',
    'Version',
    'ProviderName',
    'DefaultLocale',
    'DisplayName',
    'Description',
    'IconUrl',
    'HighResolutionIconUrl',
    'SupportUrl',
    'AppDomains',
    'Hosts',
    'Requirements',
    'DefaultSettings',
    'Permissions',
    'VersionOverrides',
    'ExtendedOverrides',
  ],
  AppDomains: ['AppDomain'],
  'OfficeApp/Hosts': ['Host'],
  Requirements: ['Sets', 'Methods'],
  Sets: ['Set'],
  DefaultSettings: ['SourceLocation'],
  VersionOverrides: [
    'Description',
    'Requirements',
    'Hosts',
    'Resources',
    'WebApplicationInfo',
    'EquivalentAddins',
  ],
  'VersionOverrides/Hosts': ['Host'],
  'Host Workbook': ['Runtimes', 'AllFormFactors', 'DesktopFormFactor'],
  Runtimes: ['Runtime'],
  AllFormFactors: ['ExtensionPoint'],
  'ExtensionPoint CustomFunctions': ['Script', 'Page', 'Metadata', 'Namespace'],
  Script: ['SourceLocation'],
  Page: ['SourceLocation'],
  Metadata: ['SourceLocation'],
  DesktopFormFactor: ['GetStarted', 'FunctionFile', 'ExtensionPoint'],
  GetStarted: ['Title', 'Description', 'LearnMoreUrl'],
  'ExtensionPoint PrimaryCommandSurface': ['OfficeTab', 'CustomTab'],
  OfficeTab: ['Group'],
  Group: ['Label', 'Icon', 'Control'],
  'Control Button': ['Label', 'Supertip', 'Icon', 'Action'],
  Supertip: ['Title', 'Description'],
  Icon: ['Image'],
  'Action ShowTaskpane': ['TaskpaneId', 'SourceLocation'],
  Resources: ['Images', 'Urls', 'ShortStrings', 'LongStrings'],
  Images: ['Image'],
  Urls: ['Url'],
  ShortStrings: ['String'],
  LongStrings: ['String'],
};

/** The highest minor version of each requirement set that the vendor has named, all from 1.1. */
export const requirementSets: Readonly<Record<string, number>> = {
  SharedRuntime: 2,
  CustomFunctionsRuntime: 5,
  ExcelApi: 20,
};

export const iconSizes = { wanted: [16, 32, 80], known: [16, 20, 24, 32, 40, 48, 64, 80] } as const;

/** Pixels of the icons that stand in the lists of add-ins. */
export const listIcons = { IconUrl: 32, HighResolutionIconUrl: 64 } as const;

export const longest = {
  id: 32,
  ShortStrings: 125,
  LongStrings: 250,
  Description: 250,
  name: 125,
  Url: 2048,
};
