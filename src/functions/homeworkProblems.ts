/** The problems of a homework in words, with what goes into cells: dates as yyyy-mm-dd, shares as fractions. */
import { makeProblems, type Problem } from '../calc/homework/makeProblems';
import type { Argument } from '../calc/homework/problemKinds';
import { unitSystems, type UnitSystem, type UnitSystemName } from '../calc/units/units';
import { catalogue } from '../texts/catalogue';
import { homeworkProblemTexts, homeworkProblemWords } from '../texts/homeworkProblems';
import { fill } from '../texts/fill';
import { isoOfDay } from '../workbook/serialDate';
import { answering } from './answering';
import type { FunctionDefinition, Scalar } from './define';
import { explainable } from './explainable';
import { sayNumber, sayUnit } from './wording';

export interface HomeworkProblem {
  readonly text: string;
  /** The function that gives the answer, and its arguments. */
  readonly id: string;
  readonly args: readonly (string | number)[];
  /** Serial for a date. */
  readonly answer: Scalar;
}

export const homeworkProblems = answering(
  (number: number, count: number, units: UnitSystemName): readonly HomeworkProblem[] =>
    makeProblems(number, count, units).map((problem) => inWords(problem, unitSystems[units])),
);

function inWords({ id, args }: Problem, units: UnitSystem): HomeworkProblem {
  const definition = explainable.get(id);
  if (definition === undefined) throw new Error(`no function ${id}`);
  const cells = withUnits(definition, args.map(cellOf), units);
  const outcome = definition.run(cells);
  if ('error' in outcome) throw new Error(`${id}: ${outcome.message}`);
  const first = Array.isArray(outcome.value) ? outcome.value[0]?.[0] : outcome.value;
  const texts: Readonly<Record<string, string>> = homeworkProblemTexts;
  const said = definition.parameters.map(({ name }, i) => {
    const argument = args[i];
    return [name, argument === undefined ? '' : say(argument)] as const;
  });
  return {
    text: fill(texts[`${id} ${units.name}`] ?? texts[id] ?? id, {
      ...Object.fromEntries(said),
      ...unitWords(units),
    }),
    id,
    args: cells,
    answer: typeof first === 'number' ? Number(sayNumber(first)) : String(first),
  };
}

/** The unit system stands last; what is left out before it stays blank. */
function withUnits(
  { parameters }: FunctionDefinition,
  cells: readonly (string | number)[],
  { name }: UnitSystem,
): readonly (string | number)[] {
  const at = parameters.length - 1;
  if (name === 'us' || parameters[at]?.name !== 'units') return cells;
  return [...cells, ...Array<string>(at - cells.length).fill(''), name];
}

function unitWords(units: UnitSystem): Readonly<Record<string, string>> {
  return {
    length_unit: sayUnit(units.length, 2),
    spacing_unit: sayUnit(units.spacing, 2),
    area_unit: sayUnit(units.area, 2),
    land_unit: sayUnit(units.land, 1),
    mass_unit: sayUnit(units.mass, 2),
    cell_unit: sayUnit(units.cellVolume, 2),
    mix_unit: sayUnit(units.mixVolume, 2),
    temperature_unit: sayUnit(units.temperature, 2),
  };
}

function cellOf({ as, value }: Argument): string | number {
  switch (as) {
    case 'day':
      return isoOfDay(value);
    case 'days':
      return value.map(isoOfDay).join('; ');
    case 'numbers':
      return value.join('; ');
    default:
      return value;
  }
}

function say({ as, value }: Argument): string {
  const words: Readonly<Record<string, string>> = homeworkProblemWords;
  switch (as) {
    case 'day':
      return isoOfDay(value);
    // Without the years, for which there is no room.
    case 'days':
      return value.map((one) => isoOfDay(one).slice(-5)).join(', ');
    case 'numbers':
      return value.map(sayNumber).join(', ');
    case 'share':
      return fill(catalogue.homework.percent, { percent: sayNumber(value * 100) });
    case 'number':
      return sayNumber(value);
    case 'word':
      return words[value] ?? value;
  }
}
