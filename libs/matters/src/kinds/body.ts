import { kind } from "./kind.ts";
import type { Kind } from "./kind.ts";

/**
 * Body and structure. What of it is one cause is told by the place on the car (`zone`): these kinds say how what was found there is
 * called; `bodywork`, `paint` and `fit` hold what no grave place takes.
 */
export const body: readonly Kind[] = [
  kind(
    "structure",
    "body",
    "structure",
    ["underbody", "trunk.floor", "trunk.wheel-wells", "trunk.channels"],
    {
      rules: ["square"],
      says: {
        danger: "The structure is not sound",
        worth: "The structure has been damaged or repaired",
        repair: "Rust underneath",
      },
      decides: "On a lift, with a probe and a tape, by a body shop that does structural work.",
      ask: "Who repaired or welded the structure, when, and are there pictures of it open?",
    },
  ),
  kind(
    "bodywork",
    "body",
    "bodywork",
    [
      "body.faults",
      "body.magnet",
      "body.patch-edges",
      "body.spot-welds",
      "body.fender-inner-face",
      "body.cowl-water",
      "body.window-channels",
      "body.drip-rails",
      "body.vinyl-roof",
      "body.panel-material",
      "body.wood-frame",
      "trunk.lid-underside",
      "doors.bottoms",
      "body",
    ],
    {
      rules: ["paint-map"],
      says: {
        danger: "The body is holed or rotten where it carries",
        worth: "Filler, patches or rust in the body",
        repair: "Rust or dents in the panels",
      },
      decides: "Magnet, paint gauge and a lamp behind the panel; then a body shop's estimate.",
      ask: "What body repairs has the car had, where, and by whom?",
    },
  ),
  kind(
    "paint",
    "body",
    "paint",
    [
      "body.paint-thickness",
      "body.paint-highest",
      "body.paint-history",
      "body.finish",
      "doors.jambs",
      "gaps.bolts-disturbed",
    ],
    {
      rules: ["original-paint"],
      says: { worth: "The paint is thick, renewed or over repairs", repair: "The paint needs work" },
      decides: "A paint gauge over every panel, several spots each.",
      ask: "Which panels have been painted, when, and why?",
    },
  ),
  kind("color", "body", "color", ["body.color", "identity.paint-code", "doors.first-color"], {
    rules: ["first-color", "panel-color"],
    says: { worth: "The car is not in the color it was built in, or not in one color" },
    decides: "The paint code on the body plate against the color in the jambs and under the carpet.",
    ask: "What color was the car when new, and when was it changed?",
  }),
  kind("fit", "body", "panel fit", ["gaps", "doors.drop", "doors.hinge-play", "doors.lid-hinges"], {
    rules: ["gap-taper"],
    says: { worth: "Panels and doors do not sit as they should", repair: "Doors or lids hang" },
    decides: "Gaps measured both sides, then the structure behind them.",
    ask: "Have doors, hood or fenders been off the car or adjusted?",
  }),
  kind("glass", "body", "glass", ["brightwork.glass-faults", "brightwork.glass-date"], {
    says: { danger: "Damaged glass in the driver's view", repair: "Glass damaged or replaced" },
    decides: "The glass looked at from inside against the light.",
    ask: "Which glass has been replaced, and why?",
  }),
  kind("latches", "body", "latches and lids", ["doors"], {
    says: {
      danger: "A door or lid can come open",
      repair: "Doors, windows or locks do not work as they should",
    },
    decides: "Every door and lid opened, shut and pulled at.",
    ask: "Do all doors and lids shut on their latches, and has any come open while driving?",
  }),
  kind("brightwork", "cabin", "bright trim", ["brightwork"], {
    says: { repair: "Chrome, trim or seals need work", small: "Small faults in the bright trim" },
    decides: "A look in daylight.",
    ask: "Which trim pieces are missing or damaged?",
  }),
];
