/** The worksheet functions for Excel: webpack's metadata plugin adds the registration to each file named here. */
import '../functions/crop';
import '../functions/date';
import '../functions/flower';
import '../functions/flowerCrosses';
import '../functions/flowerGroup';
import '../functions/flowerHives';
import '../functions/harvest';
import '../functions/plants';
import '../functions/season';
import '../functions/seed';
import '../functions/seedPacks';
import '../functions/seedStandard';
import '../functions/seedStorage';
import '../functions/seedTest';
import '../functions/tray';
import { formatResultsIf } from '../functions/toCell';
import { takesFormattedNumbers } from '../hosts/excel/takesFormattedNumbers';

formatResultsIf(takesFormattedNumbers);
