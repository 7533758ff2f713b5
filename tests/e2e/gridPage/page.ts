/** The grid alone in a page, with the contract's functions, for tests that type into it. */
import { openPage } from '../../../src/hosts/browser/openPage';
import { datesInWords } from '../../../src/texts/datesInWords';
import { english } from '../../../src/texts/english';
import { contractFunctions } from '../../contract/contractFunctions';

const container = document.getElementById('grid');
if (container === null) throw new Error('page.html lacks #grid');

Object.assign(window, {
  workbook: openPage(
    {
      functions: contractFunctions,
      namespace: 'CUCURBIT.',
      firstSheet: 'Kitchen',
      help: [],
      gridLanguage: 'en',
      gridTexts: english.grid,
      dates: datesInWords,
    },
    container,
  ),
});
