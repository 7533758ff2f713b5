/** Of all tabs with this page one keeps what is typed, so that no tab writes over what another has kept. */
export interface TabLock {
  /** Whether it is ours now. Then it is ours until the tab goes, in whichever way. */
  claim(): Promise<boolean>;
  /** Resolves when no tab has it. */
  free(): Promise<unknown>;
}

/** The page that was here before a reload lets go a moment after this one starts. */
const patienceMs = 1000;

export function tabLock(locks: LockManager, name: string): TabLock {
  return {
    claim: () =>
      new Promise((resolve) => {
        const held = locks.request(name, { signal: AbortSignal.timeout(patienceMs) }, () => {
          resolve(true);
          return new Promise<never>(() => undefined);
        });
        held.catch(() => resolve(false));
      }),
    free: () => locks.request(name, () => undefined),
  };
}
