import { isLimitId, limits as handbookLimits } from "@evenhand/handbook/limits";
import type { FirmHandbook } from "@evenhand/shared/cross-check";
import type { FirmHandbookSeen } from "@evenhand/shared/http/handbook";
import { hashKey } from "@tanstack/react-query";
import { makerOf, typedMaker, type MakerTyped } from "./maker-form";
import { problemsOfMakers } from "./maker-problems";
import { limitsOf, typedLimits, wrongLimits, type LimitsTyped } from "./own-limits";

/** A firm's handbook as it is typed. */
export interface HandbookTyped {
  readonly limits: LimitsTyped;
  readonly makers: readonly MakerTyped[];
}

export const typedHandbook = ({ handbook }: FirmHandbookSeen): HandbookTyped => ({
  limits: typedLimits(handbook.limits),
  makers: handbook.makers.map(typedMaker),
});

/** As the service takes it; only where nothing is wrong. */
export const handbookOf = ({ limits, makers }: HandbookTyped): FirmHandbook => ({
  limits: limitsOf(limits),
  makers: makers.filter(({ removed }) => !removed).map(makerOf),
});

/** How many fields keep it from being saved. */
export const wrongCount = ({ limits, makers }: HandbookTyped): number =>
  [...problemsOfMakers(makers).values()].reduce(
    (sum, problems) => sum + problems.size,
    wrongLimits(limits).length,
  );

export type Difference =
  | { readonly what: "limit"; readonly id: string; readonly mine?: number; readonly theirs?: number }
  | { readonly what: "only-mine" | "only-theirs" | "maker"; readonly name: string };

type Entry = FirmHandbook["makers"][number];

/** The cars an entry speaks of, in short. */
export const carsOf = ({ make, model, fromYear, toYear }: Entry): string => {
  const years = [...new Set([fromYear, toYear].map((year) => year ?? ""))].join("–");
  return [make, model ?? "", years].filter((word) => word !== "").join(" ");
};

/** The order in which keys were stored says nothing: `hashKey` writes them in one order. */
const sameData = (one: Entry, other: Entry): boolean => hashKey([one]) === hashKey([other]);

/** Where two handbooks of one firm part, for somebody who has to choose between them. */
export const differences = (mine: FirmHandbook, theirs: FirmHandbook): readonly Difference[] => {
  const ids = [...new Set([...Object.keys(mine.limits), ...Object.keys(theirs.limits)])];
  const own = new Map(mine.makers.map((entry) => [carsOf(entry), entry]));
  const other = new Map(theirs.makers.map((entry) => [carsOf(entry), entry]));
  return [
    ...ids
      .filter((id) => mine.limits[id] !== theirs.limits[id])
      .map((id) => ({ what: "limit" as const, id, mine: mine.limits[id], theirs: theirs.limits[id] })),
    ...[...new Set([...own.keys(), ...other.keys()])].flatMap((name): Difference[] => {
      const [one, two] = [own.get(name), other.get(name)];
      if (one === undefined) return [{ what: "only-theirs", name }];
      if (two === undefined) return [{ what: "only-mine", name }];
      return sameData(one, two) ? [] : [{ what: "maker", name }];
    }),
  ];
};

/**
 * What a place in a refused handbook is called.
 *
 * @param at JSON pointer of the problem
 * @example placeOf("/limits/gap.taper", { limits: {}, makers: [] }) // "taper of a gap, or left against right"
 */
export const placeOf = (at: string, { makers }: FirmHandbook): string | undefined => {
  const [, part, which = ""] = at.split("/");
  if (part === "limits") return isLimitId(which) ? handbookLimits[which].words : which;
  const entry = part === "makers" ? makers[Number(which)] : undefined;
  return entry && carsOf(entry);
};
