import { createRequire } from 'node:module';
import { defineConfig, type Plugin } from 'vitest/config';

const require = createRequire(import.meta.url);

/** The spreadsheet engine's ES modules do not run in Node; its CommonJS builds do, and they must be the only copy. */
const engineFromCommonJs: Plugin = {
  name: 'engine-from-commonjs',
  enforce: 'pre',
  resolveId: (id) => (id.startsWith('@univerjs/') ? require.resolve(id) : null),
};

/** These look at what webpack makes for Excel; it is made once, and only when one of them runs. */
const ofTheBuild = [
  'tests/functionsRuntime/**/*.test.ts',
  'tests/manifest/**/*.test.ts',
  'tests/e2e/excelPage.test.ts',
];

/** Where dates occur; run again where days begin long before, and at half an hour after, those of UTC. */
const ofDates = [
  'tests/timeZones.test.ts',
  'tests/calc/{calendar,dates,season,frost,heat}/*.test.ts',
  'tests/commands/calendarFile.test.ts',
  'tests/calc/record/readRecord.test.ts',
  'tests/functions/{date,dateSuccession,dateWaits,season,seattle,stand,weather}.test.ts',
  'tests/workbook/{serialDate,readInputs}.test.ts',
  'tests/templates/templates.test.ts',
  'tests/taskpane/seasonSection.test.ts',
  'tests/hosts/file/evaluate.test.ts',
];
const otherZones = ['Pacific/Apia', 'America/St_Johns'];

export default defineConfig({
  plugins: [engineFromCommonJs],
  test: {
    environment: 'node',
    testTimeout: 60000,
    pool: 'forks',
    env: { TZ: 'UTC' },
    projects: [
      { extends: true, test: { name: 'source', include: ['tests/**/*.test.ts'], exclude: ofTheBuild } },
      ...otherZones.map((TZ) => ({
        extends: true as const,
        test: { name: TZ, include: ofDates, env: { TZ } },
      })),
      {
        extends: true,
        test: { name: 'build', include: ofTheBuild, globalSetup: 'tests/manifest/buildAddin.ts' },
      },
    ],
  },
});
