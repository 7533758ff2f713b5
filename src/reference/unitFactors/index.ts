/** What one unit holds of another, exact by definition; both the calculations and the sheets turn units by it. */
import data from './data.json';

export const unitFactors = Object.freeze(data);
