import type { Words } from "@evenhand/shared/sheet";
import { describe, expect, it } from "vitest";
import { sheetVersion1 as sheet } from "./index.ts";

/** American words and the British ones for the same part. */
const pairs: [american: RegExp, british: RegExp][] = [
  [/\bfenders?\b/, /\bwings?\b/],
  [/^(?!.*\bconvertible\b).*\bhood\b/, /\bbonnet\b/],
  [/\btrunk\b/, /\bboot\b/],
  [/\brockers?\b/, /\bsills?\b/],
  [/\bwindshield\b/, /\bwindscreen\b/],
  [/\btires?\b/, /\btyres?\b/],
  [/\bcolors?\b/, /\bcolours?\b/],
  [/\bmufflers?\b/, /\bsilencers?\b/],
  [/\bquarter panel\b/, /\brear wing\b/],
  [/\bparking[- ]brake\b/, /\bhandbrake\b/],
  [/\bbushings?\b/, /\bbush(es)?\b/],
  [/\btie-rod ends?\b/, /\btrack-rod ends?\b/],
  [/\bdriveshaft\b/, /\bpropshaft\b/],
  [/\baluminum\b/, /\baluminium\b/],
  [/\bmoldings?\b/, /\bmouldings?\b/],
  [/\bcarburetor\b/, /\bcarburettor\b/],
  [/\boil pan\b/, /\bsump\b/],
  [/\bturn signal\b/, /\bindicator\b/],
  [/\bcalipers?\b/, /\bcallipers?\b/],
  [/\bneighboring\b/, /\bneighbouring\b/],
];

const everyWord: [where: string, words: Words][] = [
  ...sheet.items.map((item): [string, Words] => [item.id, item.words]),
  ...sheet.items.flatMap((item) =>
    (item.choice?.options ?? []).map((option): [string, Words] => [`${item.id}=${option.id}`, option.words]),
  ),
  ...sheet.positionSets.flatMap((set) =>
    set.positions.map((position): [string, Words] => [`${set.id}/${position.id}`, position.words]),
  ),
  ...sheet.stations.map((station): [string, Words] => [station.id, station.words]),
  ...sheet.sections.map((section): [string, Words] => [section.id, section.words]),
  ...sheet.costRows.map((row): [string, Words] => [row.id, row.words]),
];

describe("American words have their British ones beside them", () => {
  it.each(pairs)("%s is %s", (american, british) => {
    const having = everyWord.filter(([, { american: word }]) => american.test(word));
    expect(having.length).toBeGreaterThan(0);
    const lacking = having.filter(
      ([, words]) => ![words.british ?? "", ...words.synonyms].some((word) => british.test(word)),
    );
    expect(lacking.map(([where]) => where)).toEqual([]);
  });
});
