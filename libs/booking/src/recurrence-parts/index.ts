/** What is wrong with one part of a recurrence: the part as written, why, and what would do. */
export type PartProblem = { readonly part: string; readonly reason: string };

type Parts = ReadonlyMap<string, string>;

const FREQUENCIES = ["YEARLY", "MONTHLY", "WEEKLY", "DAILY"];
const DAYS = "SU|MO|TU|WE|TH|FR|SA";
/** Most days that one turn of a rule can have to choose from. */
const DAYS_IN_TURN: Readonly<Record<string, number>> = { DAILY: 1, WEEKLY: 7, MONTHLY: 31, YEARLY: 366 };
const LONGEST = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** Each number, and whether it may count from the end. */
const NUMBERS: Readonly<
  Record<string, { readonly most: number; readonly fromEnd: boolean; readonly list: boolean }>
> = {
  INTERVAL: { most: 1000, fromEnd: false, list: false },
  // Counted from the first day on every time hours are laid out, so a count is short; UNTIL says the same with no counting.
  COUNT: { most: 100, fromEnd: false, list: false },
  BYMONTH: { most: 12, fromEnd: false, list: true },
  BYMONTHDAY: { most: 31, fromEnd: true, list: true },
  BYYEARDAY: { most: 366, fromEnd: true, list: true },
  BYSETPOS: { most: 366, fromEnd: true, list: true },
};

const numbersOf = (value: string | undefined): number[] => value?.split(",").map(Number) ?? [];

const numberProblem = (name: string, value: string): string | undefined => {
  const range = NUMBERS[name];
  if (range === undefined) return undefined;
  const form = range.fromEnd ? /^[+-]?\d{1,5}$/ : /^\d{1,5}$/;
  const one = (text: string): boolean =>
    form.test(text) && Math.abs(Number(text)) >= 1 && Math.abs(Number(text)) <= range.most;
  const texts = range.list ? value.split(",") : [value];
  if (texts.every(one)) return undefined;
  return `${range.list ? "numbers" : "a number"} from 1 to ${range.most}${range.fromEnd ? ", or from -1 to count from the end" : ""}`;
};

/** A UTC time whose digits are a date and a time that exist. */
const isUtcTime = (value: string): boolean => {
  const digits = /^(\d{4})(\d\d)(\d\d)T(\d\d)(\d\d)(\d\d)Z$/.exec(value)?.slice(1) ?? [];
  const [year = 0, month = 0, ...rest] = digits.map(Number);
  const [day = 0, hour = 0, minute = 0, second = 0] = rest;
  if (digits.length === 0) return false;
  const at = new Date(Date.UTC(year, month - 1, day, hour, minute, second));
  return at.toISOString().replaceAll(/[-:]|\.000/g, "") === value;
};

const dayProblem = (value: string, parts: Parts): string | undefined => {
  const days = value.split(",").map((text) => new RegExp(`^([+-]?\\d{1,2})?(?:${DAYS})$`).exec(text));
  if (days.some((day) => day === null)) return "days such as MO,TU, or 1MO for the first Monday";
  const numbers = days.flatMap((day) => (day?.[1] === undefined ? [] : [Math.abs(Number(day[1]))]));
  if (numbers.length === 0) return undefined;
  const frequency = parts.get("FREQ");
  if (frequency !== "MONTHLY" && frequency !== "YEARLY")
    return `a numbered day needs FREQ=MONTHLY or YEARLY, a rule of FREQ=${frequency} takes days such as MO,TU`;
  if (numbers.length < days.length)
    return "numbered and plain days together are read differently by different programs: enter them as two rules";
  const most = frequency === "MONTHLY" || parts.has("BYMONTH") ? 5 : 52;
  if (numbers.every((number) => number >= 1 && number <= most)) return undefined;
  return `numbered days from 1 to ${most}, or from -1 to count from the end`;
};

const formProblem = (name: string, value: string, parts: Parts): string | undefined => {
  if (name === "FREQ") return FREQUENCIES.includes(value) ? undefined : `one of ${FREQUENCIES.join(", ")}`;
  if (name === "UNTIL") return isUtcTime(value) ? undefined : "a time in UTC such as 20261231T235959Z";
  if (name === "WKST") return new RegExp(`^(?:${DAYS})$`).test(value) ? undefined : "a day such as MO";
  if (name === "BYDAY") return dayProblem(value, parts);
  if (name in NUMBERS) return numberProblem(name, value);
  return "not a part that hours can have: FREQ, INTERVAL, COUNT, UNTIL, BYMONTH, BYMONTHDAY, BYYEARDAY, BYDAY, BYSETPOS and WKST are";
};

/** Parts that may not stand together: RFC 5545 §3.3.10, and what programs are seen to read differently. */
const togetherProblem = (name: string, parts: Parts): string | undefined => {
  const frequency = parts.get("FREQ");
  if (name === "BYMONTHDAY" && frequency === "WEEKLY")
    return "a day of the month needs FREQ=MONTHLY, YEARLY or DAILY";
  if (name === "BYYEARDAY" && frequency !== "YEARLY") return "a day of the year needs FREQ=YEARLY";
  if (name === "BYYEARDAY" && parts.has("BYDAY"))
    return "together with BYDAY it is read differently by different programs: use one of them";
  const mostDays = DAYS_IN_TURN[frequency ?? ""] ?? 366;
  if (name === "BYSETPOS" && numbersOf(parts.get(name)).some((place) => Math.abs(place) > mostDays))
    return `a rule of FREQ=${frequency} has at most ${mostDays} ${mostDays === 1 ? "day" : "days"} to choose from`;
  if (name === "BYSETPOS" && ![...parts.keys()].some((other) => /^BY(?!SETPOS)/.test(other)))
    return "needs another BY part to choose from";
  const months = numbersOf(parts.get("BYMONTH"));
  const fits = numbersOf(parts.get("BYMONTHDAY")).some((day) =>
    months.some((month) => Math.abs(day) <= (LONGEST[month - 1] ?? 0)),
  );
  return name === "BYMONTHDAY" && months.length > 0 && !fits
    ? "none of the months named has such a day"
    : undefined;
};

/**
 * The first part of a recurrence that hours cannot have: unknown, written twice, out of its range, or beside a part it may
 * not stand with. A part that nobody understands is refused by name and never left out of account, for the days that came
 * of it would be days nobody entered.
 *
 * @param rrule the value of an RRULE of RFC 5545 without its name
 * @example findPartProblem("FREQ=WEEKLY;BYDAY=1MO")?.part // "BYDAY=1MO"
 * @example findPartProblem("FREQ=WEEKLY;BYDAY=MO,TU") // null
 */
export function findPartProblem(rrule: string): PartProblem | null {
  const parts = new Map<string, string>();
  for (const part of rrule.split(";")) {
    const [name = "", value = ""] = part.split(/=(.*)/s);
    if (parts.has(name)) return { part, reason: `${name} stands twice: write it once` };
    parts.set(name, value);
  }
  for (const [name, value] of parts) {
    const reason = formProblem(name, value, parts);
    if (reason !== undefined) return { part: `${name}=${value}`, reason };
  }
  if (!parts.has("FREQ")) return { part: "FREQ", reason: `is missing: one of ${FREQUENCIES.join(", ")}` };
  for (const [name, value] of parts) {
    const reason = togetherProblem(name, parts);
    if (reason !== undefined) return { part: `${name}=${value}`, reason };
  }
  return null;
}
