/** Reads again after a run of changes, never twice at once. */
export interface Refresher {
  /** After a pause without another call. Waits while `isHeld`. */
  soon(): void;
  /** After the reading that is running, if one is. */
  now(): Promise<void>;
  stop(): void;
}

/** @param read must not reject */
export function createRefresher(
  read: () => Promise<void>,
  pauseMs: number,
  isHeld: () => boolean,
): Refresher {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let running = Promise.resolve();
  let queued: Promise<void> | null = null;

  const now = (): Promise<void> => {
    clearTimeout(timer);
    queued ??= running.then(() => {
      queued = null;
      running = read();
      return running;
    });
    return queued;
  };
  const soon = (): void => {
    clearTimeout(timer);
    timer = setTimeout(() => (isHeld() ? soon() : void now()), pauseMs);
  };
  return { soon, now, stop: () => clearTimeout(timer) };
}
