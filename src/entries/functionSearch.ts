/** The index of the function reference can be searched. */
import { listenForSearch } from '../taskpane/indexSearch';

listenForSearch(document);
