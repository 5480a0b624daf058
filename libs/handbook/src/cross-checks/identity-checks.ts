import { chassisPattern } from "../chassis-pattern/index.ts";
import { firstColor } from "../first-color/index.ts";
import { partialVin } from "../partial-vin/index.ts";
import { sameNumber } from "../same-number/index.ts";
import { vinForm } from "../vin-form/index.ts";
import type { Market } from "../vin-form/index.ts";
import { vinReading } from "../vin-reading/index.ts";
import { vinYear } from "../vin-year/index.ts";
import type { Checks, Finder, Prepared } from "./prepared.ts";
import { findClaim, findClaims, findRead, findReads, optionOf, vehicleOf } from "./view.ts";
import type { Found, Read, View } from "./view.ts";

const VIN = "identity.vin";
const TITLE = "identity.title-number";
const FIRST_VIN_YEAR = 1981;

const marketOf = (market: string | undefined): Market => {
  if (market === undefined) return "unknown";
  return /\b(north america|usa?|united states|canada|mexico)\b/i.test(market.replaceAll(".", ""))
    ? "north-america"
    : "other";
};

/** Every place the car's number was read, the title's included. */
const numbersOf = (view: View): Read<"code">[] => [
  ...findReads(view, "code", VIN),
  ...findReads(view, "code", TITLE),
];

/** Numbers from 1981 on by the regulation, older ones and other markets by the maker's form. */
const forms: Finder = (view) => {
  const vehicle = vehicleOf(view);
  if (vehicle === undefined) return [];
  const market = marketOf(vehicle.market);
  const { chassisPattern: pattern } = view.maker;
  return numbersOf(view).flatMap((read): Prepared[] => {
    const vin = read.answer.text;
    const common = { reads: [read], claim: read };
    if (vehicle.modelYear < FIRST_VIN_YEAR || market === "other") {
      return pattern === undefined
        ? []
        : [{ ...common, rule: "chassis-pattern", run: () => chassisPattern({ number: vin, pattern }) }];
    }
    return [
      { ...common, rule: "vin-form", run: () => vinForm({ vin, market, modelYear: vehicle.modelYear }) },
      {
        ...common,
        rule: "vin-year",
        run: () => vinYear({ vin, market, kind: "car", claimedYear: vehicle.modelYear }),
      },
    ];
  });
};

/** Two reports' readings of one plate. */
const readings: Finder = (view) => {
  const vehicle = vehicleOf(view);
  if (vehicle === undefined || vehicle.modelYear < FIRST_VIN_YEAR) return [];
  return findClaims(view, "code", VIN).flatMap((first): Prepared[] => {
    const second = findRead(view, "code", VIN, first.position);
    if (second === undefined || second.side === first.side) return [];
    return [
      {
        rule: "vin-reading",
        reads: [first, second],
        claim: ({ reason }) => ({ "first-misread": first, "second-misread": second })[reason],
        run: () =>
          vinReading({
            first: first.answer.text,
            second: second.answer.text,
            market: marketOf(vehicle.market),
            modelYear: vehicle.modelYear,
          }),
      },
    ];
  });
};

const placeName = ({ item, position }: Found): string =>
  item === TITLE ? "title" : position.replaceAll("-", " ");

/** Every number of every side read: the plate of one report is set against the plate of the other too. */
const sameEverywhere: Finder = (view) => {
  const numbers = view.readings.flatMap((side) => numbersOf({ ...view, readings: [side] }));
  if (numbers.length < 2) return [];
  const claim = findClaim(view, "code", TITLE) ?? findClaim(view, "code", VIN, "main-plate");
  const both = new Set(numbers.map(({ side }) => side)).size > 1;
  const placed = numbers.map((read) => ({
    place: both ? `${placeName(read)} (${view.reports[read.side]?.report.kind})` : placeName(read),
    number: read.answer.text,
  }));
  return [{ rule: "same-number", reads: numbers, claim, run: () => sameNumber(placed) }];
};

const stamps: Finder = (view) =>
  (["engine", "gearbox"] as const).flatMap((unit): Prepared[] => {
    const derivation = view.maker.stampFrom?.[unit];
    const neverStamped = view.maker.neverStamped?.includes(unit) ?? false;
    const stamp = findRead(view, "code", "identity.partial-vin", unit);
    const plate = findRead(view, "code", VIN, "main-plate");
    const chassisNumber = plate?.answer.text ?? vehicleOf(view)?.identification;
    if (chassisNumber === undefined || stamp === undefined || (derivation === undefined && !neverStamped))
      return [];
    const claimed = findClaim(view, "choice", "identity.originality", unit);
    return [
      {
        rule: "partial-vin",
        reads: plate === undefined ? [stamp] : [stamp, plate],
        claim: optionOf(claimed) === "original-to-car" ? claimed : undefined,
        run: () => partialVin({ stamp: stamp.answer.text, neverStamped, chassisNumber, derivation }),
      },
    ];
  });

const colors: Finder = (view) => {
  const tag = findClaim(view, "code", "identity.paint-code");
  const spot = findRead(view, "code", "doors.first-color");
  if (tag === undefined || spot === undefined) return [];
  const spots = [{ place: "unpainted spots", color: spot.answer.text }];
  return [
    {
      rule: "first-color",
      reads: [tag, spot],
      claim: tag,
      run: () => firstColor({ tag: tag.answer.text, spots }),
    },
  ];
};

/** Rules on numbers, plates, stamps and codes. */
export const identityChecks: Checks = {
  oneReport: [forms],
  bothReports: [readings, sameEverywhere, stamps, colors],
};
