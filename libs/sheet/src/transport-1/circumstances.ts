import type { Item } from "@evenhand/shared/sheet";
import { unranked } from "../version-1/answers.ts";
import { item, words } from "../version-1/draft.ts";

const circumstance = {
  consequence: "papers",
  costRow: null,
  time: "drifts",
  stage: "cold",
  depth: "first-look",
  place: "nose",
  core: true,
  circumstance: true,
  minutes: 0.25,
} as const;

/** Everything that is looked at for damage; what works, what is there and what is read is not spoiled by the dark. */
const outside = ["body", "brightwork", "wheels"];

/** What the car was seen in: where it was dark, wet or dirty, what is looked at was not seen, and is never called sound. */
export const circumstances: Item[] = [
  item("visit.light", words("light", undefined, ["lighting"]), "Say what light the car was looked at in.", {
    ...circumstance,
    qualifies: {
      items: [],
      sections: [...outside, "interior", "underbody"],
      unseen: { dim: "dark", dark: "dark" },
    },
    choice: unranked(
      ["daylight", "daylight"],
      ["lamps", words("bright lamps all around")],
      ["dim", "dusk or dim lamps"],
      ["dark", "dark"],
    ),
  }),
  item(
    "visit.body-surface",
    words("surface", undefined, ["dry, wet, dirty or covered"]),
    "Say whether the car was clean and dry, wet, dirty or covered; wiping grit off scratches paint, so leave it.",
    {
      ...circumstance,
      qualifies: { items: [], sections: outside, unseen: { wet: "wet", dirty: "dirty", covered: "covered" } },
      choice: unranked(
        ["dry", "clean and dry"],
        ["wet", "wet, or snow on it"],
        ["dirty", "dirty"],
        ["covered", "under a cover"],
      ),
    },
  ),
];
