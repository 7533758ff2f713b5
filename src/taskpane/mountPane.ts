/** The task pane over a workbook: put together here, read anew whenever the workbook changes. */
import { convertCells } from '../workbook/convertCells';
import type { LiveWorkbook } from '../workbook/port';
import { readForm } from '../workbook/readForm';
import { findInPlots } from '../templates/findInPlots';
import { findInPrices } from '../templates/findInPrices';
import { findInSeedOrder } from '../templates/findInSeedOrder';
import { readPlotPictures } from '../templates/plotPictures';
import { plotsTable, plotsTemplate } from '../templates/plots';
import { seasonTemplate } from '../templates/season';
import { allTemplates, areInOtherLanguage, knownTemplates } from '../templates/sheets';
import { weatherTemplate } from '../templates/weather';
import { catalogue } from '../texts/catalogue';
import { fill } from '../texts/fill';
import { readCalendarState } from '../templates/makeCalendar';
import { createActions } from './actions';
import { createCalendarSection, findInCalendar } from './calendarSection';
import { createCautionsSection } from './cautionsSection';
import { element, setText } from './elements';
import { createFindingsSection } from './findingsSection';
import { explainFindings } from './formulaFaults';
import { holdFocus } from './holdFocus';
import type { PaneTools, UnitSystem } from './paneTools';
import { createLanguageChoice } from './languageChoice';
import { createHomeworkSection } from './homeworkSection';
import { openedWhenAsked } from './openedWhenAsked';
import { createPlanSection, type PlanPlace } from './planSection';
import { createPlotsSection } from './plotsSection';
import { problemSentence } from './problemSentence';
import { createQuestionsSection } from './questionsSection';
import { readPlots } from './readPlots';
import { createRefresher } from './refresher';
import { findInForms, withoutFollowers } from './seasonFindings';
import { createSectionLinks } from './sectionLinks';
import { unitsField } from './seasonRules';
import { createSeasonSection, type SeasonState } from './seasonSection';
import { createSheetsSection } from './sheetsSection';
import { readWeatherSheet } from './readWeatherSheet';
import { createWeatherSection } from './weatherSection';
import { createWorkingSection } from './workingSection';

const { pane } = catalogue;

export interface PaneHandle {
  /** Ends all listening and empties the root. */
  dispose(): void;
}

const pauseAfterChangeMs = 250;
const settleMs = 15000;

/**
 * Resolves when the workbook has been read once. Whatever goes wrong is said in the pane.
 *
 * @param hint what to know of the page around the pane; "" for nothing
 * @param place where plans are opened and kept; not inside a spreadsheet program
 */
export async function mountPane(
  root: HTMLElement,
  workbook: LiveWorkbook,
  tools: PaneTools,
  hint = '',
  place?: PlanPlace,
): Promise<PaneHandle> {
  const actions = createActions(root);
  let isOpen = true;
  const refresher = createRefresher(() => read(), pauseAfterChangeMs, actions.isBusy);

  const season = createSeasonSection(workbook, seasonTemplate, actions, refresher.now, (to) =>
    convertCells(workbook, allTemplates, (value, converts) => tools.convert(value, converts, to)),
  );
  const sheets = createSheetsSection({
    workbook,
    templates: knownTemplates,
    season: seasonTemplate,
    typedNext: plotsTemplate,
    actions,
    seasonValues: season.valuesForNewSheet,
    refresh: refresher.now,
  });
  const plots = createPlotsSection({ workbook, table: plotsTable, actions, tools });
  const questions = createQuestionsSection(plotsTable, tools);
  const weather = createWeatherSection({ workbook, actions, tools, refresh: refresher.now });
  const calendar = createCalendarSection({
    workbook,
    actions,
    calendarTasks: tools.calendarTasks,
    calendarFile: tools.calendarFile,
    refresh: refresher.now,
  });
  const homework = createHomeworkSection({ workbook, actions, tools, refresh: refresher.now });
  const working = createWorkingSection(workbook, tools.readWorking);
  const findings = createFindingsSection(workbook, actions, tools.nearestNames);
  const functionList = openedWhenAsked('functions', pane.functionList, actions, async () => {
    const [{ createFunctionList }, functions] = await Promise.all([
      import('./functionList'),
      tools.functionList(),
    ]);
    const { nearestNames, refusalOf } = tools;
    return createFunctionList({ workbook, actions, nearestNames, refusalOf, functions });
  });
  const crops = openedWhenAsked('crops', pane.crops, actions, async () => {
    const [{ createCropGuide }, guideIn] = await Promise.all([import('./cropGuide'), tools.cropGuide()]);
    return createCropGuide(guideIn, system);
  });
  const languageChoice = createLanguageChoice(tools.speak);
  const trouble = element('p', { role: 'alert', class: 'notice notice-bad' });
  const again = element('button', { type: 'button', hidden: true }, pane.readAgain);
  again.addEventListener('click', () => void refresher.now());

  const plan = place === undefined ? [] : [createPlanSection(workbook, place, actions)];
  const planElements = plan.map(({ element: made }) => made);

  const sections = [
    season.element,
    sheets.element,
    plots.element,
    calendar.element,
    weather.element,
    questions.element,
    homework.element,
    working.element,
    findings.element,
    crops,
    functionList,
  ];
  const links = createSectionLinks([...planElements, ...sections]);
  const reading = element('p', { role: 'status', class: 'hint' }, pane.reading);
  // Before the workbook was read once they would say of every sheet that it is not there, and offer to make it.
  for (const part of sections) part.hidden = true;
  links.element.classList.add('waiting');

  root.replaceChildren(
    element(
      'header',
      {},
      element('h1', {}, pane.title),
      languageChoice.element,
      ...(hint === '' ? [] : [element('p', { class: 'hint' }, hint)]),
      links.element,
      trouble,
      again,
    ),
    ...planElements,
    ...sections,
    createCautionsSection(Object.values(catalogue.cautions)),
  );
  // Under what is shown first, so that nothing moves when it goes.
  season.element.after(reading);

  let system: UnitSystem = 'us';
  let isFirst = true;
  const read = async (): Promise<void> => {
    const problems: string[] = [];
    /** One part that cannot be read leaves the others readable. */
    const attempt = async <Result>(part: () => Promise<Result>): Promise<Result | 'unreadable'> => {
      try {
        return await part();
      } catch (cause) {
        problems.push(problemSentence(cause));
        return 'unreadable';
      }
    };
    const readSeason = async (): Promise<SeasonState> =>
      (await attempt(() => readForm(workbook, seasonTemplate))) ?? 'absent';
    // Opening a big workbook takes a while to calculate: nobody should look at figures that are not theirs.
    if (isFirst) {
      isFirst = false;
      const typed = await readSeason();
      season.show(typed);
      season.element.hidden = typeof typed !== 'object';
    }
    const unsettled = await attempt(() => workbook.settle(settleMs));
    const there = await attempt(() => workbook.sheets());
    const isInOtherLanguage = there !== 'unreadable' && areInOtherLanguage(there.map(({ mark }) => mark));
    languageChoice.show(isInOtherLanguage);
    const form = await readSeason();
    const left = unsettled === 'unreadable' ? 0 : unsettled.length;
    const lines = await attempt(() => readPlots(workbook, plotsTable, left === 0));
    const drawn = await attempt(() => readPlotPictures(workbook));
    const sky = await attempt(() => readWeatherSheet(workbook));
    const found = await attempt(async () =>
      explainFindings(workbook, await findInPlots(workbook), tools.nearestNames),
    );
    const inPrices = await attempt(() => findInPrices(workbook));
    // Of plots that are still calculated it would say that they changed.
    const dates =
      left > 0 ? 'waiting' : await attempt(() => readCalendarState(workbook, tools.calendarTasks));
    const inCalendar = await attempt(() => findInCalendar(workbook, dates));
    const inSeedOrder = await attempt(() => findInSeedOrder(workbook));
    const selection = await attempt(() => workbook.selection());
    if (!isOpen) return;
    const giveFocus = holdFocus(root);
    if (there !== 'unreadable') sheets.show(there);
    season.show(form);
    system = typeof form === 'object' && form.values[unitsField] === 'metric' ? 'metric' : 'us';
    plots.show(lines);
    if (drawn !== 'unreadable') plots.showPictures(drawn);
    if (dates !== 'waiting') calendar.show(dates);
    weather.show(sky, form, lines);
    questions.show(lines, typeof form === 'object' ? form : null);
    homework.show(system);
    const inForms = findInForms([
      // Its errors come first: those of a Season that follows it only follow from them.
      ...(typeof sky === 'object' ? [[weatherTemplate, sky.form] as const] : []),
      ...(typeof form === 'object' ? [[seasonTemplate, form] as const] : []),
    ]);
    const inPlots = found === 'unreadable' ? [] : withoutFollowers(found, inForms);
    const isEmpty = form === 'absent' && inPlots.length === 0;
    const inOthers = [inCalendar, inSeedOrder, inPrices].flatMap((each) =>
      each === 'unreadable' ? [] : each,
    );
    findings.show(isEmpty ? null : [...inForms, ...inPlots, ...inOthers], left);
    links.update();
    for (const part of sections) part.hidden = isInOtherLanguage;
    links.element.classList.remove('waiting');
    links.element.hidden = isInOtherLanguage;
    reading.remove();
    working.follow();
    if (selection !== 'unreadable') await findings.showSelected(selection);
    setText(trouble, problems[0] === undefined ? '' : fill(pane.notRead, { problem: problems[0] }));
    again.hidden = problems.length === 0;
    giveFocus();
  };

  const stops = [
    workbook.onChange(() => {
      plots.wait();
      findings.wait();
      refresher.soon();
    }),
    workbook.onSelection((area) => {
      working.follow();
      void findings.showSelected(area);
    }),
    working.stop,
    ...plan.map(({ stop }) => stop),
  ];
  await refresher.now();
  languageChoice.takeBack();
  return {
    dispose() {
      isOpen = false;
      refresher.stop();
      for (const stop of stops) stop();
      root.removeAttribute('aria-busy');
      root.replaceChildren();
    },
  };
}
