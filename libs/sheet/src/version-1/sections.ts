import type { Section } from "@evenhand/shared/sheet";
import { words } from "./draft.ts";

/** Sections in the order of the sheet. The order of a visit is another: see `needs` and the cautions. */
export const sections = [
  { id: "visit", number: 0, words: words("visit", undefined, ["circumstances"]) },
  { id: "identity", number: 1, words: words("identity and papers", undefined, ["documents", "numbers"]) },
  { id: "body", number: 2, words: words("body and paint", "bodywork and paint", ["panels"]) },
  { id: "gaps", number: 3, words: words("gaps and fit", "shut lines and fit", ["panel gaps"]) },
  {
    id: "brightwork",
    number: 4,
    words: words("brightwork, glass, seals", "brightwork, glass, rubbers", ["chrome", "trim"]),
  },
  { id: "doors", number: 5, words: words("doors and lids") },
  {
    id: "trunk",
    number: 6,
    words: words("trunk", "boot", ["luggage compartment", "cargo area"]),
    station: "trunk",
  },
  { id: "interior", number: 7, words: words("interior", "cabin", ["upholstery"]), station: "cabin" },
  {
    id: "electrics",
    number: 8,
    words: words("instruments and electrics", undefined, ["gauges", "electrical"]),
    station: "cabin",
  },
  {
    id: "underbody",
    number: 9,
    words: words("underbody and structure", "underside and structure", ["frame", "chassis"]),
    station: "under-middle",
  },
  {
    id: "driveline",
    number: 10,
    words: words("driveline underneath", "transmission underneath", ["drivetrain"]),
    station: "under-middle",
  },
  { id: "steering", number: 11, words: words("steering and suspension"), station: "under-front" },
  { id: "brakes", number: 12, words: words("brakes"), station: "under-middle" },
  { id: "wheels", number: 13, words: words("wheels and tires", "wheels and tyres") },
  {
    id: "engine",
    number: 14,
    words: words("engine bay", undefined, ["engine compartment", "under the hood"]),
    station: "engine-bay",
  },
  { id: "road", number: 15, words: words("road", undefined, ["test drive", "road test"]), station: "cabin" },
] satisfies Section[];
