import { walkTable } from "../../testing/walk.ts";
import { COMPLAINT_STATES } from "./index.ts";

walkTable(COMPLAINT_STATES, [
  ["received", "open", "operator", "opened"],
  ["opened", "open", "operator", "opened"],
  ["answered", "open", "operator", "answered"],
  ["opened", "answer", "operator", "answered"],
]);
