import type { Draws } from "./draws.ts";
import type { Pair } from "./people.ts";
import { eachCar, entryKey, sheet, studied } from "./study.ts";
import type { Story, Studied } from "./study.ts";
import { faultOf } from "./true-car.ts";
import { withTruths, word } from "./truth.ts";
import type { TrueCar, Truth } from "./truth.ts";

/** A way to deceive: what is so, what is stated, and the lines on which it has to come out as differing. */
export type Lie = {
  readonly name: string;
  readonly tell: (car: TrueCar, draws: Draws) => { readonly so: Truths; readonly said: Truths };
  readonly shownAt: readonly string[];
};
type Truths = readonly (readonly [key: string, truth: Truth])[];

const reading = (value: number): Truth => ({ kind: "reading", value });
const code = (text: string): Truth => ({ kind: "code", text });

const textAt = ({ known }: TrueCar, key: string): string => {
  const truth = known.find((one) => one.key === key)?.truth;
  return truth?.kind === "code" ? truth.text : "";
};

const valueAt = ({ known }: TrueCar, key: string): number => {
  const truth = known.find((one) => one.key === key)?.truth;
  return truth?.kind === "reading" ? truth.value : 0;
};

const yearsLater = (date: string, years: number): string =>
  `${Number(date.slice(0, 4)) + years}${date.slice(4)}`;

const keysOf = ({ known }: TrueCar, item: string): string[] =>
  known.filter((one) => one.item.id === item).map(({ key }) => key);

/** Five digits, an older and higher entry on the papers, and "actual" on the disclosure. */
const rolled: Lie = {
  name: "rolled odometer, five digits and papers",
  tell: (car, draws) => {
    const shown = valueAt(car, "identity.odometer");
    const lastEntry = "identity.odometer-on-papers@entry-3";
    return {
      so: [
        ["identity.odometer-disclosure", word("actual")],
        [lastEntry, reading(Math.min(99_900, Math.round(shown * draws.between([1.2, 1.9]))))],
      ],
      said: [
        ["identity.odometer-disclosure", word("actual")],
        [lastEntry, reading(Math.round(shown * 0.9))],
      ],
    };
  },
  shownAt: ["identity.odometer", "identity.odometer-disclosure"],
};

const tired: Lie = {
  name: "“rebuilt” that is tired",
  tell: (car, draws) => {
    const level = draws.between([84, 97]);
    const cylinders = keysOf(car, "engine.compression");
    return {
      so: cylinders.map((key) => [key, reading(level + 3 * draws.normal())]),
      said: [
        ...cylinders.map((key): [string, Truth] => [key, reading(148)]),
        ["engine.rebuild-claim", word("rebuilt")],
      ],
    };
  },
  shownAt: ["engine.rebuild-claim"],
};

/** The eye is deceived as well: only the gauge tells. */
const resprayed: Lie = {
  name: "respray to 180 µm called original",
  tell: (car, draws) => {
    const panels = keysOf(car, "body.paint-thickness");
    const factory = draws.between([95, 125]);
    const thickness = panels.map((key): [string, Truth] => [key, reading(factory + 5 * draws.normal())]);
    const [panel] = keysOf(car, "body.paint-thickness").filter((key) => key.endsWith("left-front-door"));
    const so = thickness.map(([key, truth]): [string, Truth] => [key, key === panel ? reading(180) : truth]);
    const called: [string, Truth] = ["body.paint-history@left-front-door", word("original")];
    return { so, said: [...thickness, called] };
  },
  shownAt: ["body.paint-history@left-front-door", "body.paint-thickness@left-front-door"],
};

const otherEngine: Lie = {
  name: "other engine called the car's own",
  tell: (car, draws) => {
    const date = textAt(car, "identity.date-code@block");
    const stamp = textAt(car, "identity.partial-vin@engine");
    return {
      so: [
        ["identity.originality@engine", word("right-type")],
        ["identity.date-code@block", code(yearsLater(date, 2))],
        ["identity.partial-vin@engine", code(String(100_000 + Math.floor(draws.between([0, 899_999]))))],
      ],
      said: [
        ["identity.originality@engine", word("original-to-car")],
        ["identity.date-code@block", code(date)],
        ["identity.partial-vin@engine", code(stamp)],
      ],
    };
  },
  shownAt: ["identity.originality@engine", "identity.partial-vin@engine"],
};

const swapped: Lie = {
  name: "swapped parts called as built",
  tell: (car) => {
    const parts = ["identity.date-code@carburetor", "identity.date-code@distributor"];
    return {
      so: parts.map((key) => [key, code(yearsLater(textAt(car, key), 6))]),
      said: parts.map((key) => [key, code(textAt(car, key))]),
    };
  },
  shownAt: ["identity.date-code@carburetor", "identity.date-code@distributor"],
};

/** A fault of so many times what matters where the statement says there is none. */
const denied = (name: string, key: string, kind: string, times: number): Lie => ({
  name,
  tell: (_, draws) => {
    const item = sheet.items.get(key.split("@")[0] ?? "")?.item;
    if (item === undefined) throw new Error(`no ${key}`);
    const found = [faultOf(item, kind, times, sheet.sheet, draws)];
    return { so: [[key, { kind: "faults", found }]], said: [[key, { kind: "faults", found: [] }]] };
  },
  shownAt: [key],
});

const dead: Lie = {
  name: "dead clock said to work",
  tell: () => ({ so: [["electrics.clock", word("no")]], said: [["electrics.clock", word("yes")]] }),
  shownAt: ["electrics.clock"],
};

export const lies: readonly Lie[] = [
  rolled,
  tired,
  resprayed,
  otherEngine,
  swapped,
  denied("concealed dent of three times what matters", "body.faults@left-quarter", "dent", 3),
  denied("denied corrosion of a floor", "underbody.floor-pans@left-front", "corrosion", 3),
  denied("denied perforation of a rail", "underbody.rails@left-rear", "perforation", 2),
  dead,
];

const story = (lie: Lie, car: TrueCar, draws: Draws): Story => {
  const { so, said } = lie.tell(car, draws);
  return { car: withTruths(car, new Map(so)), claims: new Map(said) };
};

const isShown = ({ comparison }: Studied, { shownAt }: Lie): boolean =>
  comparison.entries.some((entry) => entry.outcome === "differ" && shownAt.includes(entryKey(entry)));

/** In how many of so many cars a lie comes out: a line of it differs. */
export const liesFound = (lie: Lie, pair: Pair, cars: number): number => {
  let found = 0;
  eachCar(
    cars,
    (number) => studied(pair, number, (car, draws) => story(lie, car, draws)),
    (one) => {
      if (isShown(one, lie)) found += 1;
    },
  );
  return found / cars;
};
