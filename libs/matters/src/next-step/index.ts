import { defineMessages } from "@evenhand/message/define-messages";
import type { Matter, NextStep } from "@evenhand/shared/matter";
import type { Severity } from "@evenhand/shared/severity";
import type { Group, Line } from "../join/line.ts";
import { isUnknown } from "../weight/index.ts";

const messages = defineMessages("next-step", {
  "see-paper": "See the paper before any money moves",
  ask: "Ask the dealer",
  "look-again": "Have it looked at again",
  "open-up": "Have it opened",
  bargain: "Take it into the price",
  "do-not-drive": "Do not drive it until it is put right",
});

const BY_SEVERITY: Readonly<Record<Severity, NextStep>> = {
  halt: "ask",
  danger: "do-not-drive",
  worth: "bargain",
  repair: "bargain",
  small: "ask",
};

const SEVERITY_BY_RANK: readonly Severity[] = ["halt", "danger", "worth", "repair", "small"];

const isOpen = ({ entry }: Line): boolean => isUnknown(entry) || entry.outcome === "doubtful";

const stepOf = (group: Group): NextStep => {
  const { kind, lines } = group;
  if (kind.step !== undefined) return kind.step;
  if (lines.every(isOpen)) return kind.family === "papers" ? "see-paper" : "look-again";
  const severity = SEVERITY_BY_RANK[Math.floor(group.weight)] ?? "small";
  if (kind.family === "papers") return "see-paper";
  return kind.family === "numbers" && severity === "worth" ? "ask" : BY_SEVERITY[severity];
};

/** Minutes that looking at the open ones of some lines takes. */
const minutesOf = (lines: readonly Line[]): number => {
  let minutes = 0;
  for (const line of lines) if (isOpen(line)) minutes += line.of?.minutes ?? 0;
  return Math.max(1, Math.round(minutes));
};

/**
 * What to do about a matter: see the paper, ask, look again (with the minutes its open lines take), open up, bargain or not drive.
 *
 * @example nextStep(brakes) // { step: "do-not-drive", words: "Do not drive it until it is put right" }
 */
export const nextStep = (group: Group): Matter["next"] => {
  const step = stepOf(group);
  const words = messages.say(step);
  return step === "look-again" || step === "open-up"
    ? { step, words, minutes: minutesOf(group.lines) }
    : { step, words };
};
