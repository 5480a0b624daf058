import type { Item } from "@evenhand/shared/sheet";
import { code, faults, ranked, wear } from "./answers.ts";
import { item, words } from "./draft.ts";
import { chromeFaults, glassFaults } from "./fault-kinds.ts";
import { brightSeverities, glassSeverities, trifles } from "./fault-severities.ts";

const outside = {
  consequence: "appearance",
  time: "only-rises",
  needs: ["daylight" as const],
} as const satisfies Partial<Item>;

/** Bright parts, glass and seals. */
export const brightwork: Item[] = [
  item(
    "brightwork.bumpers",
    words("bumpers", undefined, ["chrome bumpers"]),
    "Grade the plating front and rear, from a pace away.",
    {
      ...outside,
      needs: ["daylight"],
      positions: "ends",
      severity: "repair",
      equipment: true,
      minutes: 2,
      costRow: "chrome",
      grade: wear,
    },
  ),
  item(
    "brightwork.bumper-faults",
    words("bumper faults"),
    "Write dents, pitting and corrosion of each bumper, brackets too.",
    {
      ...outside,
      needs: ["daylight"],
      positions: "ends",
      minutes: 3,
      costRow: "chrome",
      faults: faults([...chromeFaults, "bend"], "length", brightSeverities),
    },
  ),
  item("brightwork.grille", words("grille", "radiator grille"), "Grade plating and bars.", {
    ...outside,
    needs: ["daylight"],
    severity: "repair",
    minutes: 1,
    costRow: "chrome",
    grade: wear,
  }),
  item(
    "brightwork.moldings",
    words("moldings", "mouldings", ["trim strips", "side trim"]),
    "Grade the bright strips of each side: dents, scratches, fixing.",
    {
      ...outside,
      needs: ["daylight"],
      positions: "sides",
      equipment: true,
      minutes: 2,
      costRow: "trim",
      grade: wear,
    },
  ),
  item(
    "brightwork.emblems",
    words("emblems", "badges", ["nameplates", "scripts"]),
    "Count them against the maker's pictures.",
    {
      ...outside,
      needs: [],
      equipment: true,
      minutes: 2,
      costRow: "trim",
      choice: {
        ...ranked(
          ["complete-original", "complete, original"],
          ["complete-reproduction", "complete, some reproduction"],
          ["incomplete", "some missing", "small"],
        ),
        weakerIsNotOtherwise: true,
        refutes: { "complete-reproduction": ["complete-original"] },
      },
    },
  ),
  item(
    "brightwork.lenses",
    words("lamp lenses", "lamp glasses", ["light lenses"]),
    "Look at every lens for cracks, fading and a maker's mark.",
    {
      ...outside,
      needs: [],
      positions: "ends",
      minutes: 2,
      costRow: "lamps",
      faults: faults(["crack", "fading", "chip", "missing-piece"], "length", trifles),
    },
  ),
  item(
    "brightwork.mirrors",
    words("outside mirrors", "door mirrors", ["wing mirrors"]),
    "Grade housing and glass of each.",
    {
      ...outside,
      needs: [],
      positions: "sides",
      equipment: true,
      minutes: 1,
      costRow: "trim",
      grade: wear,
    },
  ),
  item(
    "brightwork.glass-faults",
    words("glass faults", undefined, ["windshield crack", "stone chip in the glass", "milky glass"]),
    "Look through and along each pane for chips, cracks, clouded edges, scratches.",
    {
      ...outside,
      needs: ["daylight"],
      positions: "glasses",
      consequence: "safety",
      core: true,
      minutes: 3,
      costRow: "glass",
      faults: faults(glassFaults, "glass", glassSeverities),
    },
  ),
  item(
    "brightwork.glass-date",
    words("glass maker's date", undefined, ["glass date code", "date-coded glass"]),
    "Copy the maker's mark and date etched in each pane.",
    {
      ...outside,
      needs: [],
      time: "steady",
      positions: "glasses",
      consequence: "identity",
      severity: "small",
      minutes: 5,
      costRow: null,
      code: code("date-code"),
    },
  ),
  item(
    "brightwork.seals",
    words("seals", "rubbers", ["weatherstrip", "weatherstripping", "window rubber"]),
    "Grade each seal: soft, hard, torn, pulled away.",
    {
      ...outside,
      needs: [],
      positions: "seals",
      severity: "repair",
      equipment: true,
      minutes: 5,
      costRow: "seals",
      grade: wear,
    },
  ),
];
