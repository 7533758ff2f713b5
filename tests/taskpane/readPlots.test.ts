import { describe, expect, it } from 'vitest';
import { takeNextName } from '../../src/taskpane/readPlots';

describe('the name of a copy', () => {
  it.each([
    ['Creek', ['creek'], 'Creek 2'],
    ['Creek 2', ['creek', 'creek 2'], 'Creek 3'],
    ['Creek 2', ['creek 2', 'creek 3', 'creek 4'], 'Creek 5'],
    ['007', ['007'], '007 2'],
    ['Row 007', ['row 007'], 'Row 007 2'],
    ['East 2027', ['east 2027'], 'East 2027 2'],
  ])('of %s beside %j is the next free number', (name, taken, next) => {
    expect(takeNextName(name, new Set(taken))).toBe(next);
  });
});
