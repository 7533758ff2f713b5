/// <reference types="office-js" />

/** Listening to events of the workbook. */
import type { Clock } from './settleResults';

const retryMs = 1000;

type Handler = OfficeExtension.EventHandlerResult<unknown>;

/**
 * Excel may refuse to listen while a cell is being edited, so it is asked again until it does or nobody wants it.
 * @param add puts handlers on and gives them back
 * @returns what ends the listening
 */
export function listenToExcel(
  excel: typeof Excel,
  clock: Clock,
  add: (context: Excel.RequestContext) => readonly Handler[],
): () => void {
  let isWanted = true;
  const listening = listen();

  async function listen(): Promise<readonly Handler[]> {
    while (isWanted) {
      try {
        const context = new excel.RequestContext();
        const handlers = add(context);
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
      for (const handler of handlers) handler.remove();
      // Handlers of a workbook that is gone are gone too.
      await context.sync().catch(() => undefined);
    });
  };
}
