import { lowered } from "@evenhand/message/first-letter";
import { listed } from "@evenhand/message/listed";
import { findingOf } from "@evenhand/comparison/finding-of";
import { SEVERITIES, severityRank } from "@evenhand/shared/severity";
import type { Severity } from "@evenhand/shared/severity";
import type { Group, Line } from "../join/line.ts";
import { isAdmitted } from "../order/index.ts";
import { isUnknown } from "../weight/index.ts";
import { LEADS, SILENT_LEADS } from "./leads.ts";
import { foundMessages, headlineMessages, nobodyMessages, wordsFor, zoneMessages } from "./messages.ts";
import { named } from "./named.ts";
import type { Zone } from "../zone/index.ts";
import { phraseOf, saidOf } from "./phrase.ts";
import type { Reports } from "./phrase.ts";
import { unknownWords } from "./unknown.ts";

export { claimWords, phraseOf, placeWords, saidOf } from "./phrase.ts";
export type { Reports } from "./phrase.ts";

const RUST: ReadonlySet<string> = new Set(["corrosion", "perforation", "blister", "rot"]);
const HIT: ReadonlySet<string> = new Set(["buckle", "kink", "bend", "weld-crack", "dent", "twist"]);

const kindsOfFault = (lines: readonly Line[]): ReadonlySet<string> =>
  new Set(lines.flatMap(({ entry }) => (entry.atom.of === "fault" ? [entry.atom.kind] : [])));

/** What a place suffers from, told by the faults and by the inspector's word on a collision. */
const placeLead = (lines: readonly Line[], zone: Zone): string => {
  const faults = kindsOfFault(lines.filter(({ entry }) => !isUnknown(entry)));
  const where = zoneMessages.say(zone);
  if (lines.some(({ entry }) => entry.item === "underbody.collision-repair" && !isUnknown(entry))) {
    return headlineMessages.say("hit", { where });
  }
  const rust = [...faults].some((fault) => RUST.has(fault));
  const hit = [...faults].some((fault) => HIT.has(fault));
  const what = rust ? (hit ? "rust-and-bent" : "rust") : hit ? "bent" : "damage";
  return headlineMessages.say(what, { where });
};

/** What was found and is beyond doubt. */
const isFound = ({ entry }: Line): boolean => !isUnknown(entry) && entry.outcome !== "doubtful";

/** Other than was said, and good all the same. */
const isOnlyParted = ({ entry }: Line): boolean =>
  entry.calls.b === "good" && !entry.marks.includes("by-figures") && !entry.marks.includes("both-bad");

/** The gravest of what was found: lines stand worst first. */
const severityFound = (lines: readonly Line[]): Severity => lines.find(isFound)?.entry.severity ?? "small";

/** What the gravest line found says by itself. */
const ownLead = (worst: Line | undefined, { b }: Reports): string | undefined => {
  if (worst === undefined || !isFound(worst)) return undefined;
  const { item, outcome, finding, marks } = worst.entry;
  const answer = findingOf(b.findings, finding.b)?.answer;
  if (answer?.kind === "choice" && LEADS[`${item}=${answer.option}`] !== undefined) {
    return LEADS[`${item}=${answer.option}`];
  }
  if (outcome !== "differ" && !marks.includes("by-figures") && answer?.kind === "code") return undefined;
  return (finding.a === null ? SILENT_LEADS[item] : undefined) ?? LEADS[item];
};

const leadOf = (group: Group, reports: Reports): string => {
  const { says, name, id } = group.kind;
  const own = id === "repairs" ? undefined : ownLead(group.lines[0], reports);
  if (group.zone !== null) {
    const there = placeLead(group.lines, group.zone);
    const place = group.elsewhere === true ? headlineMessages.say("elsewhere", { place: there }) : there;
    return own === undefined ? place : headlineMessages.say("also-place", { own, place: lowered(place) });
  }
  if (own !== undefined) return own;
  const severity = severityFound(group.lines);
  const milder = SEVERITIES.slice(severityRank(severity)).find((one) => says[one] !== undefined);
  const graver = SEVERITIES.findLast((one) => says[one] !== undefined);
  return (
    (milder === undefined ? undefined : says[milder]) ??
    (graver === undefined ? name : headlineMessages.say("trouble", { name }))
  );
};

const isSamePlace = (a: Line, b: Line | undefined): boolean =>
  a.entry.item === b?.entry.item && a.entry.position === b.entry.position;

const listedLines = (lines: readonly Line[], words: (line: Line, again: boolean) => string): string => {
  const chosen = named(lines);
  const left = lines.length - chosen.length;
  const said = chosen.map((line, index) => words(line, isSamePlace(line, chosen[index - 1])));
  const list = listed(said, "semicolon");
  return left === 0 ? list : foundMessages.say("more", { list, count: left });
};

const foundWords = ({ lines }: Group, reports: Reports): string =>
  listedLines(
    lines,
    ({ entry }, again) => (again ? saidOf(entry, "b", reports) : undefined) ?? phraseOf(entry, reports),
  );

const TRIFLES_NAMED = 5;

const smallWords = ({ lines }: Group, { sheet }: Reports): string => {
  const words = lines.map(({ entry }) => sheet.items.get(entry.item)?.item.words.american);
  const names = [...new Set(words.filter((word) => word !== undefined))];
  const list = listed(names.slice(0, TRIFLES_NAMED));
  const said = names.length > TRIFLES_NAMED ? foundMessages.say("and-others", { list }) : list;
  return foundMessages.say("small", { count: lines.length, names: said });
};

/** What is wrong, and the lines it rests on. */
export type Headline = { readonly headline: string; readonly found: string };

/**
 * What is wrong in a few words made from what was found, and the three gravest lines with what was stated.
 *
 * @param group its lines worst first
 * @example headline(brakes, reports)
 * // { headline: "It pulls to one side under braking", found: "pull under braking: pulls right (stated: straight); …" }
 */
export const headline = (group: Group, reports: Reports): Headline => {
  const nobody = wordsFor(nobodyMessages, group.kind.id);
  if (nobody !== undefined) return { headline: nobody, found: unknownWords(group, reports) };
  if (group.kind.id === "small-things")
    return { headline: headlineMessages.say("small-things"), found: smallWords(group, reports) };
  const found = foundWords(group, reports);
  const { name } = group.kind;
  const known = group.lines.filter(isFound);
  if (known.length > 0 && known.every(isOnlyParted)) {
    return { headline: headlineMessages.say("not-as-stated", { name }), found };
  }
  if (known.length > 0) {
    const lead = leadOf(group, reports);
    return { headline: isAdmitted(group) ? headlineMessages.say("disclosed", { lead }) : lead, found };
  }
  const doubtful = group.lines.some(({ entry }) => entry.outcome === "doubtful");
  return { headline: headlineMessages.say(doubtful ? "look-again" : "not-shown", { name }), found };
};
