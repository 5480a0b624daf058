import { expect, test } from "vitest";
import { claimsIn } from "../../testing/claims-in.ts";

test.each([
  "Are the shocks leaking? | One of the fronts is.",
  "Are the shocks leaking? | One of the rears is, I forget which.",
  "Do the windows work? | One of the front ones doesn't.",
  "Are the tires cracked? | One of the rear ones is, yes.",
  "One of the rear shocks is leaking.",
  "One of the front tires is cracked.",
  "Any leaks at the shocks? | Just one of the fronts.",
  "Only one of the rear tires is new.",
])("one of two, and nobody says which: %s", (text) => {
  expect(claimsIn(text)).toEqual([]);
});

test.each([
  [
    "The driver's floor has been patched. The other one is original.",
    ["underbody.floor-repair as-built @right-front", "underbody.floor-repair patched @left-front"],
  ],
  [
    "The floor's been patched on the driver's side, other side's original.",
    ["underbody.floor-repair as-built @right-front", "underbody.floor-repair patched @left-front"],
  ],
  [
    "The left front tire is new. The other is cracked.",
    ["wheels.tire-age new @left-front", "wheels.tire-faults crack @right-front"],
  ],
  [
    "The left rear shock leaks, the other is dry.",
    ["steering.dampers dry @right-rear", "steering.dampers leaking @left-rear"],
  ],
  [
    "The right rear floor has a hole. The other is solid.",
    [
      "underbody.floor-pans -corrosion -perforation @left-rear",
      "underbody.floor-pans perforation @right-rear",
    ],
  ],
  [
    "The left front fender was repainted. The other is original paint.",
    ["body.paint-history original @right-front-fender", "body.paint-history refinished @left-front-fender"],
  ],
  // Several others are all that are left.
  [
    "The right rear floor has a hole. The others are solid.",
    ["underbody.floor-pans -corrosion -perforation @3", "underbody.floor-pans perforation @right-rear"],
  ],
  [
    "The left rear shock leaks. The other three are dry.",
    ["steering.dampers dry @3", "steering.dampers leaking @left-rear"],
  ],
])("the other of two, or all others: %s", (text, expected) => {
  expect(claimsIn(text)).toEqual(expected);
});

test.each([
  ["The paint has a scratch.", []],
  ["The floors have a hole.", []],
  ["All four tires have a crack.", ["wheels.tire-faults crack @4"]],
  ["The paint has a few chips.", ["body.faults chip @14"]],
])("one fault is in one place: %s", (text, expected) => {
  expect(claimsIn(text)).toEqual(expected);
});

test.each([
  "It's the original engine, the number's on the logbook. It was rebuilt in 2009.",
  "The engine is original, it says so on the title. It was rebuilt in 2009.",
  "The engine is original, and the number is on the title. It was rebuilt.",
  "The engine is original, it's in the logbook. It was rebuilt by my dad.",
])("where it is written is not what is spoken of: %s", (text) => {
  expect(claimsIn(text)).toEqual([
    "engine.rebuild-claim rebuilt",
    "identity.originality original-to-car @engine",
  ]);
});

test.each([
  "The doors close well. The right one wants a good shove.",
  "The doors close well. The right one needs a hard slam.",
  "The doors close well. The right one needs a tug.",
  "The doors close well. The right one wants slamming.",
])("a door that wants helping: %s", (text) => {
  expect(claimsIn(text)).toEqual([
    "doors.latches intermittent @right-front-door",
    "doors.latches yes @left-front-door",
  ]);
});
