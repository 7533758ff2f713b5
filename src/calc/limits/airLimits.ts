/**
 * What the air has never been [C]: beyond it a temperature is in F, or wrong.
 *
 * Hottest and coldest air measured on earth: World Meteorological Organization, World Weather and Climate Extremes
 * Archive (Furnace Creek 1913, Vostok 1983); from memory, check. A night as warm as 45 C was never reported: judgement.
 */
export const airLimits = { hottestC: 56.7, coldestC: -89.2, warmestNightC: 45 };
