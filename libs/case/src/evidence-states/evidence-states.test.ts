import { walkTable } from "../../testing/walk.ts";
import { EVIDENCE_STATES } from "./index.ts";

walkTable(EVIDENCE_STATES, [
  ["arriving", "arrive", "owner", "pending"],
  ["pending", "check", "worker", "checked"],
  ["pending", "refuse", "worker", "refused"],
  ["checked", "prepare", "worker", "ready"],
  ["checked", "refuse", "worker", "refused"],
]);
