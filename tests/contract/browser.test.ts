import { openHeadless } from '../../src/hosts/browser/openHeadless';
import { contractFunctions } from './contractFunctions';
import { foreignSheet } from './contractWorkbook';
import { workbookContract } from './workbookContract';

workbookContract('browser', async () => {
  let failing: number | null = null;
  let steps = 0;
  const port = openHeadless({
    functions: contractFunctions,
    namespace: 'CUCURBIT.',
    firstSheet: foreignSheet.name,
    onWrite() {
      if (steps++ === failing) throw new Error('a fault made by the test');
    },
  });
  const apply = port.apply.bind(port);
  const contents = foreignSheet.contents.map((row) => [...row]);
  await apply({
    title: 'seed',
    expect: [],
    newSheets: [],
    cells: [{ sheet: foreignSheet.name, row: 0, column: 0, contents }],
    tableRows: [],
    pictures: [],
    marks: [],
  });
  return {
    port,
    keepsMessages: true,
    async pictures() {
      const { resources } = JSON.parse(port.snapshot()) as { resources: { name: string; data: string }[] };
      const { data = '{}' } = resources.find(({ name }) => name === 'SHEET_DRAWING_PLUGIN') ?? {};
      const bySheet = JSON.parse(data) as Record<string, { data: Record<string, { description: string }> }>;
      return Object.values(bySheet).flatMap((sheet) =>
        Object.values(sheet.data).map(({ description }) => description),
      );
    },
    async rules(name) {
      const { resources, sheets } = JSON.parse(port.snapshot()) as {
        resources: { name: string; data: string }[];
        sheets: Record<string, { name: string }>;
      };
      const id = Object.keys(sheets).find((each) => sheets[each]?.name === name) ?? '';
      const kept = resources.find((each) => each.name === 'SHEET_CONDITIONAL_FORMATTING_PLUGIN');
      const bySheet = JSON.parse(kept?.data ?? '{}') as Record<string, { rule: { value: string } }[]>;
      return (bySheet[id] ?? []).map(({ rule }) => rule.value);
    },
    failAt(step) {
      failing = step;
      steps = 0;
    },
    dispose: async () => port.dispose(),
  };
});
