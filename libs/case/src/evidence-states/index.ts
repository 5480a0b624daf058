import { EvidenceMove, EvidenceState } from "@evenhand/shared/evidence";
import type { StateTable } from "../state-table/index.ts";

/**
 * A file on its way to being evidence. Its owner sends the bytes; a worker finds out what they are, keeps them, and makes what is
 * shown. Whatever a worker finds wrong, before or after keeping it, ends it with a reason.
 */
export const EVIDENCE_STATES: StateTable<EvidenceState, EvidenceMove, "owner" | "worker"> = {
  states: EvidenceState.options,
  moves: EvidenceMove.options,
  actors: ["owner", "worker"],
  first: ["arriving"],
  rows: [
    { move: "arrive", from: ["arriving"], to: "pending", actors: ["owner"] },
    { move: "check", from: ["pending"], to: "checked", actors: ["worker"] },
    { move: "prepare", from: ["checked"], to: "ready", actors: ["worker"] },
    { move: "refuse", from: ["pending", "checked"], to: "refused", actors: ["worker"] },
  ],
};
