/// <reference types="office-js" />

/** Listening to events of the workbook. */
import type { Clock } from './settleResults';

const retryMs = 1000;

type Handler = OfficeExtension.EventHandlerResult<unknown>;

/**
 * Excel may refuse to listen while a cell is being edited, so it is asked again until it does or nobody wants it.
 * @param hear told of each event; what it does later it does only while `isWanted`
 * @param add puts the handler on events and gives back what takes it off
 * @returns what ends the listening
 */
export function listenToExcel(
  excel: typeof Excel,
  clock: Clock,
  hear: (isWanted: () => boolean) => Promise<void> | void,
  add: (workbook: Excel.Workbook, handler: () => Promise<void>) => readonly Handler[],
): () => void {
  let isWanted = true;
  const handler = async (): Promise<void> => {
    if (isWanted) await hear(() => isWanted);
  };
  const listening = listen();

  async function listen(): Promise<readonly Handler[]> {
    while (isWanted) {
      try {
        const context = new excel.RequestContext();
        const handlers = add(context.workbook, handler);
        await context.sync();
        return handlers;
      } catch {
        await clock.sleep(retryMs);
      }
    }
    return [];
  }

  return () => {
    isWanted = false;
    void listening.then(async (handlers) => {
      const context = handlers[0]?.context;
      if (context === undefined) return;
      for (const each of handlers) each.remove();
      // Handlers of a workbook that is gone are gone too.
      await context.sync().catch(() => undefined);
    });
  };
}
