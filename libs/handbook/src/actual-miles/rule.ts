import { dayOf } from "../day/index.ts";
import { defineRule } from "../define-rule/index.ts";
import type { Inputs } from "../define-rule/index.ts";
import { ODOMETER } from "../readers/items.ts";
import { paperEntries } from "../readers/miles.ts";
import {
  estimateOf,
  findClaim,
  findRead,
  numberNoted,
  optionOf,
  vehicleOf,
  visitDay,
} from "../view/index.ts";
import type { Found, View } from "../view/index.ts";
import { examples, growth, trueClaims } from "./examples.ts";
import { actualMiles } from "./index.ts";
import type { ActualMilesInput } from "./index.ts";
import { actualMilesRecord } from "./record.ts";

const find = (view: View): Inputs<ActualMilesInput>[] => {
  const read = findRead(view, "reading", ODOMETER);
  const miles = read === undefined ? undefined : estimateOf(view, read);
  const day = read === undefined ? undefined : visitDay(view, read.side);
  const modelYear = vehicleOf(view)?.modelYear;
  const digits = numberNoted(read, "odometer-digits");
  if (read === undefined || miles === undefined || day === undefined || modelYear === undefined) return [];
  if (digits !== 5 && digits !== 6) return [];
  const papers = paperEntries(view);
  const disclosed = findClaim(view, "choice", "identity.odometer-disclosure");
  const claim = optionOf(disclosed) === "actual" ? disclosed : undefined;
  const reads: Found[] = [read, ...papers.map((entry) => entry.read)];
  return [
    {
      reads,
      claim,
      bad: () => [read],
      input: {
        shown: { day, miles, place: "odometer" },
        digits,
        entries: papers.map(({ reading }) => reading),
        // A model year begins in the fall before.
        built: dayOf(modelYear - 1, 9, 1),
        calledActual: claim !== undefined,
      },
    },
  ];
};

/** actualMiles with all that belongs to it. */
export const actualMilesRule = defineRule({
  record: actualMilesRecord,
  compute: actualMiles,
  needs: ["identity.odometer"],
  find,
  examples,
  trueClaims,
  growth,
});
