import { gradeStretch } from "@evenhand/sheet/grade-scale";
import { yearOf } from "../day/index.ts";
import { inUseFreePlay, inUseLining, inUseToe } from "../in-use/index.ts";
import { odometer } from "../odometer/index.ts";
import type { OdometerReading } from "../odometer/index.ts";
import { odometerDisclosure } from "../odometer-disclosure/index.ts";
import { wearMiles } from "../wear-miles/index.ts";
import type { WornPart } from "../wear-miles/index.ts";
import type { Checks, Finder, Prepared } from "./prepared.ts";
import {
  estimateOf,
  lowestOf,
  findClaim,
  findRead,
  findReads,
  noteDay,
  numberNoted,
  optionOf,
  vehicleOf,
  visitDay,
} from "./view.ts";
import type { Found, Read, Side, View } from "./view.ts";

const linings: Finder = (view) =>
  findReads(view, "reading", "brakes.lining-thickness").flatMap((read): Prepared[] => {
    const least = lowestOf(view, read);
    if (least === undefined) return [];
    const kind = findRead(view, "choice", "brakes.lining-kind", read.position);
    const option = optionOf(kind);
    const fixing = option === "riveted" || option === "bonded" ? option : "unknown";
    return [
      {
        rule: "in-use-lining",
        reads: kind === undefined ? [read] : [read, kind],
        run: () => inUseLining(least, fixing),
      },
    ];
  });

const steering: Finder = (view) => {
  const play = findRead(view, "reading", "steering.free-play");
  const measured = play === undefined ? undefined : estimateOf(view, play);
  if (play === undefined || measured === undefined) return [];
  const wheel = findRead(view, "reading", "interior.steering-wheel-diameter");
  const diameter = wheel === undefined ? undefined : estimateOf(view, wheel)?.value;
  return [
    {
      rule: "in-use-free-play",
      reads: wheel === undefined ? [play] : [play, wheel],
      run: () => inUseFreePlay(measured, diameter),
    },
  ];
};

const toes: Finder = (view) =>
  (
    [
      ["front-axle", view.maker.toeFront],
      ["rear-axle", view.maker.toeRear],
    ] as const
  ).flatMap(([axle, makers]): Prepared[] => {
    const read = findRead(view, "reading", "steering.toe", axle);
    const toe = read === undefined ? undefined : estimateOf(view, read);
    return read === undefined || toe === undefined
      ? []
      : [{ rule: "in-use-toe", reads: [read], run: () => inUseToe(toe, makers, "mm") }];
  });

const ODOMETER = "identity.odometer";

type Entry = { readonly read: Read<"reading">; readonly reading: OdometerReading };

/** What the odometer showed on each side's visit. */
const shownOn = (view: View, side: Side): Entry[] => {
  const read = findRead({ ...view, readings: [side] }, "reading", ODOMETER);
  const [miles, day] = [read === undefined ? undefined : estimateOf(view, read), visitDay(view, side)];
  return read === undefined || miles === undefined || day === undefined
    ? []
    : [{ read, reading: { day, miles, place: view.reports[side]?.report.kind ?? side } }];
};

const paperEntries = (view: View): Entry[] =>
  findReads(view, "reading", "identity.odometer-on-papers").flatMap((read) => {
    const [miles, day] = [estimateOf(view, read), noteDay(read.finding.conditions?.["entry-date"])];
    return miles === undefined || day === undefined
      ? []
      : [{ read, reading: { day, miles, place: "papers" } }];
  });

const miles: Finder = (view) => {
  const entries = [
    ...paperEntries(view),
    ...view.readings.toReversed().flatMap((side) => shownOn(view, side)),
  ];
  if (entries.length < 2) return [];
  const shown = entries.filter(({ read }) => read.item === ODOMETER);
  const five = shown.some(({ read }) => numberNoted(read, "odometer-digits") === 5);
  const claim = findClaim(view, "reading", ODOMETER);
  const readings = entries.map(({ reading }) => reading);
  return [
    {
      rule: "odometer",
      reads: entries.map(({ read }) => read),
      claim,
      run: () => odometer({ readings, digits: five ? 5 : 6 }),
    },
  ];
};

const disclosure: Finder = (view) => {
  const claim = findClaim(view, "choice", "identity.odometer-disclosure");
  const [modelYear, day] = [vehicleOf(view)?.modelYear, visitDay(view, view.claims)];
  if (claim === undefined || modelYear === undefined || day === undefined) return [];
  const input = { modelYear, transferYear: yearOf(day), claimedExempt: optionOf(claim) === "exempt" };
  return [{ rule: "odometer-disclosure", reads: [claim], claim, run: () => odometerDisclosure(input) }];
};

/** Parts whose wear is set against the miles, as a sentence names them. */
const WORN = [
  ["interior.pedals", "pedal"],
  ["interior.steering-wheel", "steering wheel"],
  ["interior.belt-webbing", "belt"],
] as const;

type Worn = { readonly part: WornPart; readonly read: Found };

const wornParts = (view: View, retrimmed: boolean): Worn[] =>
  WORN.flatMap(([item, name]) =>
    findReads(view, "grade", item).flatMap((read): Worn[] => {
      const stretch = gradeStretch(read.answer, view.reports[read.side]?.report.scales ?? []);
      if (stretch === undefined) return [];
      const part = `${read.position.replaceAll("-", " ")} ${name}`.trim();
      return [{ read, part: { part, condition: { low: stretch[0], high: stretch[1] }, retrimmed } }];
    }),
  );

const wear: Finder = (view) => {
  const shown = findClaim(view, "reading", ODOMETER) ?? findRead(view, "reading", ODOMETER);
  const driven = shown === undefined ? undefined : estimateOf(view, shown);
  if (shown === undefined || driven === undefined) return [];
  const trim = findRead(view, "choice", "interior.trim-history");
  const history = optionOf(trim);
  const worn = wornParts(view, history !== undefined && history !== "original");
  if (worn.length === 0) return [];
  return [
    {
      rule: "wear-miles",
      reads: [...worn.map(({ read }) => read), shown, ...(trim === undefined ? [] : [trim])],
      claim: shown,
      run: () => wearMiles({ parts: worn.map(({ part }) => part), miles: driven }, view.firm),
    },
  ];
};

/** Rules on limits in use, the odometer and wear. */
export const useChecks: Checks = {
  oneReport: [linings, steering, toes],
  bothReports: [miles, disclosure, wear],
};
