import * as fc from "fast-check";

/** A value no form of ours sends. */
const strings = [
  "",
  " ",
  "\0",
  "a\0b",
  "\ud800",
  "half \udfff",
  "\u202Egnp.exe",
  "\u2028",
  "💥",
  "0000-01-01",
  "0000-01-01T00:00:00Z",
  "0000-01-01T00:00:00",
  "9999-12-31T23:59:59Z",
  "2011-12-30",
  "2026-02-30",
  "2026-06-31T00:00:00",
  "Pacific/Apia",
  "Mars/Olympus",
  "__proto__",
  "constructor",
  "x".repeat(5_000),
  "' OR 1=1 --",
  "../../etc/passwd",
  "%",
  "%00",
  "FREQ=SECONDLY",
  "FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=31",
  "FREQ=DAILY;INTERVAL=0",
  "FREQ=DAILY;COUNT=999999999999",
  "FREQ=DAILY;UNTIL=00000101T000000Z",
  "XXX",
  "usd",
  "00000000-0000-0000-0000-000000000000",
];
const numbers = [-1, -0, 0, 1, 1.5, 2 ** 31, 2 ** 53, 2 ** 63, 1e308, 5e-324];
const nested = (depth: number): unknown => (depth === 0 ? {} : { a: [nested(depth - 1)] });
const others: unknown[] = [null, true, [], {}, [[[]]], nested(40), Array.from({ length: 1_000 }, () => 1)];

export const badValue: fc.Arbitrary<unknown> = fc.oneof(
  { weight: 4, arbitrary: fc.constantFrom<unknown>(...strings) },
  { weight: 2, arbitrary: fc.constantFrom<unknown>(...numbers) },
  { weight: 1, arbitrary: fc.constantFrom<unknown>(...others) },
  { weight: 1, arbitrary: fc.jsonValue() },
);
export const badText: fc.Arbitrary<string> = fc.oneof(
  fc.constantFrom(...strings),
  fc.string({ unit: "binary", maxLength: 40 }),
);

/** One change of a body: at which of its places, and what is put there; `undefined` takes the place away. */
export type Spoiling = {
  readonly place: number;
  readonly value: unknown;
  readonly how: "put" | "drop" | "add";
};
export const spoiling: fc.Arbitrary<Spoiling> = fc.record({
  place: fc.nat({ max: 10_000 }),
  value: badValue,
  how: fc.constantFrom("put", "put", "put", "drop", "add"),
});

type Place = { holder: object; key: string };

/** Every place in a value, the deepest included. */
function placesIn(value: unknown): Place[] {
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, part]: [string, unknown]) => [
    { holder: value, key },
    ...placesIn(part),
  ]);
}

/** The body with these changes made. What held before holds but for them, so that they reach as far in as they can. */
export function spoil(body: unknown, spoilings: readonly Spoiling[]): unknown {
  const copy: { body: unknown } = { body: structuredClone(body) };
  for (const { place, value, how } of spoilings) {
    const places = placesIn(copy);
    const { holder, key } = places[place % places.length] ?? { holder: copy, key: "body" };
    if (how === "put") Reflect.set(holder, key, structuredClone(value));
    if (how === "drop") Reflect.deleteProperty(holder, key);
    if (how === "add") Reflect.set(holder, `${key}more`, structuredClone(value));
  }
  return copy.body;
}
