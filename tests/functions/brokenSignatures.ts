/**
 * Formulas in people's workbooks live longer than a version: an id stays, its arguments keep name and order, and
 * a new argument comes last and is optional.
 */
export type Signatures = Readonly<Record<string, readonly string[]>>;

/** One line for each promise that is broken, or not yet made; none when all is well. */
export function brokenSignatures(kept: Signatures, now: Signatures): string[] {
  const faults: string[] = [];
  for (const [id, was] of Object.entries(kept)) {
    const is = now[id];
    if (is === undefined) faults.push(`${id} is gone: it stands in people's workbooks, so bring it back`);
    else faults.push(...argumentFaults(id, was, is));
  }
  for (const [id, is] of Object.entries(now)) {
    const line = `${JSON.stringify(id)}: ${JSON.stringify(is)}`;
    if (kept[id] === undefined)
      faults.push(`${id} is new: add to tests/functions/keptSignatures.json ${line}`);
    else if (is.length > kept[id].length)
      faults.push(`${id} has a new argument: put into tests/functions/keptSignatures.json ${line}`);
  }
  return faults;
}

function argumentFaults(id: string, was: readonly string[], is: readonly string[]): string[] {
  const added = is.slice(was.length).filter((argument) => !argument.endsWith('?'));
  return [
    ...was.flatMap((argument, i) =>
      is[i] === argument ? [] : [`${id}: argument ${i + 1} was ${argument} and is ${is[i] ?? 'gone'}`],
    ),
    ...added.map((argument) => `${id}: the new argument ${argument} must be optional`),
  ];
}
