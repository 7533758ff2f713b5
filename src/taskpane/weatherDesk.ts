/** What the parts of the weather section share. */
import type { LiveWorkbook } from '../workbook/port';

export interface WeatherDesk {
  readonly workbook: LiveWorkbook;
  readonly addButton: (button: HTMLButtonElement) => void;
  /** An action whose failure is said. */
  readonly run: (action: () => Promise<void>) => void;
  readonly say: (text: string) => void;
  readonly warn: (text: string) => void;
  /** Reads everything anew, after a sheet was written. */
  readonly refresh: () => Promise<void>;
}
