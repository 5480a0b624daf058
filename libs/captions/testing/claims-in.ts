import { compileLexicon } from "@evenhand/lexicon/compile-lexicon";
import { lexiconVersion1 } from "@evenhand/lexicon/lexicon-version-1";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import type { Answer } from "@evenhand/shared/answer";
import type { VehicleForm } from "@evenhand/shared/report";
import { draftStatement } from "../src/draft-statement/index.ts";
import { spokenText } from "../src/spoken-text/index.ts";

const compiled = compileLexicon(lexiconVersion1, sheetVersion1);
const form: VehicleForm = {
  body: "coupe",
  doors: 2,
  cylinders: 4,
  construction: "unit-body",
  gearbox: "manual",
  driven: "rear",
  fuelSystem: "carburetor",
  systemVolts: 12,
  brakes: { front: "disc", rear: "drum" },
  leftHandDrive: true,
};

/** What talk of an ordinary coupe is read with. */
export const ofCoupe = { sheet: sheetVersion1, compiled, form, year: 2026 };

const short = (answer: Answer): string => {
  switch (answer.kind) {
    case "faults": {
      const denied = answer.denied === "all" ? ["-all"] : answer.denied.map((kind) => `-${kind}`);
      return [...answer.found.map(({ kind }) => kind), ...denied].join(" ");
    }
    case "choice":
      return answer.option;
    case "reading":
      return `${answer.values[0]?.value ?? ""} ${answer.unit}`;
    case "code":
      return answer.text;
    case "working":
    case "grade":
    case "presence":
      return String(answer.value);
    default:
      return answer.kind;
  }
};

/** Places written out; more than these are counted. */
const MOST_PLACES = 2;

/**
 * What talk claims, an item and an answer a line, with its places; captions are parted by `|`.
 *
 * @example
 * claimsIn("The roof has a dent."); // ["body.faults dent @roof"]
 */
export const claimsIn = (text: string, otherwise: Partial<VehicleForm> = {}): string[] => {
  const cues = text
    .split("|")
    .map((one, index) => ({ start: 5 + index * 5, end: 10 + index * 5, text: one.trim() }));
  const context = { ...ofCoupe, form: { ...form, ...otherwise } };
  const places = new Map<string, string[]>();
  for (const { item, position, answer } of draftStatement(spokenText(cues), context)) {
    const claim = `${item} ${short(answer)}`;
    places.set(
      claim,
      [...(places.get(claim) ?? []), position].filter((one) => one !== ""),
    );
  }
  return [...places]
    .map(([claim, at]) => {
      if (at.length === 0) return claim;
      return `${claim} @${at.length > MOST_PLACES ? at.length : at.toSorted().join(",")}`;
    })
    .toSorted();
};
