/**
 * The buttons that write. One action runs at a time; meanwhile all of them refuse, also a second click of the same.
 * They are not disabled in the strict sense, because a disabled button loses the focus of the person who pressed it.
 */
export interface Actions {
  readonly isBusy: () => boolean;
  add(button: HTMLButtonElement): void;
  /** Does nothing while another action runs. `action` must not reject. */
  run(action: () => Promise<void>): Promise<void>;
}

export function createActions(pane: HTMLElement): Actions {
  const buttons: HTMLButtonElement[] = [];
  let busy = false;
  const setBusy = (now: boolean): void => {
    busy = now;
    pane.setAttribute('aria-busy', String(now));
    for (const button of buttons) button.setAttribute('aria-disabled', String(now));
  };
  return {
    isBusy: () => busy,
    add: (button) => buttons.push(button),
    async run(action) {
      if (busy) return;
      setBusy(true);
      try {
        await action();
      } finally {
        setBusy(false);
      }
    },
  };
}
