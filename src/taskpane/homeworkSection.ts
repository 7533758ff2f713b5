/** Homework: a sheet of problems, the same for everybody who gives the same number, and its key. */
import type { LiveWorkbook } from '../workbook/port';
import { makeHomework, type HomeworkName, type HomeworkProblem } from '../templates/makeHomework';
import type { NearestNames } from '../templates/sayListProblem';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import type { Actions } from './actions';
import { element, section } from './elements';
import { createNotice } from './notice';
import type { Answer, UnitSystem } from './paneTools';
import { failureSentence } from './problemSentence';
import { createQuestion } from './question';

const { homework: words, undo } = catalogue.pane;

export interface HomeworkTools {
  /** @param number of the homework, from 1 @param count of problems */
  homeworkProblems(
    number: number,
    count: number,
    units: UnitSystem,
  ): Promise<Answer<readonly HomeworkProblem[]>>;
}

export interface HomeworkParts {
  readonly workbook: LiveWorkbook;
  readonly actions: Actions;
  readonly tools: HomeworkTools & { readonly nearestNames: NearestNames };
  readonly refresh: () => Promise<void>;
}

export interface HomeworkSection {
  readonly element: HTMLElement;
  /** @param units of the season */
  show(units: UnitSystem): void;
}

export function createHomeworkSection({ workbook, actions, tools, refresh }: HomeworkParts): HomeworkSection {
  const { element: all } = section('homework', words.heading);
  const notice = createNotice(actions);
  const [sheet, key] = words.what.choices;
  const make = async (wanted: HomeworkName, count: number, isKey: boolean): Promise<void> => {
    notice.say(words.working);
    const problems = await tools.homeworkProblems(wanted.number, count, wanted.units);
    if ('wrong' in problems) return notice.warn(problems.wrong);
    const name = await makeHomework(workbook, wanted, problems.value, isKey, undo.homework);
    await refresh();
    notice.say(fill(isKey ? words.keyMade : words.made, { sheet: name, count: problems.value.length }));
  };
  const question = createQuestion({
    name: 'homework',
    heading: words.question,
    fields: [
      { ...words.what, name: 'homework sheet', format: 'text', start: sheet, isWanted: true },
      {
        ...words.number,
        name: 'homework number',
        format: 'whole',
        start: 1,
        limits: { atLeast: 1, atMost: 9999, isWhole: true },
        isWanted: true,
      },
      {
        ...words.count,
        name: 'homework count',
        format: 'whole',
        start: 20,
        limits: { atLeast: 1, atMost: 100, isWhole: true },
        isWanted: true,
      },
      {
        ...words.units,
        name: 'homework units',
        format: 'text',
        choices: ['us', 'metric'],
        start: 'us',
        isWanted: true,
      },
    ],
    button: words.make,
    wanted: words.wanted,
    nearestNames: tools.nearestNames,
    onEdit: notice.forgetGood,
    onAsk: (values) =>
      void actions.run(() =>
        make(
          {
            number: Number(values['homework number']),
            units: values['homework units'] === 'metric' ? 'metric' : 'us',
          },
          Number(values['homework count']),
          values['homework sheet'] === key,
        ).catch((cause: unknown) => notice.warn(failureSentence(cause))),
      ),
  });
  all.append(element('p', { class: 'lead' }, words.lead), question.element, notice.element);
  return { element: all, show: (units) => question.startWith('homework units', units) };
}
