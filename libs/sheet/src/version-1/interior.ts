import type { Item } from "@evenhand/shared/sheet";
import { code, faults, ranked, shouldBeAbsent, unranked, wear, works } from "./answers.ts";
import { item, reading, words } from "./draft.ts";
import { clothFaults } from "./fault-kinds.ts";
import { openBodies } from "./place.ts";
import { trifles } from "./fault-severities.ts";

const worn = { consequence: "appearance", time: "only-rises" } as const;
const trim = { ...worn, costRow: "trim-interior" } as const;

/** Cabin: cloth, wood, belts, water. */
export const interior: Item[] = [
  item(
    "interior.seats",
    words("seats", undefined, ["upholstery", "leather", "vinyl"]),
    "Grade covers, piping, foam of each seat.",
    {
      ...trim,
      positions: "seats",
      core: true,
      severity: "repair",
      minutes: 2,
      grade: wear,
    },
  ),
  item(
    "interior.seat-faults",
    words("seat faults", undefined, ["split seam", "torn seat"]),
    "Write tears, burns and stains with their place.",
    {
      ...trim,
      positions: "seats",
      minutes: 3,
      faults: faults(clothFaults, "seat", trifles),
    },
  ),
  item(
    "interior.seat-adjusters",
    words("seat adjusters and anchors", "seat runners and anchors", ["seat tracks"]),
    "Slide, tilt, lock; push hard: the anchors must not move.",
    {
      consequence: "safety",
      positions: "seats",
      cautions: ["old-battery"],
      minutes: 2,
      costRow: "seat-hardware",
      working: works,
    },
  ),
  item(
    "interior.trim-history",
    words("interior trim history", undefined, ["retrimmed", "original interior", "reupholstered"]),
    "Say what is claimed; where retrimmed, wear says nothing about miles.",
    {
      consequence: "appearance",
      severity: "repair",
      minutes: 2,
      costRow: "trim-interior",
      choice: ranked(
        ["original", "original"],
        ["part-retrimmed", "part retrimmed", "no-yardstick"],
        ["retrimmed-right", "retrimmed in the right pattern", "no-yardstick"],
        ["retrimmed-other", "retrimmed in another pattern", "repair"],
      ),
    },
  ),
  item(
    "interior.carpet",
    words("carpet", undefined, ["floor mats"]),
    "Grade pile, fade, edges; lift a corner where allowed.",
    {
      ...trim,
      positions: "carpets",
      cautions: ["old-battery"],
      minutes: 2,
      needs: ["permission"],
      grade: wear,
    },
  ),
  item(
    "interior.headliner",
    words("headliner", "headlining", ["roof lining"]),
    "Grade cloth, seams and sag.",
    { ...trim, equipment: true, minutes: 1, grade: wear },
  ),
  item(
    "interior.dash-top",
    words("dash top", "dashboard top", ["dash pad"]),
    "Grade the top: cracks, lift, fade.",
    { ...trim, minutes: 1, grade: wear },
  ),
  item(
    "interior.door-panels",
    words("door panels", "door cards", ["door trim"]),
    "Grade each panel and its pulls.",
    { ...trim, positions: "doors", minutes: 2, grade: wear },
  ),
  item("interior.console", words("console", "centre console"), "Grade surface, lid and lever gate.", {
    ...trim,
    equipment: true,
    minutes: 1,
    grade: wear,
  }),
  item(
    "interior.steering-wheel",
    words("steering wheel rim", undefined, ["rim wear"]),
    "Grade grip, cracks, spokes; an airbag stays closed.",
    {
      ...trim,
      minutes: 1,
      cautions: ["leave-closed"],
      grade: wear,
    },
  ),
  item(
    "interior.steering-wheel-diameter",
    words("steering wheel diameter"),
    "Across the rim, outside to outside: it sets the free play allowed.",
    {
      consequence: "safety",
      severity: "repair",
      minutes: 1,
      costRow: null,
      reading: reading({
        unit: "in",
        alsoIn: ["mm"],
        delta: [0.25],
        scatter: [0.03],
        betterIs: "target",
        plausible: [8, 30],
        typical: 16,
        ask: [1, 1],
        byEye: [1],
        instrument: ["steel tape", 0.0625, [0.05]],
      }),
    },
  ),
  item(
    "interior.pedals",
    words("pedal wear", undefined, ["pedal rubbers", "pedal pads"]),
    "Grade each pad or bare metal; it should fit the miles.",
    {
      ...worn,
      positions: "pedals",
      minutes: 1,
      costRow: "trim-interior",
      grade: wear,
    },
  ),
  item(
    "interior.belt-webbing",
    words("seat belt webbing", undefined, ["seat belts", "safety belts"]),
    "Pull each out fully: cuts, fray, fade, stiff edges.",
    {
      consequence: "safety",
      time: "only-rises",
      positions: "belts",
      core: true,
      equipment: true,
      appliesWhen: { seatBelts: ["yes"] },
      minutes: 1,
      costRow: "belts-seat",
      grade: wear,
    },
  ),
  item(
    "interior.belt-latch",
    words("seat belt latch", "seat belt buckle"),
    "Click, tug, release; a retractor must lock on a jerk.",
    {
      consequence: "safety",
      positions: "belts",
      core: true,
      equipment: true,
      appliesWhen: { seatBelts: ["yes"] },
      minutes: 1,
      costRow: "belts-seat",
      working: works,
    },
  ),
  item("interior.belt-date", words("seat belt date"), "Copy the date from the label.", {
    consequence: "identity",
    positions: "belts",
    severity: "small",
    equipment: true,
    appliesWhen: { seatBelts: ["yes"] },
    minutes: 2,
    costRow: null,
    code: code("date-code"),
  }),
  item(
    "interior.smell",
    words("smell", undefined, ["musty", "mildew", "odor"]),
    "Doors shut for some minutes beforehand; first breath counts.",
    {
      consequence: "structure",

      core: true,
      severity: "repair",
      cautions: ["rodent-nests"],
      minutes: 1,
      costRow: "trim-interior",
      choice: {
        ...unranked(
          ["none", "none out of place"],
          ["smoke", "tobacco smoke", "small"],
          ["musty", "musty", "bad"],
          ["fuel", words("fuel", "petrol"), "danger"],
          ["exhaust", "exhaust", "danger"],
          ["burnt", "burnt wiring", "danger"],
          ["perfumed", "heavy perfume", "repair"],
        ),
        several: true,
      },
    },
  ),
  item(
    "interior.water-marks",
    words("water marks", undefined, ["tide marks"]),
    "Look at headliner edges, kick panels, below the rear window.",
    {
      consequence: "structure",
      severity: "repair",
      minutes: 2,
      costRow: "seals",
      presence: shouldBeAbsent,
    },
  ),
  item(
    "interior.flood-line",
    words("flood line", undefined, ["flood damage"]),
    "Look behind door panels and seats for one level line.",
    {
      consequence: "structure",
      core: true,
      severity: "halt",
      minutes: 2,
      costRow: "trim-interior",
      presence: shouldBeAbsent,
    },
  ),
  item(
    "interior.silt",
    words("silt", undefined, ["mud residue"]),
    "Look in seat tracks, belt reels, below the carpet, in lamp bowls.",
    {
      consequence: "structure",
      severity: "halt",
      minutes: 2,
      cautions: ["rodent-nests", "old-battery"],
      costRow: "trim-interior",
      presence: shouldBeAbsent,
    },
  ),
  item(
    "interior.top",
    words("convertible top", "hood", ["soft top", "drop top"]),
    "Grade cloth, window and frame, raised and folded.",
    {
      ...worn,
      positions: "top-parts",
      severity: "repair",
      minutes: 4,
      costRow: "convertible-top",
      appliesWhen: openBodies,
      grade: wear,
    },
  ),
];
