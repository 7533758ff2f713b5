/** A plan of a thousand rows takes some hundred thousand bytes. */
export const mostFileBytes = 20_000_000;
