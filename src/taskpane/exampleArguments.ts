/** The arguments of one function in a formula that has it once, each as it is typed; of a list in braces too. */
export function exampleArguments(formula: string, id: string): readonly string[] {
  const start = formula.indexOf(`${id}(`) + id.length + 1;
  const args = [''];
  let depth = 0;
  let isText = false;
  for (const sign of formula.slice(start)) {
    if (sign === '"') isText = !isText;
    else if (!isText && /[({]/.test(sign)) depth++;
    else if (!isText && /[)}]/.test(sign) && --depth < 0) break;
    if (sign === ',' && depth === 0 && !isText) args.push('');
    else args.push((args.pop() ?? '') + sign);
  }
  return args;
}
