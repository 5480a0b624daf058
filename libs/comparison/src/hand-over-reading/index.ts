import type { Finding } from "@evenhand/shared/finding";
import type { UnseenPlaces } from "@evenhand/shared/hand-over";
import type {
  HandOverReading,
  HandOverStage,
  PlaceWords,
  UnseenWords,
} from "@evenhand/shared/http/hand-overs";
import type { Report } from "@evenhand/shared/report";
import type { Item, Sheet } from "@evenhand/shared/sheet";
import { answerWords, faultWords } from "@evenhand/wording/answer-words";
import { sheetWords } from "@evenhand/wording/sheet-words";
import type { SheetWords } from "@evenhand/wording/sheet-words";
import { listed } from "@evenhand/message/listed";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { asLookedAt } from "../as-looked-at/index.ts";
import { NOT_KNOWN } from "../compare-choice/index.ts";
import { askedPlaces, unseenOf, whyUnseen } from "../hand-over/unseen.ts";
import { notReadWords, unseenWords } from "../hand-over-words/index.ts";

/** Is it other than it should be, by itself? */
const isNoteworthy = ({ answer }: Finding, { choice, presence }: Item): boolean => {
  switch (answer.kind) {
    case "faults":
      return answer.found.length > 0;
    case "working":
      return answer.value === "no" || answer.value === "intermittent";
    case "presence":
      return answer.value !== NOT_KNOWN && presence !== undefined && answer.value !== presence.goodIs;
    case "choice": {
      const call = choice?.options.find(({ id }) => id === answer.option)?.call;
      return answer.option !== NOT_KNOWN && call !== "good";
    }
    default:
      return false;
  }
};

const wordsOf = (finding: Finding, item: Item, report: Report, sheet: SheetWords): string => {
  const { answer } = finding;
  const context = { sheet, item, scales: report.scales };
  if (answer.kind !== "faults" || answer.found.length === 0) return answerWords(answer, context);
  return listed(
    answer.found.map((fault) => faultWords(fault, context)),
    "semicolon",
  );
};

/**
 * Unseen places in words; an item of which nothing was seen is named once.
 *
 * @example unseenInWords(comparison.unseen, report, transportSheet1)[0] // { at: "delivery", reason: "wet", count: 17, places: ["panel damage"] }
 */
export const unseenInWords = (
  unseen: readonly UnseenPlaces[],
  report: Pick<Report, "vehicle">,
  sheet: Sheet,
): UnseenWords[] => {
  const words = sheetWords(sheet);
  const asked = Map.groupBy(askedPlaces(sheet, report), ({ item }) => item.id);
  return unseen.map(({ at, reason, places }) => ({
    at,
    reason: unseenWords(reason),
    count: places.length,
    places: [...Map.groupBy(places, ({ item }) => item)].flatMap(([item, ofItem]) =>
      ofItem.length === asked.get(item)?.length
        ? [words.item(item)]
        : ofItem.map(({ position }) => words.place(item, position)),
    ),
  }));
};

/**
 * What one hand-over report says, for whoever is about to sign it or reads it later: what is not as it should be, by place, and what
 * it does not speak for.
 *
 * @param report `checkReport` accepted it
 * @example handOverReading(report, "collection", compileSheet(transportSheet1)).odometer // "61,240 mi"
 */
export const handOverReading = (
  report: Report,
  stage: HandOverStage,
  compiled: CompiledSheet,
): HandOverReading => {
  const { sheet } = compiled;
  const words = sheetWords(sheet);
  const known = report.findings.flatMap((finding) => {
    const item = compiled.items.get(finding.item)?.item;
    return item === undefined ? [] : [{ finding, item, words: wordsOf(finding, item, report, words) }];
  });
  const said = (id: string): string => known.find(({ item }) => item.id === id)?.words ?? notReadWords();
  const why = whyUnseen(asLookedAt(report, compiled));
  const noted = known.filter(
    ({ finding, item }) =>
      item.circumstance !== true && (isNoteworthy(finding, item) || finding.note !== undefined),
  );
  return {
    odometer: said("identity.odometer"),
    fuel: said("identity.fuel-level"),
    keys: said("identity.key-count"),
    seenIn: known.filter(({ item }) => item.circumstance === true).map((each) => each.words),
    noted: noted.map(({ finding, words: text }): PlaceWords => ({
      place: words.place(finding.item, finding.position),
      words: text,
      note: finding.note ?? null,
    })),
    unseen: unseenInWords(unseenOf(askedPlaces(sheet, report), stage, why), report, sheet),
  };
};
