/**
 * What the vendor's generator does not check in functions.json. Rules of names: docs/excel/custom-functions-naming.md
 * of the vendor's documentation. The limits of length are ours: longer texts are cut in the formula bar's help.
 */
import type { DescribedFunction } from './describedFunctions';
import { signatureOf } from './describedFunctions';
import { macroFunctions, worksheetFunctions } from './takenNames';

const longestDescription = 120;
const longestParameter = 100;
const longestId = 128;

const legalId = /^[A-Z][A-Z0-9.]*[A-Z0-9]$/;
const legalName = /^[A-Za-z][A-Za-z0-9._]*$/;
const likeCell = /^([A-Z]{1,3}[0-9]{1,7}|R[0-9]*C[0-9]*|R[0-9]*|C[0-9]*)$/;
const taken = new Set([...worksheetFunctions, ...macroFunctions]);

function idFaults({ id, name }: DescribedFunction): string[] {
  const faults: string[] = [];
  if (!legalId.test(id)) faults.push(`${id}: an id is of capital letters, digits and dots`);
  if (id.length < 3 || id.length > longestId) faults.push(`${id}: an id has 3 to ${longestId} characters`);
  if (likeCell.test(id)) faults.push(`${id}: reads like a cell`);
  if (taken.has(id)) faults.push(`${id}: the name of a function of Excel`);
  if (name !== id) faults.push(`${id}: its name is ${name}; both are the same here`);
  return faults;
}

function textFaults(where: string, text: string, longest: number): string[] {
  const faults: string[] = [];
  if (text.trim().length < 5) faults.push(`${where}: has no description`);
  if (text.length > longest) faults.push(`${where}: ${text.length} characters, at most ${longest}`);
  if (text.includes('\n')) faults.push(`${where}: more than one line`);
  return faults;
}

/** One line for each fault, none when all is well. */
export function lintFunctions(functions: readonly DescribedFunction[]): string[] {
  const faults: string[] = [];
  const seen = new Set<string>();
  for (const described of functions) {
    const { id, description, parameters } = described;
    if (seen.has(id.toUpperCase())) faults.push(`${id}: there are two`);
    seen.add(id.toUpperCase());
    faults.push(...idFaults(described), ...textFaults(id, description, longestDescription));
    for (const { name, description: text } of parameters) {
      if (!legalName.test(name)) faults.push(`${id} ${name}: a name starts with a letter`);
      faults.push(...textFaults(`${id} ${name}`, text, longestParameter));
    }
    const optional = signatureOf(described).map((parameter) => parameter.endsWith('?'));
    if (optional.lastIndexOf(false) > optional.indexOf(true) && optional.includes(true))
      faults.push(`${id}: a required argument stands after an optional one`);
  }
  return faults;
}
