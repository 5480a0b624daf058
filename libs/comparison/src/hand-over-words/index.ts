import type { Fault } from "@evenhand/shared/answer";
import type { Atom } from "@evenhand/shared/comparison";
import type { Finding } from "@evenhand/shared/finding";
import type { HandOverComparison, HandOverLine, UnseenReason } from "@evenhand/shared/hand-over";
import type { Report } from "@evenhand/shared/report";
import type { Sheet } from "@evenhand/shared/sheet";
import { defineMessages } from "@evenhand/message/define-messages";
import { answerWords, faultWords } from "@evenhand/wording/answer-words";
import { formatExact } from "@evenhand/wording/format-figure";
import { say } from "@evenhand/wording/say";
import { sheetWords } from "@evenhand/wording/sheet-words";

const messages = defineMessages("hand-over", {
  new: "{there} at delivery: not on the collection report, though the place was looked at",
  "new-small":
    "{there} at delivery: not on the collection report, and small enough to have been missed there",
  larger: "{there} at delivery; on the collection report it is {here}",
  worse: "{there} at delivery; {here} at collection",
  missing: "{there} at delivery; {here} at collection",
  moved:
    "{there} at delivery, {here} at collection: farther than the {miles} miles that loading and unloading may take",
  perhaps: "{there} at delivery; {here} at collection: the two reports do not settle whether it changed",
  "perhaps-only":
    "{there} at delivery: perhaps part of what the collection report has there ({here}), and perhaps not",
  misread: "{there} at delivery, {here} at collection: lower than before, so one of the two was misread",
  "cannot-say":
    "{there} at delivery; at collection the place was not looked at ({why}), so nobody can say when it came",
  gone: "{here} on the collection report, and not on the delivery report: ask whether it was looked at again",
  better: "{there} at delivery; {here} at collection: otherwise, and not worse",
});

const unseenMessages = defineMessages("hand-over-unseen", {
  "not-known": "not known",
  "not-reported": "nothing written",
  "not-read": "not read",
});

/** A figure nobody read. */
export const notReadWords = (): string => unseenMessages.say("not-read");

/**
 * Why a report does not speak for a place.
 *
 * @example unseenWords("dark") // "too dark"
 */
export const unseenWords = (reason: UnseenReason): string =>
  reason === "not-known" || reason === "not-reported"
    ? unseenMessages.say(reason)
    : say(`not-seen.${reason}`);

export type HandOverWords = {
  /** Item and place: "panel damage, left front door". */
  readonly place: string;
  readonly sentence: string;
  /** What each report has there. */
  readonly collection: string;
  readonly delivery: string;
};

type Reports = { readonly collection: Report; readonly delivery: Report };

const findingAt = ({ findings }: Report, { item, position }: HandOverLine): Finding | undefined =>
  findings.find((each) => each.item === item && each.position === position);

const faultOf = (finding: Finding | undefined, atom: Atom, side: "a" | "b"): Fault | undefined => {
  const index = atom.of === "fault" ? atom[side] : undefined;
  return index !== undefined && finding?.answer.kind === "faults" ? finding.answer.found[index] : undefined;
};

/** What one report has of the line: its one fault, or its whole answer. */
const sideWords = (report: Report, line: HandOverLine, side: "a" | "b", sheet: Sheet): string => {
  const finding = findingAt(report, line);
  if (finding === undefined) return unseenMessages.say("not-reported");
  const words = sheetWords(sheet);
  const context = { sheet: words, item: words.findItem(line.item), scales: report.scales };
  const fault = faultOf(finding, line.atom, side);
  return fault === undefined ? answerWords(finding.answer, context) : faultWords(fault, context);
};

const messageOf = ({ kind, small, atom, item, outcome }: HandOverLine) => {
  if (kind === "perhaps" && item === "identity.odometer" && outcome === "differ") return "misread";
  if (kind === "new") return small ? "new-small" : "new";
  return kind === "perhaps" && atom.of === "fault" && atom.a === undefined ? "perhaps-only" : kind;
};

/**
 * A line of two hand-over reports in words: what is on one and not on the other. It accuses nobody: a scratch that collection missed
 * reads the same as one that came on the way.
 *
 * @example
 * handOverWords(line, reports, transportSheet1, comparison).sentence
 * // "dent at middle center, 80 mm at delivery: not on the collection report, though the place was looked at"
 */
export const handOverWords = (
  line: HandOverLine,
  reports: Reports,
  sheet: Sheet,
  { milesAllowed }: Pick<HandOverComparison, "milesAllowed">,
): HandOverWords => {
  const collection = sideWords(reports.collection, line, "a", sheet);
  const delivery = sideWords(reports.delivery, line, "b", sheet);
  const why = line.unseenAtCollection;
  return {
    place: sheetWords(sheet).place(line.item, line.position),
    collection,
    delivery,
    sentence: messages.say(messageOf(line), {
      here: collection,
      there: delivery,
      miles: formatExact(milesAllowed),
      why: why === null ? "" : unseenWords(why),
    }),
  };
};
