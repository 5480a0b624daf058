import { useSyncExternalStore } from "react";

/**
 * How many files of an account stand on this device and have not gone. Kept beside the store, so that a page that needs no store
 * need not load and open it to know that nothing waits.
 */
const nameFor = (account: string): string => `evenhand-uploads-${account}`;

const listeners = new Set<() => void>();

const read = (account: string): number => {
  try {
    return Number(localStorage.getItem(nameFor(account)) ?? 0);
  } catch {
    // Without room for notes nothing is kept on this device either.
    return 0;
  }
};

/** @param count as the store has it */
export const noteWaiting = (account: string, count: number): void => {
  if (count === read(account)) return;
  try {
    if (count === 0) localStorage.removeItem(nameFor(account));
    else localStorage.setItem(nameFor(account), String(count));
  } catch {
    return;
  }
  for (const listener of listeners) listener();
};

const subscribe = (listener: () => void): (() => void) => {
  listeners.add(listener);
  globalThis.addEventListener("storage", listener);
  return () => {
    listeners.delete(listener);
    globalThis.removeEventListener("storage", listener);
  };
};

/** Does anything wait on this device for this account? */
export const useAreUploadsWaiting = (account: string | undefined): boolean =>
  useSyncExternalStore(subscribe, () => account !== undefined && read(account) > 0);
