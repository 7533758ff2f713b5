/** `npm run -s plan`: a list of plots in, a workbook out, without a screen. */
import './chooseLanguageOfCommand';
import { readFileSync } from 'node:fs';
import { functions } from '../functions';
import { createFileWorkbook } from '../hosts/file/createFileWorkbook';
import { saveWhole } from '../hosts/file/saveWhole';
import { openXlsx } from '../hosts/file/openXlsx';
import { nearestNames } from '../calc/crops/nearestNames';
import { runPlan } from '../commands/runPlan';
import { calendarTasks } from '../functions/calendarTasks';
import { weatherTools } from './weatherTools';

void runPlan(process.argv.slice(2), {
  readBytes: (file) => readFileSync(file),
  nearestNames,
  ...weatherTools,
  calendarTasks,
  saveText: (path, text, { replace }) => saveWhole(path, Buffer.from(text), replace),
  openXlsx,
  drawForSheet: async (weather) => {
    const [{ drawForSheet }, { pngParts }] = await Promise.all([
      import('./drawnWeather'),
      import('./pngParts'),
    ]);
    return drawForSheet(weather, pngParts());
  },
  makeWorkbook: () => createFileWorkbook({ functions: [...functions.values()] }),
  say: (line) => process.stdout.write(`${line}\n`),
  warn: (line) => process.stderr.write(`${line}\n`),
}).then((code) => (process.exitCode = code));
