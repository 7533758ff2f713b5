/** The worksheet functions for Excel: webpack's metadata plugin adds the registration to each file named here. */
import '../functions/area';
import '../functions/check';
import '../functions/crop';
import '../functions/date';
import '../functions/dateSuccession';
import '../functions/flower';
import '../functions/flowerCrosses';
import '../functions/flowerGroup';
import '../functions/flowerHives';
import '../functions/harvest';
import '../functions/plants';
import '../functions/plantsForYield';
import '../functions/plantsInArea';
import '../functions/row';
import '../functions/season';
import '../functions/seed';
import '../functions/seedPacks';
import '../functions/seedStandard';
import '../functions/seedStorage';
import '../functions/seedTest';
import '../functions/stand';
import '../functions/tray';
import { formatResultsIf } from '../functions/toCell';
import { takesFormattedNumbers } from '../hosts/excel/takesFormattedNumbers';

formatResultsIf(takesFormattedNumbers);
