/** `npm run -s formula -- '=CUCURBIT.…' …`: one JSON value a line. */
import './chooseLanguageOfCommand';
import { nearestNames } from '../calc/crops/nearestNames';
import { runFormulas } from '../commands/runFormulas';
import { functions } from '../functions';
import { openEvaluator } from '../hosts/browser/openEvaluator';
import { functionNamespace } from '../templates/sheets';

const evaluator = openEvaluator({
  functions: [...functions.values()],
  namespace: functionNamespace,
  firstSheet: 'Sheet1',
});
const say = (line: string): boolean => process.stdout.write(`${line}\n`);

runFormulas(process.argv.slice(2), { ...evaluator, nearestNames, say }).then(
  () => process.exit(0),
  (error: unknown) => {
    process.stderr.write(`${String(error)}\n`);
    process.exit(1);
  },
);
