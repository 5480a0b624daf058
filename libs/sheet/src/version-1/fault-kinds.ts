import type { Severity } from "@evenhand/shared/severity";
import type { FaultKind, Words } from "@evenhand/shared/sheet";
import { words } from "./draft.ts";

type Stage = readonly [family: string, rank: number, severity: Severity];

/**
 * Extent is the greatest length in mm; δ and the accuracy by eye are ±(absolute + share). What is no stage of another thing is
 * its own family. Common practice, no source.
 */
function kind(
  id: string,
  named: Words,
  delta: [number, number],
  byEye: [number, number],
  [family, rank, severity]: Stage,
): FaultKind {
  return {
    id,
    words: named,
    unit: "mm",
    delta: { absolute: delta[0], share: delta[1] },
    byEye: { absolute: byEye[0], share: byEye[1] },
    family,
    rank,
    severity,
    ...(["perforation", "crack", "weld-crack"].includes(id) ? { neverTrifling: true } : {}),
  };
}

const broad = (id: string, named: Words, severity: Severity = "repair", family = id, rank = 0) =>
  kind(id, named, [25, 0.5], [4, 0.1], [family, rank, severity]);
const small = (id: string, named: Words, severity: Severity = "small", family = id, rank = 0) =>
  kind(id, named, [10, 0.5], [1.5, 0.1], [family, rank, severity]);

/** Damage is written in words, never in letters. */
export const faultKinds: FaultKind[] = [
  broad("dent", words("dent", undefined, ["crease"]), "repair", "dent", 1),
  small("ding", words("ding", "parking dent", ["door ding"]), "small", "dent", 0),
  broad("scratch", words("scratch", undefined, ["scrape", "scuff"]), "small", "scratch", 1),
  small("chip", words("chip", "stone chip"), "small", "scratch", 0),
  broad("crack", words("crack")),
  broad("crazing", words("crazing", "micro-blistering and crazing", ["checking"])),
  broad("blister", words("blister", undefined, ["bubble", "bubbling"]), "repair", "rust", 0),
  broad("corrosion", words("corrosion", undefined, ["rust", "scale"]), "repair", "rust", 1),
  small(
    "perforation",
    words("perforation", undefined, ["rust hole", "rusted through", "rot"]),
    "worth",
    "rust",
    2,
  ),
  broad(
    "filler",
    words("filler", "stopper", ["body filler", "plastic filler", "lead"]),
    "worth",
    "repair",
    1,
  ),
  broad("overspray", words("overspray"), "small"),
  broad("sink-mark", words("sink mark", undefined, ["sinkage", "print-through"]), "small"),
  broad("run-or-sag", words("run or sag", undefined, ["paint run", "curtain"]), "small"),
  broad("fading", words("fading", undefined, ["sun fade", "oxidation", "chalking"]), "small"),
  broad("delamination", words("delamination", undefined, ["milky edge"]), "small"),
  broad("pitting", words("pitting", undefined, ["pitted chrome"]), "small"),
  broad("bend", words("bend", undefined, ["bent", "kink"]), "repair", "bend", 0),
  broad("buckle", words("buckle", undefined, ["wrinkle", "ripple"]), "worth", "bend", 1),
  broad("patch", words("patch", undefined, ["welded patch", "plate over"]), "worth", "repair", 0),
  broad("weld-crack", words("cracked weld"), "danger"),
  broad("crushed-seam", words("crushed seam", undefined, ["crushed pinch weld"])),
  broad("tear", words("tear", undefined, ["rip", "split seam"]), "small"),
  broad("stain", words("stain", undefined, ["tide mark"]), "small"),
  broad("burn", words("burn"), "small"),
  broad("missing-piece", words("missing piece", undefined, ["missing part"]), "small"),
  broad("bulge", words("bulge", undefined, ["bubble in the sidewall"]), "danger"),
  broad("cut", words("cut"), "danger"),
  broad("chafe", words("chafe", undefined, ["rubbed through", "worn by rubbing"])),
  broad("swelling", words("swelling", undefined, ["swollen", "soft"])),
  broad("hardening", words("hardening", "perishing", ["hard", "perished", "brittle"])),
  broad("blow-hole", words("blow hole", undefined, ["leaking joint", "exhaust leak"])),
];

export const paintFaults = [
  "dent",
  "ding",
  "scratch",
  "chip",
  "crack",
  "crazing",
  "blister",
  "corrosion",
  "perforation",
  "filler",
  "overspray",
  "sink-mark",
  "run-or-sag",
  "fading",
];
export const metalFaults = [
  "corrosion",
  "perforation",
  "patch",
  "dent",
  "buckle",
  "bend",
  "crack",
  "weld-crack",
];
export const glassFaults = ["chip", "crack", "delamination", "scratch", "missing-piece"];
export const chromeFaults = ["dent", "scratch", "pitting", "corrosion", "crack", "missing-piece"];
export const clothFaults = ["tear", "stain", "burn", "crack", "fading", "missing-piece"];
export const hoseFaults = ["crack", "swelling", "hardening", "chafe", "bulge", "cut"];
export const lineFaults = ["corrosion", "perforation", "chafe", "bend", "dent"];
