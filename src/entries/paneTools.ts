/** What every pane is handed, whatever the host. */
import { nearestNames } from '../calc/crops/nearestNames';
import type { PaneTools } from '../taskpane/paneTools';

export const paneTools: PaneTools = { nearestNames };
