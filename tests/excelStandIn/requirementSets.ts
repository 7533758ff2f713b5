/** In which version of ExcelApi a member came, by the published types of the library: not by our own word. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

const types = createRequire(import.meta.url).resolve('@types/office-js/index.d.ts');

/** "Range.values" → 1 for ExcelApi 1.1; null for a member of another set. */
const minorOfMember = readMembers();

function readMembers(): ReadonlyMap<string, number | null> {
  const members = new Map<string, number | null>();
  const lines = readFileSync(types, 'utf8').split('\n');
  const start = lines.indexOf('declare namespace Excel {');
  const end = lines.indexOf('}', start);
  let className = '';
  let minor: number | null = 1;
  for (const line of lines.slice(start, end)) {
    className = /^ {4}(?:class|interface) (\w+)/.exec(line)?.[1] ?? className;
    const set = /\[?Api set: (\w+) 1\.(\d+)/.exec(line);
    if (set !== null) minor = set[1] === 'ExcelApi' ? Number(set[2]) : null;
    const member = /^ {8}(?:readonly )?(\w+)\??[(:]/.exec(line)?.[1];
    if (member !== undefined && !members.has(`${className}.${member}`)) {
      members.set(`${className}.${member}`, minor);
    }
  }
  return members;
}

/** `member` as requests name it, with a capital. Members that only the library itself calls start with "_". */
export function isMemberOf(className: string, member: string, apiMinor: number): boolean {
  if (member.startsWith('_')) return true;
  const minor = minorOfMember.get(`${className}.${member.charAt(0).toLowerCase()}${member.slice(1)}`);
  return typeof minor === 'number' && minor <= apiMinor;
}
