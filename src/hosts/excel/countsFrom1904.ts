/// <reference types="office-js" />

import { askExcel } from './askExcel';

/** 1904-01-02 where days are counted from 1900; from 1904 it is day 1. */
const dayOfProbe = 1463;

/**
 * Whether the workbook counts days from 1904: its dates are then 1462 less than ours. No property says so yet, so Excel
 * is asked for a date, outside any cell. @throws HostError
 */
export function countsFrom1904(excel: typeof Excel): Promise<boolean> {
  return askExcel(excel, 'read', ({ workbook }) => {
    const probe = workbook.functions.date(1904, 1, 2).load('value');
    return () => probe.value < dayOfProbe;
  });
}
