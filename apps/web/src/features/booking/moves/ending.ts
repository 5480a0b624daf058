import type { CancellationCause } from "@evenhand/shared/booking";

/** How a visit is ended, as it is entered. */
export interface Ending {
  /** Empty until one is chosen. */
  readonly cause: CancellationCause | "";
  readonly note: string;
  /** Of an inspector: on the way already. */
  readonly setOut: boolean;
  /** Of a visit under way: minutes of work done, as the field holds them. */
  readonly minutes: number | string;
}

export const noEnding: Ending = { cause: "", note: "", setOut: false, minutes: 0 };

const noteOf = ({ note }: Ending): { readonly note?: string } =>
  note.trim() === "" ? {} : { note: note.trim() };

/** As the service takes it from one who declines; no cause need be given. */
export const declineBody = (ending: Ending) => ({
  ...(ending.cause === "" ? {} : { cause: ending.cause }),
  ...noteOf(ending),
});

/** As the service takes it from one who cancels; the work is the inspector's alone to say. */
export const cancelBody = (ending: Ending, cause: CancellationCause, inspects: boolean) => {
  const { setOut, minutes } = ending;
  const work = { setOut, minutesDone: typeof minutes === "number" ? minutes : 0 };
  return { cause, ...noteOf(ending), ...(inspects ? { work } : {}) };
};
