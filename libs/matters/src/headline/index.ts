import { SEVERITIES, severityRank } from "@evenhand/shared/severity";
import type { Severity } from "@evenhand/shared/severity";
import type { Group, Line } from "../join/line.ts";
import { isAdmitted } from "../order/index.ts";
import { isUnknown } from "../weight/index.ts";
import { LEADS, SILENT_LEADS } from "./leads.ts";
import { named } from "./named.ts";
import type { Zone } from "../zone/index.ts";
import { phraseOf, saidOf } from "./phrase.ts";
import type { Reports } from "./phrase.ts";
import { unknownWords } from "./unknown.ts";

export { phraseOf, placeWords, saidOf } from "./phrase.ts";
export type { Reports } from "./phrase.ts";

const ZONE_WORDS: Readonly<Record<Zone, string>> = {
  "left-front": "at the left front",
  "right-front": "at the right front",
  left: "along the left side",
  right: "along the right side",
  "left-rear": "at the left rear",
  "right-rear": "at the right rear",
  front: "at the front",
  rear: "at the rear",
  top: "on the roof",
  whole: "of the whole car",
};

/** Gravest first; of two alike what was found before what nobody saw. */
const worstFirst = (lines: readonly Line[]): Line[] =>
  lines.toSorted((a, b) => a.weight - b.weight || a.index - b.index);

const RUST: ReadonlySet<string> = new Set(["corrosion", "perforation", "blister", "rot"]);
const HIT: ReadonlySet<string> = new Set(["buckle", "kink", "bend", "weld-crack", "dent", "twist"]);

const kindsOfFault = (lines: readonly Line[]): ReadonlySet<string> =>
  new Set(lines.flatMap(({ entry }) => (entry.atom.of === "fault" ? [entry.atom.kind] : [])));

/** What a place suffers from, told by the faults and by the inspector's word on a collision. */
const placeLead = (lines: readonly Line[], zone: Zone): string => {
  const faults = kindsOfFault(lines.filter(({ entry }) => !isUnknown(entry)));
  const where = ZONE_WORDS[zone];
  if (lines.some(({ entry }) => entry.item === "underbody.collision-repair" && !isUnknown(entry))) {
    return `Hit and repaired ${where}`;
  }
  const rust = [...faults].some((fault) => RUST.has(fault));
  const hit = [...faults].some((fault) => HIT.has(fault));
  if (rust) return `Rust${hit ? " and bent metal" : ""} ${where}`;
  return hit ? `Bent or cracked metal ${where}` : `Repairs or damage ${where}`;
};

/** What was found and is beyond doubt. */
const isFound = ({ entry }: Line): boolean => !isUnknown(entry) && entry.outcome !== "doubtful";

/** Other than was said, and good all the same. */
const isOnlyParted = ({ entry }: Line): boolean =>
  entry.calls.b === "good" && !entry.marks.includes("by-figures") && !entry.marks.includes("both-bad");

/** The gravest of what was found. */
const severityFound = (lines: readonly Line[]): Severity =>
  worstFirst(lines.filter(isFound))[0]?.entry.severity ?? "small";

/** What the gravest line found says by itself. */
const ownLead = (worst: Line | undefined, { b }: Reports): string | undefined => {
  if (worst === undefined || !isFound(worst)) return undefined;
  const { item, outcome, finding, marks } = worst.entry;
  const answer = b.findings[finding.b ?? -1]?.answer;
  if (answer?.kind === "choice" && LEADS[`${item}=${answer.option}`] !== undefined) {
    return LEADS[`${item}=${answer.option}`];
  }
  if (outcome !== "differ" && !marks.includes("by-figures") && answer?.kind === "code") return undefined;
  return (finding.a === null ? SILENT_LEADS[item] : undefined) ?? LEADS[item];
};

const leadOf = (group: Group, reports: Reports): string => {
  const { says, name, id } = group.kind;
  const own = id === "repairs" ? undefined : ownLead(worstFirst(group.lines)[0], reports);
  if (group.zone !== null) {
    const elsewhere = group.elsewhere === true ? " and elsewhere" : "";
    const place = placeLead(group.lines, group.zone) + elsewhere;
    return own === undefined ? place : `${own}, and ${place.charAt(0).toLowerCase()}${place.slice(1)}`;
  }
  if (own !== undefined) return own;
  const severity = severityFound(group.lines);
  const milder = SEVERITIES.slice(severityRank(severity)).find((one) => says[one] !== undefined);
  const graver = SEVERITIES.findLast((one) => says[one] !== undefined);
  return (
    (milder === undefined ? undefined : says[milder]) ??
    (graver === undefined ? name : `Trouble with ${name}`)
  );
};

const isSamePlace = (a: Line, b: Line | undefined): boolean =>
  a.entry.item === b?.entry.item && a.entry.position === b.entry.position;

const listed = (lines: readonly Line[], words: (line: Line, again: boolean) => string): string => {
  const chosen = named(lines);
  const left = lines.length - chosen.length;
  const said = chosen.map((line, index) => words(line, isSamePlace(line, chosen[index - 1])));
  return `${said.join("; ")}${left === 0 ? "" : `; and ${left} more`}`;
};

const foundWords = ({ lines }: Group, reports: Reports): string =>
  listed(
    worstFirst(lines),
    ({ entry }, again) => (again ? saidOf(entry, "b", reports) : undefined) ?? phraseOf(entry, reports),
  );

const NOBODY: Readonly<Record<string, string>> = {
  "unseen-papers": "Papers and checks nobody has seen",
  "unseen-numbers": "Numbers on the car nobody has read",
  "unseen-opened": "Nobody looked where something must come off, or leave be given",
  "unseen-lift": "Nobody looked at this underneath, on a lift",
  "unseen-road": "Nobody has tried this on the road",
  "unseen-running": "Nobody has tried this with the engine cold or hot",
  "unseen-looking": "Nobody looked at this, though it needs neither lift nor drive",
  "no-yardstick": "Found, but nothing says whether it is good",
  "unseen-claims": "Claimed or asked for, and not seen",
  unseen: "Neither stated nor looked at",
};

const TRIFLES_NAMED = 5;

const smallWords = ({ lines }: Group, { sheet }: Reports): string => {
  const words = worstFirst(lines).map(({ entry }) => sheet.items.get(entry.item)?.item.words.american);
  const names = [...new Set(words.filter((word) => word !== undefined))];
  const others = names.length > TRIFLES_NAMED ? " and others" : "";
  return `${lines.length} of them: ${names.slice(0, TRIFLES_NAMED).join(", ")}${others}`;
};

/** What is wrong, and the lines it rests on. */
export type Headline = { readonly headline: string; readonly found: string };

/**
 * What is wrong in a few words made from what was found, and the three gravest lines with what was stated.
 *
 * @example headline(brakes, reports)
 * // { headline: "It pulls to one side under braking", found: "pull under braking: pulls right (stated: straight); …" }
 */
export const headline = (group: Group, reports: Reports): Headline => {
  const nobody = NOBODY[group.kind.id];
  if (nobody !== undefined) return { headline: nobody, found: unknownWords(group, reports) };
  if (group.kind.id === "small-things")
    return { headline: "Small things", found: smallWords(group, reports) };
  const found = foundWords(group, reports);
  const known = group.lines.filter(isFound);
  if (known.length > 0 && known.every(isOnlyParted)) {
    return { headline: `Not as stated: ${group.kind.name}`, found };
  }
  if (known.length > 0) {
    return { headline: leadOf(group, reports) + (isAdmitted(group) ? " (disclosed)" : ""), found };
  }
  const doubtful = group.lines.some(({ entry }) => entry.outcome === "doubtful");
  const why = doubtful ? "To be looked at again" : "Not shown to the inspector";
  return { headline: `${why}: ${group.kind.name}`, found };
};
