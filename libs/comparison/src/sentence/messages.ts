import type { NotSeenReason } from "@evenhand/shared/answer";
import type { LimitCall } from "@evenhand/shared/comparison";
import type { ReportKind } from "@evenhand/shared/report";
import { defineMessages } from "@evenhand/message/define-messages";
import type { Reason } from "../reason/index.ts";

/** What a line's sentence is called by: its reason, or a reason told apart. */
export type LineId =
  | Exclude<Reason, `not-seen-${NotSeenReason}`>
  | "not-seen"
  | "not-seen-not-stated"
  | "same-fault-extents"
  | "same-code-otherwise"
  | "falls-to-figures-both"
  | "denied-by-both-all"
  | "denied-found-all"
  | "denied-not-contradicted-all";

/**
 * What is said of a line: `{a}` and `{b}` are the two answers, `{A}` and `{B}` how each report says a thing, `{theA}` and `{theB}` the
 * reports.
 */
export const lineMessages = defineMessages("line", {
  "within-delta": "{A} {a}, {B} {b}: the difference of {difference} lies within the {delta} that matters",
  "not-settled":
    "{A} {a}, {B} {b}: the difference of {difference} neither confirms nor contradicts, {delta} being what matters",
  "beyond-chance":
    "{A} {a}, {B} {b}: the difference of {difference} is more than chance explains, but perhaps less than the {delta} that matters",
  "beyond-ordinary":
    "{A} {a}, {B} {b}: the difference of {difference} is more than an ordinary instrument, read with ordinary care, explains; what was named is coarser or scatters more, so read it again",
  "beyond-delta": "{A} {a}, {B} {b}: the difference of {difference} is more than the {delta} that matters",
  "opposite-calls": "{A} {a}, {B} {b}: the one passes where the other does not",
  "opposite-calls-unsure":
    "{A} {a}, {B} {b}: the one passes and the other may not; too close to be sure, so read it again",
  "both-past-limit": "{A} {a}, {B} {b}: both say it is past the limit",
  "within-use": "{A} {a}, {B} {b}: use may explain the difference of {difference}",
  "perhaps-the-unit": "{A} {a}, {B} {b}: the figures fit in another unit, so perhaps only the unit is wrong",
  "worst-spot-beyond-chance":
    "taken at the worst spot, {A} {a}, {B} {b}: the difference of {difference} is more than chance explains, but perhaps less than the {delta} that matters",
  "worst-spot-beyond-delta":
    "taken at the worst spot, {A} {a}, {B} {b}: the difference of {difference} is more than the {delta} that matters",
  "explained-by-conditions":
    "{A} {a}, {B} {b}: the other conditions it was read under explain the difference",
  "other-conditions": "{A} {a}, {B} {b}: read under other conditions, which cannot be set against each other",
  "same-color": "Both read {a}",
  "color-within-delta": "The two colors are {difference} apart, within the {delta} that matters",
  "color-not-settled":
    "The two colors are {difference} apart, which neither confirms nor contradicts, {delta} being what matters",
  "color-beyond-chance":
    "The two colors are {difference} apart, more than chance explains, but perhaps less than the {delta} that matters",
  "color-beyond-delta": "The two colors are {difference} apart, more than the {delta} that matters",
  "metallic-from-one-angle": "A metallic color measured from one angle cannot be set against another",
  "other-geometry":
    "The two colors were measured with different geometries and cannot be set against each other",
  "same-grade": "Both call it {a}",
  "grades-overlap": "{A} {a}, {B} {b}: the two grades cover mostly the same",
  "grade-within-wider": "{A} {a}, {B} {b}: nothing speaks against it, but a word that wide confirms nothing",
  "word-above-rank":
    "{A} {a}, {B} {b}: the same by where the word stands on its scale, and the word itself promises more, so it confirms nothing",
  "grades-near": "{A} {a}, {B} {b}: near enough for two careful people to differ so",
  "grades-apart": "{A} {a}, {B} {b}: farther apart than two careful people usually are",
  "grades-far-apart": "{A} {a}, {B} {b}: too far apart for two views of one condition",
  "unknown-scale": "{A} {a}, {B} {b}: a grade is on a scale its report does not describe",
  "same-answer": "Both say {a}",
  "other-answer": "{A} {a}, {B} {b}",
  "some-do-not-work": "{A} {a}, {B} {b}: some of them do not work",
  "works-at-times": "{A} {a}, {B} {b}",
  "both-bad": "{A} {a}, {B} {b}: both say it is bad",
  "both-bad-worse": "{A} {a}, {B} {b}: both say it is bad, and {theB} finds it worse",
  "worse-than-said": "{A} {a}, {B} {b}: worse than was said",
  neighbors: "{A} {a}, {B} {b}: one step apart, as two careful people may be",
  "weaker-not-otherwise": "{A} {a}, {B} {b}: more cannot be shown by looking",
  "stronger-than-claimed": "{A} {a}, {B} {b}: more than was claimed, and nothing against it",
  "not-fitted-by-both": "Both say the car has none",
  "not-fitted-found": "{A} {a}; {theB} says the car has none",
  "fitted-found": "{theA} says the car has none; {B} {b}",
  "seen-not-fitted": "{theB} says the car has none; {theA} says nothing of it",
  "own-visit": "{A} {a}, {B} {b}: each tells of its own visit",
  "changed-between-days": "{A} {a}, {B} {b}, on different days: this changes from day to day",
  "changed-bad-between-days":
    "{A} {a}, {B} {b}, on different days: this changes from day to day, so it is only in doubt",
  "not-known-by-either": "Neither {theA} nor {theB} knows",
  "not-known-by-statement": "{theA} does not know; {B} {b}",
  "not-known-by-inspection": "{A} {a}; {theB} could not tell",
  "same-code": "Both read {a}",
  "same-code-otherwise": "{A} {a}, {B} {b}: the same, written otherwise",
  "says-less": "{A} {a}, {B} {b}: the one says less than the other, and nothing against it",
  "own-words": "{A} {a}, {B} {b}: each in words of their own, which cannot be set against each other",
  "one-look-alike": "{A} {a}, {B} {b}: one look-alike character apart, probably misread",
  "one-dropped": "{A} {a}, {B} {b}: one character more or less, probably misread",
  "two-exchanged": "{A} {a}, {B} {b}: two neighboring characters exchanged, probably misread",
  "other-code": "{A} {a}, {B} {b}",
  "same-fault": "Both report {fault}",
  "same-fault-extents":
    "Both report {fault}, {a} and {b}: the difference of {difference} lies within the {delta} that matters",
  "extent-not-given": "Both report {fault}, only one of them with its extent",
  "extents-not-given": "Both report {fault}, neither of them with its extent",
  "place-not-given": "Both report {fault}, not both of them where on it: it may be another",
  "extent-not-settled":
    "Both report {fault}, {a} and {b}: the difference of {difference} is too uncertain to tell, {delta} being what matters",
  "extent-beyond-chance":
    "Both report {fault}, {a} and {b}: the difference of {difference} is more than chance explains, but perhaps less than the {delta} that matters",
  "extent-beyond-delta":
    "Both report {fault}, {a} and {b}: the difference of {difference} is more than the {delta} that matters",
  "disclosed-not-found": "{theA} reports {a}; {theB} did not find it",
  "denied-trifle": "{theA} says there is no {denied}; {B} {b}, which is smaller than what matters",
  "graver-stage": "{B} {b}: graver than what {theA} shows there",
  "disclosed-at-least": "{theA} discloses {a}; {B} {b}, no more than that",
  "disclosed-in-all":
    "{theA} discloses it; {B} {b}, in all no more than was disclosed, or not by enough to matter",
  "disclosed-milder": "{theA} discloses {a}; {theB} found it further gone, which is a line of its own",
  "perhaps-in-all":
    "{theA} discloses some of it, and not how much; {B} {b}, which may be part of that or more",
  "perhaps-other-side":
    "One report has it on the left and the other on the right: perhaps the sides are exchanged",
  "denied-found": "{theA} says there is no {denied}; {B} {b}",
  "denied-found-all": "{theA} says there are no faults; {B} {b}",
  "denied-by-both": "Both say there is no {kind}",
  "denied-by-both-all": "Both say there are no faults beyond any they list",
  "denied-not-contradicted": "{theA} says there is no {kind}; {theB} does not speak of it",
  "denied-not-contradicted-all":
    "{theA} says there are no faults beyond any it lists; {theB} does not deny the rest",
  "nothing-claimed": "Neither {theA} nor {theB} claims anything here",
  "not-reported": "Neither {theA} nor {theB} speaks of it",
  "stated-not-inspected": "{A} {a}; {theB} does not speak of it",
  "not-known-nor-stated": "{theA} says nothing of it, and {theB} could not tell",
  "not-seen": "{A} {a}; in {theB} not seen: {reason}",
  "not-seen-not-stated": "{theA} says nothing of it, and in {theB} it was not seen: {reason}",
  "found-bad-not-stated": "{B} {b}; {theA} says nothing of it",
  "found-bad-statement-unseen": "{B} {b}; {theA} did not see it",
  "absent-not-promised": "{B} {b}; {theA} says nothing of it, so that nothing was promised",
  "found-bad-by-figures": "{B} {b}: bad by a rule of the handbook; {theA} says nothing of it",
  "borne-out-by-figures": "{A} {a}: nobody looked at it itself, and the figures that were found speak for it",
  "falls-to-figures": "{A} {a}: the figures that were found speak against it",
  "falls-to-figures-both": "{A} {a}, {B} {b}: the figures that were found speak against what was stated",
  "found-without-yardstick": "{B} {b}; {theA} says nothing of it, and {why}",
  "found-without-yardstick-statement-unseen": "{B} {b}; {theA} did not see it, and {why}",
  "seen-sound-not-stated": "{B} {b}, as it should be; {theA} says nothing of it",
  "seen-sound-statement-unseen": "{B} {b}, as it should be; {theA} did not see it",
  "other-kind": "The two answers are of different kinds and cannot be set against each other",
});

/** How a report of each kind says a thing, and what it is called. */
const reportMessages = defineMessages("report", {
  "acquisition.says": "on acquisition",
  "acquisition.name": "the acquisition report",
  "statement.says": "stated",
  "statement.name": "the statement",
  "inspection.says": "found",
  "inspection.name": "the inspection",
  "collection.says": "on collection",
  "collection.name": "the collection report",
  "delivery.says": "on delivery",
  "delivery.name": "the delivery report",
});

/** How a report of a kind says a thing: "found". */
export const reportSays = (kind: ReportKind): string => reportMessages.say(`${kind}.says`);

/** What a report of a kind is called: "the inspection". */
export const reportName = (kind: ReportKind): string => reportMessages.say(`${kind}.name`);

/** What may stand beside a figure, or follow a sentence's main clause. */
export const clauseMessages = defineMessages("clause", {
  "by-eye": "{value} by eye",
  unnamed: "{value} (instrument not named)",
  "use-allowed": "{difference} ({allowed} of use is allowed between the visits)",
  "difference-corrected": "{difference} as read, {taken} as taken,",
  corrected: "{value} ({why}: taken as {taken})",
  "corrected-list": "{value} ({why}, which was taken off before it was judged)",
  "corrected-alone": "; {why}, which was taken off before it was judged",
  off: "{way, select, true {reads true} high {reads {size} high} other {reads {size} low}}",
  "why.gauge": "this gauge {off} over {pairs} past pairs of reports",
  "why.inspector": "this inspector {off} over {pairs} past pairs of reports",
  "why.inspector-and-gauge":
    "this inspector with this gauge {off} over past pairs of reports, {hand} of the hand and {pairs} of the gauge",
  "why.check-standard": "by the check standard of this visit this gauge {off}",
  "why.inspector-and-check-standard":
    "by the check standard of this visit and {hand} past pairs of reports this inspector with this gauge {off}",
  "unjudged.nothing": "there is nothing to judge it by",
  "unjudged.no-figure": "there is no figure to judge it by",
  "unjudged.not-noted": "what would judge it was not noted",
  "unjudged.between": "it lies between ordinary and bad",
  "limit.min": "; at least {limit} is required: {calls}",
  "limit.max": "; at most {limit} is allowed: {calls}",
  "practice.min": "; common practice looks for at least {limit}: {calls}",
  "practice.max": "; common practice looks for at most {limit}: {calls}",
  "limit.both": "{theA} {callA}, {theB} {callB}",
  "limit.one": "{report} {call}",
  "at-worst": "{call} (at worst {value})",
  "in-their-unit": "{limit} ({theirs})",
  "passes.a": "; only the number in {theA} passes its check digit",
  "passes.b": "; only the number in {theB} passes its check digit",
  "passes.both": "; both pass their check digits",
  "passes.neither": "; neither passes its check digit",
  whole: "{line}{passes}{corrected}{limits}.",
});

const callMessages = defineMessages("call", {
  meets: "meets it",
  "meets-closely": "meets it as read, too closely to be sure",
  "fails-closely": "fails it as read, too closely to be sure",
  fails: "fails it",
});

/** Whether a limit is met: "fails it as read, too closely to be sure". */
export const limitCall = ({ call, plain }: LimitCall): string => {
  if (call !== "marginal") return callMessages.say(call);
  return callMessages.say(plain === "pass" ? "meets-closely" : "fails-closely");
};
