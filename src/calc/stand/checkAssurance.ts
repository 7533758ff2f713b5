import { refuse } from '../errors';
import { checkShare } from '../limits/limits';

/**
 * The check of an assurance: the chance, above 0 and below 1, that what is sown is enough.
 *
 * @throws assuranceOfOne (no number of seeds is certain), percentForShare, outOfRange
 * Source: project convention: any chance that seed can give is allowed; a chance of 1 takes endless seed.
 */
export function checkAssurance(assurance: number): void {
  if (assurance === 1) refuse({ code: 'assuranceOfOne' });
  checkShare('assurance', assurance, { above: 0, below: 1 });
}
