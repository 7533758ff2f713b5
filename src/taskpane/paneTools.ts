/** What the pane is handed by its entry, because it may reach for none of it itself. */
import type { NearestNames } from '../templates/sayListProblem';

export type UnitSystem = 'us' | 'metric';

export interface PaneTools {
  /** A typed number in the other system's unit. `converts` is what a template's column says. */
  convert(value: number, converts: string, to: UnitSystem): number;
  readonly nearestNames: NearestNames;
}
