/**
 * An enterprise budget as it was printed: Texas Agricultural Extension B-1241 (C012), irrigated watermelon, South
 * Texas, 1999, an acre. Harvest, interest and adjustment, machinery and land: amounts as printed, labels inferred.
 */
export const watermelon1999 = {
  yieldCwt: 150,
  price: 7.25,
  /** Quantity and price of each line. */
  beforeHarvest: [
    ['phosphate, lb', 60, 0.3],
    ['potash, lb', 20, 0.13],
    ['rent of bees, hives', 1, 75],
    ['seed, lb', 0.75, 160],
    ['herbicide', 1, 50.75],
    ['nitrogen, lb', 80, 0.37],
    ['irrigation', 4, 9],
    ['insecticide', 5, 5.76],
    ['pesticide application', 5, 4],
    ['fungicide', 4, 7.9],
    ['fuel', 1, 10.06],
    ['repairs', 1, 4.14],
    ['labor, machinery', 1, 21.9],
    ['labor, other', 1, 65],
    ['labor, irrigation', 1, 11.5],
  ],
  harvest: 525,
  interest: 12.88,
  adjustment: -0.02,
  fixed: [46.66, 100],
  printed: {
    income: 1087.5,
    /** The printed lines sum to 524.95: the print rounds what it shows of a line, and sums unrounded (our reading). */
    beforeHarvest: 524.96,
    /** With the adjustment as printed; the lines sum to 1,062.82. */
    variable: 1062.81,
    fixed: 146.66,
    all: 1209.47,
    aboveVariable: 24.69,
  },
} as const;

/** Money is printed to the cent; where a sum of printed lines is a cent off, the test says so. */
export const cents = (money: number): number => Math.round(money * 100);
