import type { Item } from "@evenhand/shared/sheet";
import { code, ranked, shouldNotBe, unranked } from "./answers.ts";
import { item, reading, words } from "./draft.ts";

const thermometer = {
  scatter: [0.5] as [number],
  instrument: ["contact thermometer", 0.1, [0.5, 0.005]] as [string, number, [number, number]],
};
const circumstance = { consequence: "papers", costRow: null, time: "drifts" } as const;

/** The circumstances everything else was seen in. */
export const visit: Item[] = [
  item("visit.light", words("light", undefined, ["lighting"]), "Note the light the body was looked at in.", {
    ...circumstance,
    core: true,
    circumstance: true,
    qualifies: { items: [], sections: ["body", "brightwork"] },
    minutes: 1,
    choice: unranked(
      ["daylight", "daylight"],
      ["overcast", words("overcast daylight")],
      ["indoor-bright", "bright lamps indoors"],
      ["indoor-dim", "dim lamps indoors"],
      ["dusk", "dusk or dark"],
    ),
  }),
  item(
    "visit.body-surface",
    words("body surface", undefined, ["dry, wet, dirty or covered"]),
    "Note whether the body was dry, wet, dirty or covered when it was looked at.",
    {
      ...circumstance,
      core: true,
      circumstance: true,
      qualifies: { items: [], sections: ["body", "brightwork", "gaps"] },
      minutes: 1,
      choice: unranked(["dry", "dry and clean"], ["wet", "wet"], ["dirty", "dirty"], ["covered", "covered"]),
    },
  ),
  item(
    "visit.ambient-temperature",
    words("ambient temperature", "outside temperature"),
    "Read a thermometer in the shade beside the car.",
    {
      ...circumstance,
      circumstance: true,
      minutes: 1,
      reading: reading({
        unit: "degC",
        alsoIn: ["degF"],
        delta: [3],
        ...thermometer,
        betterIs: "target",
        plausible: [-50, 60],
        typical: 18,
        ask: [1, 1],
        byEye: [6],
      }),
    },
  ),
  item(
    "visit.engine-cold",
    words("engine cold proof", undefined, ["block minus ambient"]),
    "Before anyone starts it, measure the block and take the ambient temperature away.",
    {
      ...circumstance,
      consequence: "mechanical",
      core: true,
      severity: "repair",
      qualifies: { items: ["road.cold-start", "engine.smoke-cold", "engine.noise"], sections: [] },
      minutes: 1,
      needs: ["cold-engine"],
      cautions: ["prop-hood"],
      reading: reading({
        unit: "K",
        alsoIn: [],
        delta: [4],
        ...thermometer,
        betterIs: "lower",
        plausible: [-30, 120],
        typical: 1,
        ask: [1, 1],
        byEye: [15],
      }),
    },
  ),
  item(
    "visit.battery-on-charger",
    words("battery on a charger beforehand"),
    "Ask, and look for clips or a lead.",
    {
      ...circumstance,
      consequence: "mechanical",
      severity: "repair",
      qualifies: {
        items: ["electrics.volts-rest", "electrics.volts-cranking", "road.cold-start"],
        sections: [],
      },
      minutes: 1,
      cautions: ["battery"],
      presence: shouldNotBe("on a charger", "off a charger"),
    },
  ),
  item(
    "visit.warmed-beforehand",
    words("engine warmed beforehand"),
    "Ask, and hold the back of a hand near hoses and exhaust.",
    {
      ...circumstance,
      consequence: "mechanical",
      severity: "repair",
      qualifies: { items: ["road.cold-start", "engine.smoke-cold", "engine.noise"], sections: [] },
      cautions: ["hot-parts"],
      minutes: 1,
      presence: shouldNotBe("warmed", "not warmed"),
    },
  ),
  item(
    "visit.washed-beforehand",
    words("engine or underside washed beforehand"),
    "Look for wet corners and fresh shine where leaks would show.",
    {
      ...circumstance,
      consequence: "mechanical",
      severity: "repair",
      qualifies: {
        items: [
          "driveline.leaks-before",
          "engine.radiator",
          "steering.box-leak",
          "driveline.pinion-seal",
          "brakes.master-cylinder",
        ],
        sections: [],
      },
      minutes: 1,
      presence: shouldNotBe("washed", "not washed"),
    },
  ),
  item("visit.plugs-allowed", words("removing spark plugs allowed"), "Ask the keeper before touching them.", {
    ...circumstance,
    circumstance: true,
    minutes: 1,
    needs: ["permission"],
    choice: unranked(["allowed", "allowed"], ["refused", "refused"]),
  }),
  item("visit.drums-allowed", words("opening drums allowed"), "Ask the keeper before touching them.", {
    ...circumstance,
    circumstance: true,
    minutes: 1,
    needs: ["permission"],
    cautions: ["lining-dust"],
    choice: unranked(["allowed", "allowed"], ["refused", "refused"]),
  }),
  item("visit.carpet-allowed", words("lifting carpet allowed"), "Ask the keeper before touching it.", {
    ...circumstance,
    circumstance: true,
    minutes: 1,
    needs: ["permission"],
    choice: unranked(["allowed", "allowed"], ["refused", "refused"]),
  }),
  item("visit.present", words("who was present"), "Write names and whom they are there for.", {
    ...circumstance,
    circumstance: true,
    minutes: 1,
    code: code("text"),
  }),
  item(
    "visit.calibration",
    words("instruments calibrated"),
    "Compare the calibration dates in the report's list of instruments with the visit.",
    {
      ...circumstance,
      circumstance: true,
      minutes: 2,
      choice: ranked(
        ["all-within-a-year", "all within a year"],
        ["some-within-a-year", "some within a year"],
        ["checked-by-user", "checked by the user only"],
        ["none", "none"],
      ),
    },
  ),
];
