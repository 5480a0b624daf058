import { type ReleaseAnswer, ReleaseState } from "@evenhand/shared/http/releases";
import type { StateTable } from "../state-table/index.ts";

/** An entry laid before the dealer, who answers it once; that stands. */
export const RELEASE_STATES: StateTable<ReleaseState, ReleaseAnswer["answer"], "buyer" | "dealer"> = {
  states: ReleaseState.options,
  moves: ["accept", "contest"],
  actors: ["buyer", "dealer"],
  first: ["released"],
  rows: [
    { move: "accept", from: ["released"], to: "accepted", actors: ["dealer"] },
    { move: "contest", from: ["released"], to: "contested", actors: ["dealer"] },
  ],
};
