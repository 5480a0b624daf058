import type { Item } from "@evenhand/shared/sheet";
import { faults, ranked, shouldBePresent, wear } from "./answers.ts";
import { item, words } from "./draft.ts";
import { metalFaults } from "./fault-kinds.ts";
import { floorSeverities } from "./fault-severities.ts";

const shut: Pick<Item, "consequence" | "time" | "cautions"> = {
  consequence: "structure",
  time: "only-rises",
  cautions: ["prop-hood", "lead-paint"],
};

/** Trunk or cargo space, mat up. */
export const trunk: Item[] = [
  item(
    "trunk.floor",
    words("trunk floor", "boot floor", ["load floor"]),
    "Lift the mat; look at the floor from above, later from below.",
    {
      ...shut,
      core: true,
      minutes: 3,
      costRow: "trunk-floor",
      faults: faults(metalFaults, "panel", floorSeverities),
    },
  ),
  item(
    "trunk.wheel-wells",
    words("wheel wells", "wheel arches, inside", ["inner wheelhouse"]),
    "Look behind the lining at each wheel well and its joint to the quarter panel.",
    {
      ...shut,
      positions: "sides",
      minutes: 3,
      costRow: "wheelhouse",
      faults: faults(metalFaults, "length", floorSeverities),
    },
  ),
  item(
    "trunk.lid-underside",
    words("lid underside", undefined, ["inner lid frame"]),
    "Look along the inner frame and the rolled edge.",
    {
      ...shut,
      minutes: 2,
      costRow: "panel-repair",
      faults: faults(["corrosion", "perforation", "overspray", "crack", "patch"], "panel", floorSeverities),
    },
  ),
  item(
    "trunk.channels",
    words("trunk channels", "boot gutters", ["drip rail", "trunk gutter"]),
    "Look beneath the seal, corners first.",
    {
      ...shut,
      minutes: 2,
      costRow: "panel-repair",
      faults: faults(["corrosion", "perforation", "patch", "filler"], "length", floorSeverities),
    },
  ),
  item(
    "trunk.lining",
    words("trunk lining", "boot lining", ["trunk mat"]),
    "Grade mat, boards and side linings.",
    {
      consequence: "appearance",
      time: "only-rises",
      equipment: true,
      minutes: 1,
      costRow: "trim-interior",
      grade: wear,
    },
  ),
  item(
    "trunk.spare",
    words("spare wheel", undefined, ["spare tire", "spare tyre"]),
    "See it; its size and number go with the tires.",
    {
      consequence: "papers",
      severity: "small",
      equipment: true,
      minutes: 1,
      costRow: "tire",
      presence: shouldBePresent,
    },
  ),
  item(
    "trunk.jack",
    words("jack and tools", undefined, ["wheel wrench", "wheel brace"]),
    "See jack, handle and wrench.",
    {
      consequence: "papers",
      severity: "small",
      equipment: true,
      minutes: 1,
      costRow: "tools",
      cautions: ["jack-alone"],
      presence: shouldBePresent,
    },
  ),
  item(
    "trunk.damp",
    words("damp in the trunk", "damp in the boot", ["water leak"]),
    "Feel mat, corners and spare well.",
    {
      consequence: "structure",

      severity: "repair",
      cautions: ["rodent-nests"],
      minutes: 1,
      costRow: "seals",
      choice: ranked(["dry", "dry"], ["damp", "damp", "repair"], ["wet", "standing water", "repair"]),
    },
  ),
];
