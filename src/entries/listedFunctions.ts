/** What is said of each worksheet function, in the language that was chosen. */
import { listFunctions } from '../guide/listFunctions';
import { functionHelp } from './functions?help';

export const listedFunctions = listFunctions(functionHelp);
