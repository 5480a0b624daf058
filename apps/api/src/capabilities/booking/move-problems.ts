import type { MoveRefusal, Shortfall } from "@evenhand/booking/appointment";
import type { BriefRefusal } from "@evenhand/booking/brief";
import { ProblemError } from "../../platform/problems/problem-error.ts";
import { instant, refusedBody } from "./bodies.ts";

/** A shortfall as the interface gives it: instants in words. */
function shortfallBody(shortfall: Shortfall): Record<string, unknown> {
  if ("until" in shortfall) return { ...shortfall, until: instant(shortfall.until) };
  if ("from" in shortfall) return { ...shortfall, from: instant(shortfall.from) };
  if (shortfall.code === "hour-free") return { ...shortfall, reasons: shortfall.reasons.map(refusedBody) };
  if (shortfall.code !== "road-cleared") return { ...shortfall };
  const shortfalls = shortfall.shortfalls.map((each) =>
    "validUntil" in each ? { ...each, validUntil: instant(each.validUntil) } : each,
  );
  return { ...shortfall, shortfalls };
}

/** Why a move was refused, with what would work. */
export function moveProblem(refusal: MoveRefusal): ProblemError {
  if (refusal.code === "ended")
    return new ProblemError("appointment-ended", `It is ${refusal.state}; book another hour.`, {
      members: { state: refusal.state },
    });
  if (refusal.code === "no-such-move") {
    const { state, moves, actors, states } = refusal;
    const works = moves.length === 0 ? "It waits for somebody else." : `What works now: ${moves.join(", ")}.`;
    return new ProblemError("appointment-state", `It is ${state}. ${works}`, {
      members: { state, moves, actors, states },
    });
  }
  return new ProblemError("appointment-conditions", "Something is missing first; each thing is named.", {
    members: { shortfalls: refusal.shortfalls.map(shortfallBody) },
  });
}

export function briefProblem(refusal: BriefRefusal): ProblemError {
  const body =
    refusal.code === "too-late"
      ? { ...refusal, until: instant(refusal.until) }
      : refusal.code === "hour-does-not-hold-it"
        ? { ...refusal, reasons: refusal.reasons.map(refusedBody) }
        : refusal;
  const words: Record<BriefRefusal["code"], string> = {
    "too-late": "The brief can be changed until a day before the visit.",
    "nothing-proposed": "No change of the brief waits for an answer.",
    "nothing-changed": "That is the brief as it stands.",
    "item-twice": "An item stands in the brief once.",
    "core-left-out": "What the depth of the visit asks stays in the brief.",
    "hour-does-not-hold-it": "The booked hour does not hold this; move the visit, or choose less.",
  };
  return new ProblemError("brief-refused", words[refusal.code], { members: { refusal: body } });
}
