import type { Terminal } from "./terminal/index.ts";

/** Where a command writes; the same command runs in a test without a process of its own. */
export type Shell = {
  readonly out: (text: string) => void;
  readonly error: (text: string) => void;
  readonly terminal: Terminal;
};

/** Exit codes: 0 done, 2 the input cannot be used. */
export const done = 0;
export const unusable = 2;
