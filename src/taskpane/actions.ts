/**
 * The buttons that write. One action runs at a time; meanwhile all of them refuse, also a second click of the same.
 * They are not disabled in the strict sense, because a disabled button loses the focus of the person who pressed it.
 */
export interface Actions {
  readonly isBusy: () => boolean;
  add(button: HTMLButtonElement): void;
  /** It would do nothing as things stand, and shows that; pressed all the same it says why. */
  bar(button: HTMLButtonElement, isBarred: boolean): void;
  /** Told before each action: what was said of the one before is no longer of today. */
  onRun(listener: () => void): void;
  /** Does nothing while another action runs. `action` must not reject. */
  run(action: () => Promise<void>): Promise<void>;
}

export function createActions(pane: HTMLElement): Actions {
  const buttons: HTMLButtonElement[] = [];
  const barred = new Set<HTMLButtonElement>();
  const listeners: (() => void)[] = [];
  let busy = false;
  const show = (button: HTMLButtonElement): void =>
    button.setAttribute('aria-disabled', String(busy || barred.has(button)));
  const setBusy = (now: boolean): void => {
    busy = now;
    pane.setAttribute('aria-busy', String(now));
    buttons.forEach(show);
  };
  return {
    isBusy: () => busy,
    add: (button) => buttons.push(button),
    bar(button, isBarred) {
      if (isBarred) barred.add(button);
      else barred.delete(button);
      show(button);
    },
    onRun: (listener) => listeners.push(listener),
    async run(action) {
      if (busy) return;
      setBusy(true);
      for (const listener of listeners) listener();
      try {
        await action();
      } finally {
        setBusy(false);
      }
    },
  };
}
