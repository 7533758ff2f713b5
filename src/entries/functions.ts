/** The worksheet functions for Excel: webpack's metadata plugin adds the registration to each file named here. */
import '../functions/crop';
import '../functions/date';
import '../functions/flower';
import '../functions/harvest';
import '../functions/plants';
import '../functions/season';
import '../functions/seed';
import '../functions/seedStandard';
import '../functions/tray';
import { formatResultsIf } from '../functions/toCell';
import { takesFormattedNumbers } from '../hosts/excel/takesFormattedNumbers';

formatResultsIf(takesFormattedNumbers);
