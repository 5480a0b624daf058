import { ComplaintState } from "@evenhand/shared/http/complaints";
import type { StateTable } from "../state-table/index.ts";

/** A complaint is read by whoever opens it and says why, and answered by one who has; one answered can still be opened and read. */
export const COMPLAINT_STATES: StateTable<ComplaintState, "open" | "answer", "author" | "operator"> = {
  states: ComplaintState.options,
  moves: ["open", "answer"],
  actors: ["author", "operator"],
  first: ["received"],
  rows: [
    { move: "open", from: ["received", "opened"], to: "opened", actors: ["operator"] },
    { move: "open", from: ["answered"], to: "answered", actors: ["operator"] },
    { move: "answer", from: ["opened"], to: "answered", actors: ["operator"] },
  ],
};
