import type { DeadlineStep, Silence } from "@evenhand/shared/http/cases";

/** An answer somebody owes. Instants in epoch milliseconds. */
export type OwedAnswer = {
  /** Whose answer it is. */
  readonly organization: string;
  /** The released line, the appointment or the decision. */
  readonly subject: string;
  readonly step: DeadlineStep;
  /** What comes of it where nobody answers. */
  readonly silence: Silence;
  /** What the page where it is given is about: of a line its car, else the subject itself. */
  readonly about: string;
  /** When the move came that opened it. */
  readonly begun: number;
  readonly deadline: number;
};

/** Answers that one letter reminds of, the earliest first. */
export type Reminder<Owed extends OwedAnswer = OwedAnswer> = readonly [Owed, ...Owed[]];

const HOUR = 3_600_000;
const DAY = 24 * HOUR;

/**
 * From when on somebody is told that an answer of theirs is due soon: a day before, or when half of the time is over where there are
 * fewer than two days. What is shorter than an hour is not told: a letter would come when it is over. Our own.
 *
 * @returns epoch milliseconds; `null` where nobody is told
 * @example remindedFrom({ begun: 0, deadline: 100 * 3_600_000 }) // 76 * 3_600_000
 * @example remindedFrom({ begun: 0, deadline: 600_000 }) // null
 */
export function remindedFrom({ begun, deadline }: Pick<OwedAnswer, "begun" | "deadline">): number | null {
  const whole = deadline - begun;
  return whole < HOUR ? null : deadline - Math.min(DAY, whole / 2);
}

const isNear = (owed: OwedAnswer, now: number): boolean => {
  const from = remindedFrom(owed);
  return from !== null && from <= now && now < owed.deadline;
};

const together = ({ organization, about, step, silence }: OwedAnswer): string =>
  [organization, about, step, silence].join();

/**
 * Of what is owed, what is to be told now: what is near and not over. One reminder for all that the same people owe in the same step
 * on the same page, where silence comes to the same.
 *
 * @param owed what nobody has been told of yet
 * @param now epoch milliseconds
 * @example remindersOf([owed], owed.deadline - 1).length // 1
 */
export function remindersOf<Owed extends OwedAnswer>(owed: readonly Owed[], now: number): Reminder<Owed>[] {
  const reminders = new Map<string, [Owed, ...Owed[]]>();
  for (const each of owed.toSorted((a, b) => a.deadline - b.deadline)) {
    if (!isNear(each, now)) continue;
    const known = reminders.get(together(each));
    if (known === undefined) reminders.set(together(each), [each]);
    else known.push(each);
  }
  return [...reminders.values()];
}
