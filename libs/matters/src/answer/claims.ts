import type { Comparison, Entry } from "@evenhand/shared/comparison";
import type { Standing } from "@evenhand/shared/outcome";
import { severityRank } from "@evenhand/shared/severity";
import { phraseOf } from "../headline/index.ts";
import type { Reports } from "../headline/index.ts";

/** What became of what the statement says, place by place. */
export type Claims = {
  /** Places of which the statement says something. */
  readonly stated: number;
  readonly held: number;
  /** Faults the statement owned up to, and that were found. */
  readonly disclosed: number;
  readonly fell: number;
  readonly doubtful: number;
  readonly unseen: number;
  readonly notComparable: number;
  /** The gravest that fell, worst first, with what was found. */
  readonly fallen: readonly string[];
};

type Became = Exclude<keyof Claims, "stated" | "fallen">;

const BECAME: Readonly<Record<Standing, Became>> = {
  confirmed: "held",
  "not-contradicted": "held",
  "agreed-fault": "disclosed",
  differs: "fell",
  "contradicted-by-figures": "fell",
  "not-mentioned": "fell",
  "in-doubt": "doubtful",
  "too-coarse": "notComparable",
  "not-comparable": "notComparable",
  unseen: "unseen",
};
/** From the worst down: a place with several lines became what the worst of them says. */
const WORST_FIRST: readonly Became[] = ["fell", "doubtful", "unseen", "notComparable", "disclosed", "held"];

const isClaim = ({ finding }: Entry, { a }: Reports): boolean => {
  const stated = a.findings[finding.a ?? -1];
  return stated !== undefined && stated.answer.kind !== "not-seen";
};

const becameOf = (lines: readonly Entry[]): Became =>
  WORST_FIRST.find((one) =>
    lines.some(
      ({ standing, direction }) =>
        BECAME[standing] === one && !(one === "fell" && direction === "found-better"),
    ),
  ) ?? "held";

const SHOWN = 5;

/**
 * What became of the statement's claims: how many held, were owned up to, fell, are in doubt or were not seen, and the gravest that
 * fell. What was found better than stated has not fallen.
 *
 * @example claimsOf(comparison, reports).fell // 12
 */
export const claimsOf = ({ entries }: Pick<Comparison, "entries">, reports: Reports): Claims => {
  const places = Map.groupBy(
    entries.filter((entry) => isClaim(entry, reports)),
    ({ item, position }) => `${item}@${position}`,
  );
  const counts = { held: 0, disclosed: 0, fell: 0, doubtful: 0, unseen: 0, notComparable: 0 };
  const fallen: Entry[] = [];
  for (const lines of places.values()) {
    const became = becameOf(lines);
    counts[became] += 1;
    if (became === "fell")
      fallen.push(...lines.filter(({ standing }) => BECAME[standing] === "fell").slice(0, 1));
  }
  const worst = fallen.toSorted(
    (a, b) => severityRank(a.severity ?? "small") - severityRank(b.severity ?? "small"),
  );
  return {
    ...counts,
    stated: places.size,
    fallen: worst.slice(0, SHOWN).map((entry) => phraseOf(entry, reports)),
  };
};
