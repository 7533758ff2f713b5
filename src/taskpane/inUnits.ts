/** Units as the comments of the functions write them, and Spanish: "ft (m)". Longer ones first, for "sq ft" holds "ft". */
const pairs = [
  ['lb per acre', 'kg per hectare'],
  ['gallons an hour per 100 ft', 'litres an hour per m'],
  ['per acre', 'per hectare'],
  ['lb por acre', 'kg por hectárea'],
  ['galones por hora y 100 ft', 'litros por hora y m'],
  ['por acre', 'por hectárea'],
  ['100 ft', '100 m'],
  ['sq ft', 'sq m'],
  ['ft²', 'm²'],
  ['cu in', 'ml'],
  ['in³', 'ml'],
  ['per oz', 'per g'],
  ['por oz', 'por g'],
  ['ft', 'm'],
  ['in', 'cm'],
  ['in', 'mm'],
] as const;

/** What is said of an input, with the unit of the system in use alone. */
export function inUnits(description: string, system: 'us' | 'metric'): string {
  return pairs.reduce(
    (said, [us, metric]) => said.replace(`${us} (${metric})`, system === 'us' ? us : metric),
    description,
  );
}
