/** Everything placed against what is counted, and against rows and plants set out one by one (`placing.ts`). */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bedsInPlot } from '../../../src/calc/plants/bedsInPlot';
import { hillRowsInPlot, type HillPattern } from '../../../src/calc/plants/hillRowsInPlot';
import { hillsInPlot } from '../../../src/calc/plants/hillsInPlot';
import { placeInBeds } from '../../../src/calc/plants/placeInBeds';
import { placeInHill } from '../../../src/calc/plants/placeInHill';
import { placeInHills } from '../../../src/calc/plants/placeInHills';
import { placeInRows } from '../../../src/calc/plants/placeInRows';
import { placeRows, type PlacedRow } from '../../../src/calc/plants/placeRows';
import { plantsInBeds } from '../../../src/calc/plants/plantsInBeds';
import { plantsInRows } from '../../../src/calc/plants/plantsInRows';
import { rowsInPlot, type RowEdge } from '../../../src/calc/plants/rowsInPlot';
import { unitSystems, type UnitSystemName } from '../../../src/calc/units/units';
import { seeded } from '../dates/calendar';
import { refusalOf } from '../refusal';
import { measured, positions } from './placing';

interface Spot {
  readonly x: number;
  readonly y: number;
}
const spotsOf = (rows: readonly PlacedRow[]): Spot[] =>
  rows.flatMap(({ across, along: { first, apart, count } }) =>
    Array.from({ length: count }, (_, i) => ({ x: first + i * apart, y: across })),
  );
/** By rows, to a millionth: the same number, in the same places. */
function expectAt(spots: readonly Spot[], wanted: readonly Spot[]): void {
  expect(spots).toHaveLength(wanted.length);
  spots.forEach(({ x, y }, i) => {
    expect(x).toBeCloseTo(wanted[i]?.x ?? NaN, 6);
    expect(y).toBeCloseTo(wanted[i]?.y ?? NaN, 6);
  });
}
const spacingOf = { us: 12, metric: 100 };
const systems = fc.constantFrom<UnitSystemName>('us', 'metric');

describe('in rows', () => {
  test('as many as PLANTS.INROWS counts, where a tape would put them', () => {
    fc.assert(
      fc.property(
        fc.record({ length: measured(8, 60), width: measured(8, 40), row: measured(1, 8) }),
        fc.integer({ min: 5, max: 90 }),
        fc.constantFrom<RowEdge>('inset', 'onedge'),
        systems,
        ({ length, width, row }, plant, edge, system) => {
          const units = unitSystems[system];
          const spots = spotsOf(placeInRows(rowsInPlot(length, width, row, plant, units, edge)));
          expect(spots).toHaveLength(plantsInRows(length, width, row, plant, units, edge));
          const apart = plant / spacingOf[system];
          const [inRow, inPlot] = edge === 'onedge' ? [0, 0] : [apart / 2, row / 2];
          expectAt(
            spots,
            positions(inPlot, width - inPlot, row).flatMap((y) =>
              positions(inRow, length - inRow, apart).map((x) => ({ x, y })),
            ),
          );
        },
      ),
      { ...seeded, numRuns: 60 },
    );
  });
});

describe('in hills', () => {
  test.each<HillPattern>(['square', 'staggered'])(
    '%s: as many as are counted, where a tape would',
    (pattern) => {
      fc.assert(
        fc.property(
          fc.record({ length: measured(8, 60), width: measured(8, 40), hill: measured(1, 8) }),
          fc.option(measured(1, 8), { nil: undefined }),
          ({ length, width, hill }, row) => {
            const plot = hillRowsInPlot(length, width, hill, unitSystems.us, pattern, row);
            const spots = spotsOf(placeInHills(plot));
            expect(spots).toHaveLength(hillsInPlot(length, width, hill, unitSystems.us, pattern, row));
            const isStaggered = pattern === 'staggered';
            const pitch = row ?? (isStaggered ? (hill * Math.sqrt(3)) / 2 : hill);
            const edge = isStaggered ? hill / 2 : pitch / 2;
            expectAt(
              spots,
              positions(edge, width - edge, pitch).flatMap((y, i) =>
                positions(isStaggered && i % 2 === 1 ? hill : hill / 2, length - hill / 2, hill).map((x) => ({
                  x,
                  y,
                })),
              ),
            );
          },
        ),
        { ...seeded, numRuns: 60 },
      );
    },
  );

  test.each([1, 2, 3, 5, 8])(
    '%d in a hill: each on its hill, apart, and nearer to it than to the next',
    (n) => {
      const plot = hillRowsInPlot(60, 26, 6, unitSystems.us);
      const { radius, plants } = placeInHill(n, plot, unitSystems.us);
      // Half of 2 ft (common practice, no source).
      expect(radius).toBe(1);
      expect(plants).toHaveLength(n);
      plants.forEach(({ along, across }, i) => {
        expect(Math.hypot(along, across)).toBeLessThan(radius);
        for (const other of plants.slice(i + 1)) {
          expect(Math.hypot(along - other.along, across - other.across)).toBeGreaterThan(0.3);
        }
      });
      // No hill runs into another, or out of the plot, however close they lie.
      const close = placeInHill(n, hillRowsInPlot(60, 26, 2, unitSystems.us, 'square', 1), unitSystems.us);
      expect(close.radius).toBe(0.25);
      expect(placeInHill(n, hillRowsInPlot(60, 26, 2, unitSystems.metric), unitSystems.metric).radius).toBe(
        0.3048,
      );
    },
  );
});

describe('in beds', () => {
  test('as many as PLANTS.INBEDS counts, on the beds, never on a path', () => {
    fc.assert(
      fc.property(
        fc.record({
          length: measured(8, 60),
          width: measured(8, 40),
          bed: measured(2, 6),
          path: measured(0, 3),
        }),
        fc.integer({ min: 1, max: 4 }),
        fc.integer({ min: 5, max: 90 }),
        systems,
        ({ length, width, bed, path }, rows, plant, system) => {
          const units = unitSystems[system];
          const plot = bedsInPlot(length, width, bed, path, rows, plant, units);
          const spots = spotsOf(placeInBeds(plot));
          expect(spots).toHaveLength(plantsInBeds(length, width, bed, path, rows, plant, units));
          const apart = plant / spacingOf[system];
          const of = bed / rows;
          expectAt(
            spots,
            positions(0, width - bed, bed + path).flatMap((from) =>
              positions(from + of / 2, from + bed - of / 2, of).flatMap((y) =>
                positions(apart / 2, length - apart / 2, apart).map((x) => ({ x, y })),
              ),
            ),
          );
        },
      ),
      { ...seeded, numRuns: 60 },
    );
  });
});

test('no more rows than can be drawn, refused before they are laid out', () => {
  const along = { first: 1, apart: 1, count: 1 };
  expect(placeRows(1000, (index) => ({ across: index, along }))).toHaveLength(1000);
  expect(
    refusalOf(() => placeInRows(rowsInPlot(1_000_000, 1_000_000, 0.001, 12, unitSystems.us))),
  ).toMatchObject({ code: 'tooManyRowsToPlace', rows: 1e9, most: 1000 });
});
