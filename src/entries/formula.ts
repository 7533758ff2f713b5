/** `npm run -s formula -- '=CUCURBIT.…' …`: one JSON value a line. */
import { functions } from '../functions';
import { openEvaluator } from '../hosts/browser/openEvaluator';
import { english } from '../texts/english';
import { functionNamespace } from '../templates/sheets';

async function main(): Promise<void> {
  const formulas = process.argv.slice(2);
  if (formulas.length === 0) process.stderr.write(`${english.commands.formula.usage}\n`);
  const evaluator = openEvaluator({
    functions: [...functions.values()],
    namespace: functionNamespace,
    firstSheet: 'Sheet1',
  });
  for (const formula of formulas) {
    process.stdout.write(`${JSON.stringify(await evaluator.evaluate(formula))}\n`);
  }
  evaluator.dispose();
}

main().then(
  () => process.exit(0),
  (error: unknown) => {
    process.stderr.write(`${String(error)}\n`);
    process.exit(1);
  },
);
