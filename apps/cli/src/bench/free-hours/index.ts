import { findOffers } from "@evenhand/booking/free-hours";
import { benchRow } from "../row.ts";
import type { BenchOptions, BenchRow } from "../row.ts";
import { horizon, makeInspectors, makeRequest, now, type StoredCalendar, toCalendar } from "./calendars.ts";
import { type Client, withDatabase } from "../database.ts";

const FEW = 50;
const MANY = 500;
const RUNS = 60;
/** What a first page holds. */
const PAGE = 25;

const readAll = "SELECT document FROM calendar WHERE id < $1 ORDER BY id";

type Read = { rows: { document: StoredCalendar }[] };

async function store(client: Client): Promise<void> {
  await client.query("CREATE TABLE calendar (id int PRIMARY KEY, document json NOT NULL)");
  await client.query(
    "INSERT INTO calendar SELECT place - 1, document FROM json_array_elements($1::json) WITH ORDINALITY AS c (document, place)",
    [JSON.stringify(makeInspectors(MANY))],
  );
}

/** One statement that brings every calendar, and the page worked out from them; recurrences are laid out beforehand. */
async function timesOf(client: Client, count: number): Promise<{ roundTrip: number; whole: number }> {
  const request = makeRequest();
  let [roundTrip, whole] = [Infinity, Infinity];
  for (let run = 0; run < RUNS; run += 1) {
    const start = performance.now();
    const { rows: read }: Read = await client.query({ name: "calendars", text: readAll, values: [count] });
    const there = performance.now();
    const calendars = read.map(({ document }) => toCalendar(document));
    const { offers } = findOffers(request, calendars, { now, horizon, limit: PAGE });
    const done = performance.now();
    if (offers.length !== PAGE) throw new Error(`${offers.length} hours are offered, not ${PAGE}`);
    roundTrip = Math.min(roundTrip, there - start);
    whole = Math.min(whole, done - start);
  }
  return { roundTrip, whole };
}

const ms = (value: number): string => `${value.toFixed(2)} ms`;

/**
 * Free hours of 50 and of 500 inspectors over 30 days, reading included, against the one statement that reads the 50. All
 * inspectors ask the same price, so no calendar can be left unopened; the fastest of many runs each.
 */
export const rows = ({ print }: BenchOptions): Promise<BenchRow[]> =>
  withDatabase(async (client) => {
    await store(client);
    const [few, many] = [await timesOf(client, FEW), await timesOf(client, MANY)];
    print(
      `${FEW}: round trip ${ms(few.roundTrip)}, whole ${ms(few.whole)}; ${MANY}: ${ms(many.roundTrip)}, ${ms(many.whole)}`,
    );
    return [
      benchRow({
        work: `free hours, ${FEW} inspectors × 30 days`,
        against: "one SQL round trip",
        value: few.whole / few.roundTrip,
        goal: 2,
        better: "lower",
      }),
      benchRow({
        work: `free hours, ${MANY} inspectors × 30 days`,
        against: `the same for ${FEW}`,
        value: many.whole / few.whole,
        goal: 8,
        better: "lower",
      }),
    ];
  });
