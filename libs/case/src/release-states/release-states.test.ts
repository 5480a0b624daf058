import { walkTable } from "../../testing/walk.ts";
import { RELEASE_STATES } from "./index.ts";

walkTable(RELEASE_STATES, [
  ["released", "accept", "dealer", "accepted"],
  ["released", "contest", "dealer", "contested"],
]);
