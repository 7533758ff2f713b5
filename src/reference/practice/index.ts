/** What the trade usually does, of no one crop; both the calculations and the sheets start from it. */
import data from './data.json';

for (const figure of Object.values(data)) Object.freeze(figure);

export const practice = Object.freeze(data);
