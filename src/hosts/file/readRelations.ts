import type { Package } from './readPackage';
import { readXml } from './readXml';

export interface Relation {
  readonly id: string;
  /** The last word of the type, which two generations of the format begin differently. */
  readonly type: string;
  /** The name of a part. */
  readonly target: string;
}

/** What a part says which other parts are; '' is the package itself. @throws HostError */
export function readRelations(parts: Package, part: string): Relation[] {
  const slash = part.lastIndexOf('/') + 1;
  const folder = part.slice(0, slash);
  const relations: Relation[] = [];
  readXml(parts, `${folder}_rels/${part.slice(slash)}.rels`, {
    open(name, attribute) {
      if (name !== 'Relationship') return;
      const type = attribute('Type') ?? '';
      const target = resolve(folder, attribute('Target') ?? '');
      relations.push({ id: attribute('Id') ?? '', type: type.slice(type.lastIndexOf('/') + 1), target });
    },
  });
  return relations;
}

function resolve(folder: string, target: string): string {
  const steps: string[] = [];
  for (const step of (target.startsWith('/') ? target : folder + target).split('/')) {
    if (step === '..') steps.pop();
    else if (step !== '' && step !== '.') steps.push(step);
  }
  return steps.join('/');
}
