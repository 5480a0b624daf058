import type { Item } from "@evenhand/shared/sheet";
import { code, faults, ranked, shouldBeAbsent, wear, works } from "./answers.ts";
import { item, reading, words } from "./draft.ts";
import type { ReadingDraft } from "./draft.ts";
import { doorSeverities, jambSeverities } from "./fault-severities.ts";

const mechanical = { consequence: "mechanical" } as const;
const caution = { cautions: ["prop-hood", "leave-closed"] };

const doorPlay: ReadingDraft = {
  unit: "mm",
  alsoIn: ["in", "1/32in"],
  delta: [3],
  scatter: [0.6],
  placement: 0.3,
  betterIs: "lower",
  plausible: [0, 80],
  typical: 2,
  ask: [2, 1],
  byEye: [4],
  instrument: ["steel rule", 0.5, [0.5]],
  riseAllowed: 0.2,
};

/** Doors and lids: hinges, latches, locks, supports, drains, jambs. */
export const doors: Item[] = [
  item(
    "doors.hinge-play",
    words("hinge play", undefined, ["worn hinges"]),
    "Lift the open door at its rear edge and measure the free movement.",
    {
      ...mechanical,
      positions: "doors",
      time: "only-rises",
      minutes: 4,
      costRow: "hinges",
      reading: reading(doorPlay),
    },
  ),
  item(
    "doors.drop",
    words("door drop", undefined, ["sagging door"]),
    "Close the door slowly and measure how far the striker lifts it.",
    {
      ...mechanical,
      positions: "doors",
      time: "only-rises",
      core: true,
      severity: "repair",
      minutes: 3,
      costRow: "hinges",
      reading: reading(doorPlay),
    },
  ),
  item(
    "doors.latches",
    words("latches", undefined, ["door catches", "strikers"]),
    "First and second catch, inside and outside handle.",
    {
      consequence: "safety",
      positions: "doors",
      minutes: 2,
      costRow: "latches",
      working: works,
    },
  ),
  item("doors.locks", words("door locks"), "Key and knob, both ways.", {
    ...mechanical,
    positions: "doors",
    equipment: true,
    minutes: 2,
    costRow: "latches",
    working: works,
  }),
  item(
    "doors.regulators",
    words("window regulators", "window winders", ["window cranks", "power windows"]),
    "Down and up fully; watch for tilting, listen for slipping teeth.",
    {
      ...mechanical,
      positions: "windows",
      equipment: true,
      minutes: 3,
      costRow: "regulators",
      working: works,
    },
  ),
  item(
    "doors.lid-latches",
    words("lid latches", undefined, ["hood latch", "safety catch", "trunk lock"]),
    "First and safety catch; the hood's safety catch must hold by itself.",
    {
      consequence: "safety",
      positions: "lids",
      minutes: 2,
      costRow: "latches",
      ...caution,
      working: { severity: "danger", at: { "trunk-lid": "repair", tailgate: "repair" } },
    },
  ),
  item(
    "doors.lid-hinges",
    words("lid hinges and fasteners", "lid hinges and fasteners", ["hood hinges"]),
    "Look for bent hinges and wear; the lid stands square when half open.",
    {
      ...mechanical,
      positions: "lids",
      time: "only-rises",
      minutes: 2,
      costRow: "hinges",
      ...caution,
      grade: wear,
    },
  ),
  item(
    "doors.extra-fasteners",
    words("extra lid fasteners", undefined, ["hood pins", "bonnet pins"]),
    "Look for pins, straps or screws the maker did not fit.",
    {
      consequence: "appearance",
      positions: "lids",
      severity: "small",
      minutes: 1,
      costRow: "panel-repair",
      presence: shouldBeAbsent,
    },
  ),
  item(
    "doors.lid-supports",
    words("lid supports", "lid stays", ["gas struts", "hood springs", "gas dampers"]),
    "The lid stays where it is let go; keep a hand on it.",
    {
      consequence: "safety",
      positions: "lids",
      severity: "repair",
      minutes: 1,
      costRow: "lid-supports",
      ...caution,
      working: works,
    },
  ),
  item(
    "doors.drains",
    words("drain channels", "drain holes", ["weep holes"]),
    "A thin plastic wire goes through; with the owner's word a little water poured in comes out.",
    {
      consequence: "structure",
      positions: "doors",
      severity: "repair",
      cautions: ["owners-word"],
      minutes: 4,
      costRow: "panel-repair",
      choice: ranked(
        ["open", "open"],
        ["partly", "partly blocked", "small"],
        ["blocked", "blocked", "repair"],
      ),
    },
  ),
  item(
    "doors.bottoms",
    words("door bottoms", undefined, ["door skin bottom", "lower door seam"]),
    "Feel along the lower seam from inside and outside.",
    {
      consequence: "structure",
      positions: "doors",
      time: "only-rises",
      minutes: 3,
      costRow: "panel-repair",
      cautions: ["lead-paint"],
      faults: faults(["corrosion", "perforation", "blister", "filler", "patch"], "length", doorSeverities),
    },
  ),
  item(
    "doors.jambs",
    words("door jambs", "door shuts", ["door openings"]),
    "Look at paint edges, overspray, seams and labels in each opening.",
    {
      consequence: "appearance",
      positions: "doors",
      minutes: 4,
      costRow: "paint-panel",
      cautions: ["lead-paint"],
      faults: faults(["overspray", "corrosion", "chip", "crack", "patch"], "panel", jambSeverities),
    },
  ),
  item(
    "doors.first-color",
    words("first color", "first colour", ["original color", "color change"]),
    "On a spot never painted over (behind a panel, under a seal), name the paint code the color answers to.",
    {
      consequence: "identity",
      severity: "worth",
      minutes: 5,
      costRow: null,
      code: code("paint-code"),
    },
  ),
];
