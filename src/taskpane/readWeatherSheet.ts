/** What the pane knows of the Weather sheet. */
import type { ReadValue, TableRead, WorkbookPort } from '../workbook/port';
import { readForm, type FormRead } from '../workbook/readForm';
import { weatherTemplate } from '../templates/weather';
import { stateName } from '../templates/weatherPictures';
import { catalogue } from '../texts/catalogue';

const { heatByCrop, sowings } = catalogue.weather;
const heatsTable = weatherTemplate.tables.find(({ heading }) => heading === heatByCrop.heading)?.name ?? '';
const sowingsCells =
  weatherTemplate.lists?.find(({ heading }) => heading === sowings.heading)?.columns[0]?.name ?? '';

export interface WeatherSheetRead {
  readonly form: FormRead;
  readonly heats: TableRead | null;
  /** What the list of sowings holds, its unused cells too. */
  readonly sowings: readonly ReadValue[];
  /** Whether the pictures in their sheet are of all this; null where there are none. */
  readonly pictures: ReadValue;
}

export type WeatherState = WeatherSheetRead | 'absent' | 'unreadable';

/** @throws HostError when a part of the sheet is gone */
export async function readWeatherSheet(port: WorkbookPort): Promise<WeatherState> {
  const form = await readForm(port, weatherTemplate);
  if (form === null) return 'absent';
  const readColumn = async (name: string): Promise<readonly ReadValue[]> => {
    const area = await port.locate(name);
    return area === null ? [] : (await port.read(area)).values.map(([value]) => value ?? null);
  };
  return {
    form,
    heats: await port.readTable(heatsTable),
    sowings: await readColumn(sowingsCells),
    pictures: (await readColumn(stateName))[0] ?? null,
  };
}
