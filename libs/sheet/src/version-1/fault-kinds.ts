import type { FaultKind, Words } from "@evenhand/shared/sheet";
import { words } from "./draft.ts";

/** Extent is the greatest length in mm; δ and the accuracy by eye are ±(absolute + share). Common practice, no source. */
function kind(id: string, named: Words, delta: [number, number], byEye: [number, number]): FaultKind {
  return {
    id,
    words: named,
    unit: "mm",
    delta: { absolute: delta[0], share: delta[1] },
    byEye: { absolute: byEye[0], share: byEye[1] },
  };
}

const broad = (id: string, named: Words) => kind(id, named, [25, 0.5], [4, 0.1]);
const small = (id: string, named: Words) => kind(id, named, [10, 0.5], [1.5, 0.1]);

/** Damage is written in words, never in letters. */
export const faultKinds: FaultKind[] = [
  broad("dent", words("dent", undefined, ["crease"])),
  small("ding", words("ding", "parking dent", ["door ding"])),
  broad("scratch", words("scratch", undefined, ["scrape", "scuff"])),
  small("chip", words("chip", "stone chip")),
  broad("crack", words("crack")),
  broad("crazing", words("crazing", "micro-blistering and crazing", ["checking"])),
  broad("blister", words("blister", undefined, ["bubble", "bubbling"])),
  broad("corrosion", words("corrosion", undefined, ["rust", "scale"])),
  small("perforation", words("perforation", undefined, ["rust hole", "rusted through", "rot"])),
  broad("filler", words("filler", "stopper", ["body filler", "plastic filler", "lead"])),
  broad("overspray", words("overspray")),
  broad("sink-mark", words("sink mark", undefined, ["sinkage", "print-through"])),
  broad("run-or-sag", words("run or sag", undefined, ["paint run", "curtain"])),
  broad("fading", words("fading", undefined, ["sun fade", "oxidation", "chalking"])),
  broad("delamination", words("delamination", undefined, ["milky edge"])),
  broad("pitting", words("pitting", undefined, ["pitted chrome"])),
  broad("bend", words("bend", undefined, ["bent", "kink"])),
  broad("buckle", words("buckle", undefined, ["wrinkle", "ripple"])),
  broad("patch", words("patch", undefined, ["welded patch", "plate over"])),
  broad("weld-crack", words("cracked weld")),
  broad("crushed-seam", words("crushed seam", undefined, ["crushed pinch weld"])),
  broad("tear", words("tear", undefined, ["rip", "split seam"])),
  broad("stain", words("stain", undefined, ["tide mark"])),
  broad("burn", words("burn")),
  broad("missing-piece", words("missing piece", undefined, ["missing part"])),
  broad("bulge", words("bulge", undefined, ["bubble in the sidewall"])),
  broad("cut", words("cut")),
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
