/** Fills the sentences of the text catalogue with the numbers of a problem, a step or a remark. */
import type { Problem } from '../calc/errors';
import type { Quantity } from '../calc/working';
import type { Unit } from '../calc/units/units';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { isoOfDay } from '../workbook/serialDate';

const texts = catalogue;

/** Parameters of problems that are day numbers. */
const dayNames: ReadonlySet<string> = new Set([
  'lastFrost',
  'firstFrost',
  'firstPick',
  'firstDay',
  'lastDay',
  'day',
]);

/** Problems of one cell, which in a range is told by its row. */
const toldByRow: ReadonlySet<string> = new Set(['notANumber', 'currencySign', 'commaInNumber', 'notADate']);

/** A number as a person writes it: at most six significant digits after rounding error is gone. */
export function sayNumber(value: number): string {
  return String(Number(value.toPrecision(value >= 1e6 ? 12 : 6)));
}

export function sayQuantityName(name: string): string {
  return (texts.quantities as Readonly<Record<string, string>>)[name] ?? name.replaceAll('_', ' ');
}

/** "" for what has no unit. */
export function sayUnit(unit: Unit, value: Quantity): string {
  const words: Readonly<Record<string, string>> = value === 1 ? texts.unitsOfOne : {};
  return words[unit] ?? texts.units[unit];
}

const boundNames = ['above', 'atLeast', 'atMost', 'below'] as const;

function sayLimits(problem: Extract<Problem, { code: 'outOfRange' }>): string {
  const parts = boundNames.flatMap((bound) => {
    const limit = problem[bound];
    if (limit === undefined) return [];
    return fill(texts.limits[bound], { limit: `${sayNumber(limit)} ${sayUnit(problem.unit, limit)}`.trim() });
  });
  return parts.join(texts.limits.and);
}

/** What is to be typed stands behind a word for it, where the language has another. */
function sayChoice(choice: string): string {
  const words = (texts.choices as Readonly<Record<string, string>>)[choice];
  const [word = choice] = words?.split(', ') ?? [];
  return word === choice ? choice : fill(texts.pane.choice, { word, choice });
}

/** The advice that stands for a refusal, in the language of the catalogue. */
export function sayProblem(problem: Problem): string {
  const values: Record<string, string> = {};
  for (const [key, value] of Object.entries(problem)) {
    if (Array.isArray(value)) values[key] = value.join(', ');
    else if (key === 'name' || key === 'otherName') values[key] = sayQuantityName(String(value));
    else if (/^(unit|spacingUnit|landUnit)$/.test(key)) values[key] = texts.units[value as Unit];
    else if (dayNames.has(key)) values[key] = isoOfDay(Number(value));
    else values[key] = typeof value === 'number' ? sayNumber(value) : String(value);
  }
  if (problem.code === 'notAChoice') values['choices'] = problem.choices.map(sayChoice).join(', ');
  if (problem.code === 'unknownName') values['kind'] = texts.kinds[problem.kind];
  if (problem.code === 'outOfRange') values['limits'] = sayLimits(problem);
  if (toldByRow.has(problem.code) && 'row' in problem && problem.row !== undefined) {
    values['name'] = fill(texts.rowOfRange, values);
  }
  if (problem.code === 'judgedByRipeness') values['sign'] = texts.ripeness[problem.sign];
  if (problem.code === 'riskAboveFrost') {
    values['riskPercent'] = sayNumber(problem.risk * 100);
    values['sharePercent'] = sayNumber(Math.round(problem.share * 1000) / 10);
  }
  if (problem.code === 'percentForShare') {
    values['percent'] = sayNumber(problem.value * 100);
    values['fraction'] = sayNumber(problem.value / 100);
  }
  return fill(texts.errors[sentenceOf(problem)], values);
}

function sentenceOf(problem: Problem): keyof typeof texts.errors {
  // 1.2 was meant as 120 %, not as 1.2 %.
  if (problem.code === 'percentForShare' && problem.value <= 2) return 'percentForShareNearOne';
  if ('nearest' in problem && problem.nearest.length === 0) return `${problem.code}NoneNear`;
  return problem.code;
}
