import type { Finding } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";
import type { Sheet } from "@evenhand/shared/sheet";
import { BETWEEN } from "./assumptions.ts";
import { conditionsAt } from "./conditions.ts";
import type { Draws } from "./draws.ts";
import { gaugeFor, lookAt, looking } from "./look.ts";
import type { Looking } from "./look.ts";
import type { Pair } from "./people.ts";
import { withTruths } from "./truth.ts";
import type { Known, TrueCar, Truth } from "./truth.ts";

/** What is claimed of a place instead of what is so. */
export type Claims = ReadonlyMap<string, Truth>;

/** Two reports on one car, and what is so of it on each day. */
export type Visit = {
  readonly a: Report;
  readonly b: Report;
  readonly stated: TrueCar;
  readonly found: TrueCar;
};

export const ODOMETER = "identity.odometer";

/** Wear by the miles driven and by handling; what drifts moved by itself; the rest is as it was. */
const movedReading = ({ item, truth }: Known, miles: number, draws: Draws): Truth | undefined => {
  const { reading, time } = item;
  if (truth.kind !== "reading" || reading === undefined) return undefined;
  if (item.id === ODOMETER) return { ...truth, value: truth.value + miles };
  const { dayToDay = 0, dayToDayShare = 0, riseAllowed = 0, risePerThousandMiles = 0 } = reading;
  const toward = reading.betterIs === "higher" ? -1 : 1;
  const [low, high] = reading.plausible;
  const moved = (value: number): Truth => ({ kind: "reading", value: Math.min(high, Math.max(low, value)) });
  if (time === "drifts") {
    const most = dayToDay + dayToDayShare * Math.abs(truth.value);
    return moved(truth.value + BETWEEN.drift * most * draws.normal());
  }
  const worn = BETWEEN.handling * riseAllowed * draws.uniform() + (risePerThousandMiles * miles) / 1000;
  return time === "only-rises" ? moved(truth.value + toward * worn) : undefined;
};

/** The car as it is at the second look; what the study plants stays as far off as it was planted. */
const laterCar = (car: TrueCar, planted: ReadonlySet<string>, miles: number, draws: Draws): TrueCar =>
  withTruths(
    car,
    new Map(
      car.known.flatMap((known): [string, Truth][] => {
        const moved = planted.has(known.key) ? undefined : movedReading(known, miles, draws);
        return moved === undefined ? [] : [[known.key, moved]];
      }),
    ),
  );

const DAY = 86_400_000;
const FIRST_LOOK = Date.parse("2026-05-04T15:00:00Z");

const instant = (time: number): string => new Date(time).toISOString().replace(".000Z", "Z");

type Written = {
  readonly car: TrueCar;
  readonly at: Looking;
  readonly kind: "statement" | "inspection";
  readonly started: number;
};

/** One instrument for each item; both sides have their own. */
const instrumentOf = (known: Known, at: Looking): string | undefined =>
  gaugeFor(known.item, at)?.byEye === false ? `${known.item.section}-gauge` : undefined;

const findingOf = (known: Known, { at, kind }: Written): Finding => {
  const answer = lookAt(known, at);
  const instrument = answer.kind === "reading" ? instrumentOf(known, at) : undefined;
  const conditions = conditionsAt(known);
  return {
    item: known.item.id,
    position: known.position,
    answer,
    firmness: "asserted",
    basis: instrument === undefined ? "seen" : "measured",
    ...(instrument === undefined ? {} : { instrument }),
    ...(conditions === undefined || answer.kind === "not-seen" ? {} : { conditions }),
    ...(kind === "inspection" ? { blind: true } : {}),
  };
};

const isAsked = ({ item }: Known, kind: Written["kind"]): boolean =>
  item.asked !== "statement" || kind === "statement";

const reportOf = (written: Written, sheet: Sheet): Report => {
  const { car, kind, started } = written;
  const findings = car.known
    .filter((known) => isAsked(known, kind))
    .map((known) => findingOf(known, written));
  const tools = new Set(findings.flatMap(({ instrument }) => instrument ?? []));
  const dealer = kind === "statement";
  return {
    format: "evenhand-report",
    version: 1,
    kind,
    sheet: { id: sheet.id, version: sheet.version },
    vehicle: car.vehicle,
    author: dealer
      ? { organization: "Larkspur Motor House", role: "dealer" }
      : { organization: "Quiet Hill Inspection", role: "inspector" },
    visit: { started: instant(started), zone: "America/Chicago" },
    instruments: Array.from(tools, (id) => ({ id, name: "the item's ordinary instrument" })),
    persons: [],
    scales: [],
    findings,
  };
};

/** Some places of the second report hold what the first says, word for word. */
const copied = (b: Report, a: Report, share: number, draws: Draws): Report => {
  if (share === 0) return b;
  const stated = new Map(
    a.findings.map((finding) => [`${finding.item} ${finding.position}`, finding.answer]),
  );
  const findings = b.findings.map((finding) => {
    const answer = stated.get(`${finding.item} ${finding.position}`);
    return answer === undefined || !draws.chance(share) ? finding : { ...finding, answer };
  });
  return { ...b, findings };
};

/**
 * A statement and, days and miles later, an inspection of one car by two people.
 *
 * @param claims what the dealer states instead of what is so; what is not named is as the dealer sees it
 */
export const visitOf = (
  car: TrueCar,
  { dealer, inspector }: Pair,
  claims: Claims,
  sheet: Sheet,
  draws: { readonly dealer: Draws; readonly inspector: Draws },
): Visit => {
  const stated = withTruths(car, claims);
  const days = Math.round(draws.inspector.between(BETWEEN.days));
  const miles = Math.round(draws.inspector.between(BETWEEN.miles));
  const found = laterCar(car, new Set(claims.keys()), miles, draws.inspector);
  const write = (written: Omit<Written, "started">, started: number): Report =>
    reportOf({ ...written, started }, sheet);
  const a = write(
    { car: stated, at: looking(dealer, sheet, draws.dealer, new Set(claims.keys())), kind: "statement" },
    FIRST_LOOK,
  );
  const seen = write(
    { car: found, at: looking(inspector, sheet, draws.inspector), kind: "inspection" },
    FIRST_LOOK + days * DAY,
  );
  return { a, b: copied(seen, a, inspector.copies, draws.inspector), stated, found };
};
