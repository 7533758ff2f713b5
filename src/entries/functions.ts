/** The worksheet functions for Excel: webpack's metadata plugin adds the registration to each file named here. */
import './chooseLanguage';
import '../functions/area';
import '../functions/beetle';
import '../functions/budget';
import '../functions/check';
import '../functions/crop';
import '../functions/date';
import '../functions/dateSuccession';
import '../functions/dateWaits';
import '../functions/flower';
import '../functions/flowerCrosses';
import '../functions/flowerGroup';
import '../functions/flowerHives';
import '../functions/frost';
import '../functions/harvest';
import '../functions/harvestSize';
import '../functions/heat';
import '../functions/pickle';
import '../functions/plants';
import '../functions/plantsForYield';
import '../functions/plantsInArea';
import '../functions/rotation';
import '../functions/row';
import '../functions/season';
import '../functions/seed';
import '../functions/seedPackList';
import '../functions/seedPacks';
import '../functions/seedStandard';
import '../functions/seedStorage';
import '../functions/seedTest';
import '../functions/soil';
import '../functions/stand';
import '../functions/supply';
import '../functions/supplyWater';
import '../functions/tray';
import { formatResultsIf } from '../functions/toCell';
import { takesFormattedNumbers } from '../hosts/excel/takesFormattedNumbers';

/** For the pane beside it: a second copy of the functions would register itself in place of these. */
export { functionTools } from './functionTools';
export { homeworkProblems } from '../functions/homeworkProblems';
export { refusalOf } from '../functions/refusalOf';

formatResultsIf(takesFormattedNumbers);
