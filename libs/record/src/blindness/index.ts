import { Answer } from "@evenhand/shared/answer";
import type { Report } from "@evenhand/shared/report";
import type { WithheldReport } from "@evenhand/shared/http/reports";
import { canonicalJson } from "../canonical-json/index.ts";
import { type Place, placeKey } from "../place/index.ts";

/**
 * What an inspection firm may be shown of the statements on a car it works on, and which of its findings were made blind.
 * Every showing is kept by place (car, firm, item, position, when, through which door); these functions decide, the service
 * stores and asks.
 */

/** While a firm's order on a car is in one of these states, nothing a statement says of that car may reach the firm. */
export const blindStates = ["ordered", "accepted"] as const;
type BlindState = (typeof blindStates)[number];
const isBlindState = (state: string): state is BlindState => blindStates.some((each) => each === state);

/** Through what something of a statement can be shown. */
export const doors = [
  "statement",
  "draft",
  "share-link",
  "comparison",
  "question",
  "release",
  "summary",
  "car",
] as const;
export type Door = (typeof doors)[number];

/** Stands for every place of a car: a statement shown whole is a statement shown at each of them, the silent ones too. */
export const wholeCar: Place = { item: "", position: "" };

/**
 * Does a committed answer open its place, so that what was stated there may be shown? Only one that says something: whoever
 * writes "not seen", "not known", or faults with none found and none denied, has committed to nothing, and neither has whoever
 * left what cannot be read as an answer.
 *
 * @param answer as stored: anything
 * @example opensPlace({ kind: "not-seen", reason: "no-time" }) // false
 * @example opensPlace({ kind: "working", value: "no" }) // true
 */
export const opensPlace = (answer: unknown): boolean => {
  const read = Answer.safeParse(answer);
  return read.success && saysSomething(read.data);
};

const saysSomething = (answer: Answer): boolean => {
  switch (answer.kind) {
    case "not-seen":
      return false;
    case "working":
    case "presence":
      return answer.value !== "not-known";
    case "choice":
      return answer.option !== "not-known";
    case "faults":
      return answer.found.length > 0 || answer.denied === "all" || answer.denied.length > 0;
    default:
      return true;
  }
};

/** An order of a firm on the car, and what stands committed in its report. */
export type Work = {
  readonly state: string;
  readonly committed: readonly (Place & { readonly answer: unknown })[];
};

/**
 * What of a car's statements may be shown to people whose firms have these orders on it: all of it where no order asks for
 * blindness; otherwise the places that are answered in every order that does, since a firm with two orders on one car would
 * else read in the one what it is to find in the other.
 *
 * @param works every order on the car of every inspection firm the person belongs to
 * @example showable([{ state: "reported", committed: [] }]) // 'whole'
 * @example showable([{ state: "accepted", committed: [] }]) // []
 */
export const showable = (works: readonly Work[]): "whole" | Place[] => {
  const [first, ...others] = works.filter(({ state }) => isBlindState(state));
  if (first === undefined) return "whole";
  const open = ({ committed }: Work): Place[] => committed.filter(({ answer }) => opensPlace(answer));
  const elsewhere = others.map((work) => new Set(open(work).map(placeKey)));
  return open(first)
    .filter((place) => elsewhere.every((places) => places.has(placeKey(place))))
    .map(({ item, position }) => ({ item, position }));
};

type Named = { readonly id: string };
const used = <T extends Named>(list: readonly T[], ids: readonly (string | undefined)[]): T[] =>
  list.filter(({ id }) => ids.includes(id));

/**
 * A statement with what may not be shown left out: where it speaks stays, nothing of what it says does. Instruments, persons
 * and scales stay where a shown finding names them: the rest would tell how the hidden answers were come by.
 *
 * @param open the places that may be shown
 */
export const withhold = (statement: Report, open: readonly Place[]): WithheldReport => {
  const places = new Set(open.map(placeKey));
  const isOpen = (place: Place): boolean => places.has(placeKey(place));
  const findings = statement.findings.filter(isOpen);
  const grades = findings.flatMap(({ answer }) => (answer.kind === "grade" ? [answer.scale] : []));
  return {
    format: "evenhand-report-withheld",
    version: 1,
    kind: statement.kind,
    sheet: statement.sheet,
    vehicle: statement.vehicle,
    author: statement.author,
    instruments: used(
      statement.instruments,
      findings.map(({ instrument }) => instrument),
    ),
    persons: used(
      statement.persons,
      findings.map(({ person }) => person),
    ),
    scales: used(statement.scales, grades),
    findings,
    withheld: statement.findings
      .filter((finding) => !isOpen(finding))
      .map(({ item, position }) => ({ item, position })),
  };
};

/** What a finding said before, and whether that was blind; absent where nothing stood there. */
export type Before = { readonly answer: unknown; readonly blind?: boolean | undefined };

/**
 * Is an answer blind: committed before anything stated of its place was shown to the firm, in any report of the car and
 * through any door? An answer that stands unchanged stays what it was, so that a note or a photograph added later takes
 * nothing from it; any other answer is judged by what had been shown when it was committed.
 *
 * @param shown every place shown to the firm up to this commit; `wholeCar` among them for a statement shown whole
 * @example isBlind({ place: { item: "electrics.horn", position: "" }, answer: {}, shown: [], before: null }) // true
 */
export const isBlind = (commit: {
  readonly place: Place;
  readonly answer: unknown;
  readonly shown: readonly Place[];
  readonly before: Before | null;
}): boolean => {
  const { place, answer, shown, before } = commit;
  if (before?.blind !== undefined && canonicalJson(before.answer) === canonicalJson(answer))
    return before.blind;
  const places = new Set(shown.map(placeKey));
  return !places.has(placeKey(wholeCar)) && !places.has(placeKey(place));
};
