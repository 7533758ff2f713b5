/** What would change an answer, in words. */
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import type { FunctionDefinition, Scalar } from './define';
import type { Answer } from './distanceOfAnswers';
import { sayArgument, sayList, sayValue } from './sayValues';
import type { Variation, VariedInput } from './varyInputs';
import { sayNumber, sayQuantityName } from './wording';

/** One input varied alone. */
export interface Effect {
  readonly name: string;
  /** Of the input, from 0. */
  readonly place: number;
  readonly changes: readonly {
    /** "" for a range. */
    readonly given: string;
    readonly step: string;
    readonly answer: string;
    readonly outcome: Variation['answer'];
  }[];
  /** Whether the answer is another then. */
  readonly matters: boolean;
}

/** What went in and is not varied; the name in words. */
export interface NotVaried {
  readonly name: string;
  readonly why: 'word' | 'dayOfRecord';
}

export function notVariedOf(
  { parameters }: FunctionDefinition,
  args: readonly unknown[],
): readonly NotVaried[] {
  return parameters.flatMap(({ name, holds, holdsMany = 'word' }, index) => {
    if (holds !== undefined || holdsMany === 'number' || holdsMany === 'date') return [];
    const cells = [args[index]].flat(2);
    const isWord = cells.some(
      (cell) => typeof cell === 'boolean' || (typeof cell === 'string' && cell !== ''),
    );
    return isWord || holdsMany === 'dayOfRecord' ? [{ name: sayQuantityName(name), why: holdsMany }] : [];
  });
}

export function sayEffect(
  { name, place, holds, isRange, by, variations, effect }: VariedInput,
  base: Answer,
  definition: FunctionDefinition,
): Effect {
  return {
    name: sayQuantityName(name),
    place,
    matters: effect > 0,
    changes: variations.map(({ given, step, share, answer }) => {
      const said = sayVariedBy(step, share, isRange && by === 'whole' ? 'share' : by);
      return {
        given: given === null ? '' : sayArgument(given, holds === 'date'),
        step: isRange
          ? fill(catalogue.working.variedEach[by === 'whole' ? 'whole' : 'other'], { step: said })
          : said,
        answer: sayAnswer(base, answer, definition),
        outcome: answer,
      };
    }),
  };
}

/** Of a row all of it; of a longer list the last row that is another one. */
function sayAnswer(base: Answer, answer: Variation['answer'], definition: FunctionDefinition): string {
  if ('error' in answer) return answer.message;
  const { value } = answer;
  if (!Array.isArray(value)) return sayValue(value, definition.result === 'day');
  const sayRow = (row: readonly Scalar[] = []): string => sayList([row], definition);
  if (!Array.isArray(base) || (base.length === 1 && value.length === 1)) return sayList(value, definition);
  const { same, otherRow, otherRows } = catalogue.working.list;
  const rows = value.length;
  if (rows !== base.length) return fill(otherRows, { rows, before: base.length, last: sayRow(value.at(-1)) });
  const isOther = (i: number): boolean => value[i]?.some((one, column) => one !== base[i]?.[column]) === true;
  const last = [...value.keys()].filter(isOther).at(-1);
  if (last === undefined) return same;
  return fill(otherRow, { row: last + 1, rows, before: sayRow(base[last]), after: sayRow(value[last]) });
}

/** Two digits of a share are enough. */
function sayVariedBy(step: number, share: number | null, by: VariedInput['by']): string {
  const signed = (value: number): string => (value < 0 ? '' : '+') + sayNumber(value);
  const percent = signed(Number((100 * (share ?? 0)).toPrecision(2)));
  return fill(catalogue.working.variedBy[by], { step: signed(step), percent });
}
