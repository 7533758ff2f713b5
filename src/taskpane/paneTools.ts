/** What the pane is handed by its entry, because it may reach for none of it itself. */
import type { CalendarTasks } from '../templates/drawUpCalendar';
import type { NearestNames } from '../templates/sayListProblem';
import type { ListedFunction } from '../workbook/functionHelp';
import type { ReadWeather } from '../templates/weatherTools';
import type { CalendarFile } from './calendarSection';
import type { HomeworkTools } from './homeworkSection';
import type { CropGuide } from './cropGuide';
import type { PlotPictureTools } from './plotPicture';
import type { ReadWorking } from './readWorking';
import type { PictureTools } from './weatherPictures';

export type UnitSystem = 'us' | 'metric';

/** What a calculation gives, or the advice it refuses with. */
export type Answer<Value> = { readonly value: Value } | { readonly wrong: string };

/** What a worksheet function says to a value that the argument at that place cannot be; null where it can. */
export type RefusalOf = (
  id: string,
  place: number,
  given: string | number | boolean,
) => Promise<string | null>;

/** Loaded when asked for. */
export interface GuideTools {
  functionList(): Promise<readonly ListedFunction[]>;
  cropGuide(): Promise<(system: UnitSystem) => CropGuide>;
}

/** Begins the page anew, in the language with that tag. false where this browser cannot keep the choice. */
export type Speak = (tag: string) => boolean;

export interface PaneTools extends PictureTools, PlotPictureTools, HomeworkTools, GuideTools {
  /** A typed number in the other system's unit. `converts` is what a template's column says. */
  convert(value: number, converts: string, to: UnitSystem): number;
  readonly speak: Speak;
  readonly nearestNames: NearestNames;
  readonly readWeather: ReadWeather;
  readonly calendarTasks: CalendarTasks;
  readonly calendarFile: CalendarFile;
  readonly readWorking: ReadWorking;
  readonly refusalOf: RefusalOf;
  /** ROW.FORDEMAND */
  rowForDemand(wantedPerWeek: number, yieldPer100: number, weeks: number): Answer<number>;
  /** SEED.NEEDED */
  seedsNeeded(
    plants: number,
    germination: number,
    fieldEmergence: number | undefined,
    assurance: number,
  ): Answer<number>;
  /** SEED.WEIGHT */
  seedWeight(seeds: number, seedsPerWeight: number): Answer<number>;
  /** DATE.LASTSOWING; serials in and out */
  lastSowing(
    firstFrost: number,
    daysToMaturity: number,
    harvestDays: number,
    fallDays: number,
    frostMargin: number,
  ): Answer<number>;
  /** DATE.SUCCESSION; serials in and out */
  successionDates(first: number, last: number, everyDays: number): Answer<readonly number[]>;
}
