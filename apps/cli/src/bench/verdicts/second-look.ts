import { createHash } from "node:crypto";
import type { Comparison } from "@evenhand/shared/comparison";
import type { Report } from "@evenhand/shared/report";
import { analyze } from "@evenhand/comparison/analyze";
import { seededRandom } from "@evenhand/measurement/random";
import { lookedAgain, secondLookPlaces } from "@evenhand/record/second-look";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { drawsFrom } from "./draws.ts";
import { isFalse } from "./false-statements.ts";
import { lookAt, looking } from "./look.ts";
import type { Pair } from "./people.ts";
import { eachCar, entryKey, honest, SEED, sheet, studied } from "./study.ts";
import type { Studied } from "./study.ts";
import { keyOf } from "./truth.ts";

/** Lines a car, with one look and once the named places were looked at again. */
export type SecondLookStudy = {
  readonly named: number;
  /** That differ though what was stated is so. */
  readonly falseOnce: number;
  readonly falseTwice: number;
  readonly doubtfulOnce: number;
  readonly doubtfulTwice: number;
};

/**
 * The same inspector at the named places of the same car, with slips drawn anew, and with a gauge and an eye drawn anew too: whoever
 * leans the same way twice gains less.
 */
const again = ({ b, found, comparison }: Studied, { inspector }: Pair, number: number) => {
  const hashOf = (text: string): string => createHash("sha256").update(`${number} ${text}`).digest("hex");
  const places = new Set(
    secondLookPlaces(comparison, hashOf).map(({ item, position }) => keyOf(item, position)),
  );
  const known = new Map(found.known.map((one) => [one.key, one]));
  const at = looking(inspector, sheetVersion1, drawsFrom(seededRandom(SEED + 5000 + number)), places);
  const findings = b.findings.map((finding) => {
    const key = keyOf(finding.item, finding.position);
    const one = known.get(key);
    if (one === undefined || !places.has(key)) return finding;
    return lookedAgain(finding, { ...finding, answer: lookAt(one, at), look: "second" });
  });
  const report: Report = { ...b, findings };
  return { named: places.size, report };
};

const falseIn = ({ a, story }: Studied, { entries }: Comparison): number => {
  const truths = new Map(story.car.known.map((known) => [known.key, known]));
  return entries.filter((entry) => {
    const known = truths.get(entryKey(entry));
    const stated = a.findings[entry.finding.a ?? -1]?.answer;
    const lies = known !== undefined && stated !== undefined && isFalse(known, stated);
    return entry.outcome === "differ" && !lies;
  }).length;
};

const doubtfulIn = ({ entries }: Comparison): number =>
  entries.filter(({ outcome }) => outcome === "doubtful").length;

/** What a second look gains where a dealer states what the dealer sees. */
export const studySecondLook = (pair: Pair, cars: number): SecondLookStudy => {
  const sum = { named: 0, falseOnce: 0, falseTwice: 0, doubtfulOnce: 0, doubtfulTwice: 0 };
  let number = 0;
  const see = (one: Studied): void => {
    const { named, report } = again(one, pair, number);
    const twice = analyze(one.a, report, sheet);
    sum.named += named / cars;
    sum.falseOnce += falseIn(one, one.comparison) / cars;
    sum.falseTwice += falseIn(one, twice) / cars;
    sum.doubtfulOnce += doubtfulIn(one.comparison) / cars;
    sum.doubtfulTwice += doubtfulIn(twice) / cars;
    number += 1;
  };
  eachCar(cars, (each) => studied(pair, each, honest), see);
  return sum;
};
