/** What every host of the port must do. One call runs all of it. */
import { afterEach, beforeEach, describe } from 'vitest';
import type { WorkbookPort } from '../../src/workbook/port';
import { changeCases } from './changeCases';
import type { HostUnderTest, MakeHost } from './contractWorkbook';
import { formulaCases } from './formulaCases';
import { readCases } from './readCases';
import { refusalCases } from './refusalCases';

export interface Subject {
  readonly host: HostUnderTest;
  readonly port: WorkbookPort;
}

export function workbookContract(name: string, makeHost: MakeHost): void {
  describe(`contract of the ${name} host`, () => {
    let host: HostUnderTest;
    const subject: Subject = {
      get host() {
        return host;
      },
      get port() {
        return host.port;
      },
    };
    beforeEach(async () => {
      host = await makeHost();
    });
    afterEach(() => host.dispose());

    readCases(subject);
    changeCases(subject, makeHost);
    refusalCases(subject);
    formulaCases(subject);
  });
}
