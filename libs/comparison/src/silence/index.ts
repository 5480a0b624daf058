import { NotSeenReason } from "@evenhand/shared/answer";
import type { AnswerOf, Fault } from "@evenhand/shared/answer";
import type { Atom, LimitFigures } from "@evenhand/shared/comparison";
import type { Finding } from "@evenhand/shared/finding";
import type { Instrument } from "@evenhand/shared/report";
import type { Call } from "@evenhand/shared/severity";
import type { Item, ReadingSpec } from "@evenhand/shared/sheet";
import type { CallContext } from "@evenhand/sheet/call";
import { NOT_KNOWN } from "../compare-choice/index.ts";
import { deniedKinds } from "../compare-denials/index.ts";
import { faultAtom } from "../compare-faults/index.ts";
import { matchFaults } from "../fault-matches/index.ts";
import type { FaultFrame } from "../fault-matches/index.ts";
import { inOneShape, SEEN_SOUND } from "../judgment/index.ts";
import type { Judgment } from "../judgment/index.ts";
import { hasLimits, limitFigures } from "../limit-figures/index.ts";
import type { LimitSide } from "../limit-figures/index.ts";
import type { CorrectionOf } from "../corrections/index.ts";
import { readSide, sideEstimate } from "@evenhand/sheet/reading-side";

type Unseen = { readonly outcome: "unseen"; readonly direction: "neither"; readonly standing: "unseen" };
const UNSEEN: Unseen = { outcome: "unseen", direction: "neither", standing: "unseen" };

/** Whether an answer is a claim at all: "not seen" and "not known" are not. */
export const isClaim = (finding: Finding | undefined): boolean => {
  if (finding === undefined) return false;
  const { answer } = finding;
  switch (answer.kind) {
    case "not-seen":
      return false;
    case "working":
    case "presence":
      return answer.value !== NOT_KNOWN;
    case "choice":
      return answer.option !== NOT_KNOWN;
    default:
      return true;
  }
};

const wasSeen = (finding: Finding | undefined): boolean =>
  finding !== undefined && finding.answer.kind !== "not-seen";

const NOT_SEEN: ReadonlyMap<NotSeenReason, Judgment> = new Map(
  NotSeenReason.options.map((reason) => [reason, inOneShape({ ...UNSEEN, reason: `not-seen-${reason}` })]),
);
const NOT_KNOWN_NOR_STATED = inOneShape({ ...UNSEEN, reason: "not-known-nor-stated" });
const NOT_INSPECTED = inOneShape({ ...UNSEEN, reason: "stated-not-inspected" });
const NOT_REPORTED = inOneShape({ ...UNSEEN, reason: "not-reported" });

/** Why the inspection has nothing to say of it. */
const whyUnseen = (a: Finding | undefined, b: Finding | undefined): Judgment => {
  if (b?.answer.kind === "not-seen") return NOT_SEEN.get(b.answer.reason) ?? NOT_REPORTED;
  if (b !== undefined) return NOT_KNOWN_NOR_STATED;
  return wasSeen(a) ? NOT_INSPECTED : NOT_REPORTED;
};

const ONE_SIDED = { outcome: "unstated", direction: "neither", standing: "not-mentioned" } as const;
const BAD = inOneShape({ ...ONE_SIDED, reason: "found-bad-not-stated" });
const BAD_UNSEEN = inOneShape({ ...ONE_SIDED, reason: "found-bad-statement-unseen" });
const UNJUDGED = inOneShape({ ...ONE_SIDED, reason: "found-without-yardstick", marks: ["no-yardstick"] });
const UNJUDGED_UNSEEN = inOneShape({ ...UNJUDGED, reason: "found-without-yardstick-statement-unseen" });
const SOUND_UNSEEN = inOneShape({ ...SEEN_SOUND, reason: "seen-sound-statement-unseen" });

const whatTheStatementLeftOut = (a: Finding | undefined, call: Call): Judgment => {
  const unseen = a !== undefined && a.answer.kind === "not-seen";
  if (call === "good") return unseen ? SOUND_UNSEEN : SEEN_SOUND;
  if (call === "no-yardstick") return unseen ? UNJUDGED_UNSEEN : UNJUDGED;
  return unseen ? BAD_UNSEEN : BAD;
};

/**
 * What is to be said where one side at least is silent or did not see. Not seen by the inspection: unseen, whatever was stated.
 * Seen by the inspection alone: unstated where bad, or where nothing is there to judge it by; where good, seen, sound and not
 * stated, for coverage only.
 *
 * @param call what the inspection's answer is by itself
 * @example judgeSilence(undefined, hornDead, "danger").outcome // "unstated"
 */
export const judgeSilence = (a: Finding | undefined, b: Finding | undefined, call: Call): Judgment =>
  isClaim(b) ? whatTheStatementLeftOut(a, call) : whyUnseen(a, b);

/** By far the most frequent answer of faults. */
const NONE_AT_ALL = {
  a: [Object.freeze<Atom>({ of: "denial", kind: "all", by: "a" })],
  b: [Object.freeze<Atom>({ of: "denial", kind: "all", by: "b" })],
} as const;
const NO_FAULTS: readonly Fault[] = [];

/**
 * The atoms of an answer of faults that stands alone: each fault and each denied kind, in the sheet's order.
 *
 * @example faultAtoms({ kind: "faults", found: [], denied: "all" }, "b", frame)
 * // [{ of: "denial", kind: "all", by: "b" }]
 */
export const faultAtoms = (
  { found, denied }: Pick<AnswerOf<"faults">, "found" | "denied">,
  side: "a" | "b",
  frame: FaultFrame,
): readonly Atom[] => {
  if (denied === "all" && found.length === 0) return NONE_AT_ALL[side];
  const atoms: Atom[] = [];
  const [ofA, ofB] = side === "a" ? [found, NO_FAULTS] : [NO_FAULTS, found];
  for (const match of matchFaults(ofA, ofB, frame)) {
    const fault = found[match[side] ?? 0];
    if (fault !== undefined) atoms.push(faultAtom(match, fault));
  }
  for (const kind of deniedKinds({ denied }, frame)) atoms.push({ of: "denial", kind, by: side });
  return atoms;
};

/** One report as its readings are set against limits. */
type LimitsSide = {
  readonly instruments: ReadonlyMap<string, Instrument>;
  readonly corrected?: { readonly correctionOf: CorrectionOf } | undefined;
};

const limitSide = (
  finding: Finding | undefined,
  spec: ReadingSpec,
  { instruments, corrected }: LimitsSide,
): LimitSide | null => {
  if (finding?.answer.kind !== "reading") return null;
  const instrument = instruments.get(finding.instrument ?? "");
  const side = readSide(finding.answer, spec, instrument, corrected?.correctionOf(finding));
  return { estimate: sideEstimate(side, true), extremes: side };
};

/**
 * The limits of a reading only one side took; a reading that fails one was found bad.
 *
 * @returns none where the item has no limits in force
 */
export const limitsOfOne = (
  a: Finding | undefined,
  b: Finding | undefined,
  item: Item,
  sides: { readonly a: LimitsSide; readonly b: LimitsSide },
  contexts: { readonly a: CallContext; readonly b: CallContext },
): LimitFigures[] => {
  const spec = item.reading;
  if (spec === undefined) return [];
  const contextA = a === undefined ? undefined : contexts.a;
  const contextB = b === undefined ? undefined : contexts.b;
  if (!hasLimits(item, (contextA ?? contextB)?.position)) return [];
  return limitFigures(item, contextA, contextB, limitSide(a, spec, sides.a), limitSide(b, spec, sides.b));
};
