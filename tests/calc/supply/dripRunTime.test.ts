import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dripRunTime } from '../../../src/calc/supply/dripRunTime';
import { waterForDepth } from '../../../src/calc/supply/waterForDepth';
import { unitSystems } from '../../../src/calc/units/units';
import { seeded } from '../dates/calendar';
import { recording } from '../recording';
import { refusalOf } from '../refusal';

const { us, metric } = unitSystems;

test.each([
  [13.2, 11.8],
  [27, 5.8],
  [40.2, 3.9],
])('Penn State: an inch on a bed 30 in wide by tape of %d gallons an hour: %d hours', (flow, hours) => {
  expect(Number(dripRunTime(1, 30, flow, undefined, us).toFixed(1))).toBe(hours);
});

test('25 mm on 75 cm at 1.64 L/h per m: 11.4 hours (hand computed: 18.75 / 1.64)', () => {
  expect(dripRunTime(25, 75, 1.64, undefined, metric)).toBeCloseTo(18.75 / 1.64, 12);
});

test('the hours give the water of the bed; two lines take half; both systems agree', () => {
  const widths = fc.double({ min: 6, max: 72, noNaN: true });
  const flows = fc.double({ min: 3.01, max: 100, noNaN: true });
  fc.assert(
    fc.property(fc.double({ min: 0.1, max: 3, noNaN: true }), widths, flows, (inches, width, flow) => {
      const hours = dripRunTime(inches, width, flow, 1, us);
      expect((hours * flow) / waterForDepth((width / 12) * 100, inches, us)).toBeCloseTo(1, 9);
      expect(dripRunTime(inches, width, flow, 2, us)).toBeCloseTo(hours / 2, 9);
      const litresPerMetre = (flow * 3.785411784) / 30.48;
      expect(dripRunTime(inches * 25.4, width * 2.54, litresPerMetre, 1, metric) / hours).toBeCloseTo(1, 9);
    }),
    seeded,
  );
});

test('a flow by the minute is caught, in either system', () => {
  expect(refusalOf(() => dripRunTime(1, 30, 0.45, 1, us))).toEqual({
    code: 'flowPerMinute',
    flow: 0.45,
    unit: 'gphPer100Ft',
    perHour: 27,
  });
  // 3 gallons an hour per 100 ft are 0.3726 litres an hour per m.
  expect(refusalOf(() => dripRunTime(25, 75, 0.372, 1, metric))).toMatchObject({ unit: 'lphPerM' });
  expect(dripRunTime(25, 75, 0.373, 1, metric)).toBeGreaterThan(50);
  expect(dripRunTime(1, 30, 3, 1, us)).toBeGreaterThan(50);
});

test('bounds: no water, no hours; the rest is refused with its name', () => {
  expect(dripRunTime(0, 30, 13.2, 1, us)).toBe(0);
  expect(refusalOf(() => dripRunTime(-1, 30, 13.2, 1, us))).toMatchObject({ name: 'depth', unit: 'in' });
  for (const bad of [0, -1, NaN, Infinity]) {
    expect(refusalOf(() => dripRunTime(1, bad, 13.2, 1, us))).toMatchObject({ name: 'wetted_width' });
    expect(refusalOf(() => dripRunTime(1, 30, bad, 1, us))).toMatchObject({ name: 'flow', above: 0 });
    expect(refusalOf(() => dripRunTime(1, 30, 13.2, bad, us))).toMatchObject({ name: 'lines' });
  }
  expect(refusalOf(() => dripRunTime(1, 30, 13.2, 1.5, us))).toMatchObject({ code: 'notWhole' });
});

test('working: the water, then the hours; a run of more than 6 hours is to be split', () => {
  const long = recording((record) => dripRunTime(1, 30, 13.2, undefined, us, record));
  expect(long.steps).toMatchObject([
    { step: 'waterOnBed', unit: 'gallon' },
    { step: 'dripRunTime', result: long.value, unit: 'hours' },
  ]);
  expect(long.steps[0]?.result).toBeCloseTo(155.84, 2);
  expect(long.assumptions).toMatchObject([{ assumed: 'lines', value: 1 }]);
  expect(long.remarks).toEqual(['splitTheRun']);
  expect(recording((record) => dripRunTime(1, 30, 27, 1, us, record)).remarks).toEqual([]);
});
