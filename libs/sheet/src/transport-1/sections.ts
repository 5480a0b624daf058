import type { Section } from "@evenhand/shared/sheet";
import { words } from "../version-1/draft.ts";

/** In the order a driver works: what it was seen in, the figures, what goes along, moving it, and then once around the car. */
export const sections = [
  { id: "visit", number: 0, words: words("light and surface", undefined, ["circumstances"]) },
  { id: "identity", number: 1, words: words("odometer, fuel, keys"), station: "cabin" },
  { id: "contents", number: 2, words: words("what travels with the car"), station: "cabin" },
  { id: "road", number: 3, words: words("can it be moved"), station: "cabin" },
  { id: "lashing", number: 4, words: words("loading and lashing"), station: "under-middle" },
  { id: "body", number: 5, words: words("body panels"), station: "nose" },
  { id: "brightwork", number: 6, words: words("glass and outer parts"), station: "windshield" },
  { id: "wheels", number: 7, words: words("wheels and tires", "wheels and tyres"), station: "left-fender" },
  { id: "interior", number: 8, words: words("inside"), station: "cabin" },
  { id: "underbody", number: 9, words: words("underside from outside"), station: "under-middle" },
] satisfies Section[];
