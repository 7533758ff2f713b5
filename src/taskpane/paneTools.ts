/** What the pane is handed by its entry, because it may reach for none of it itself. */
import type { NearestNames } from '../templates/sayListProblem';

export interface PaneTools {
  readonly nearestNames: NearestNames;
}
