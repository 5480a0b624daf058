/**
 * Of several items a subject may mean, the words beside it that choose one: an oil pressure at idle or at two thousand, a start cold or
 * hot. Where none of an item's words is there, the first without any is taken.
 */
export const contexts: Readonly<Record<string, readonly string[]>> = {
  "engine.oil-pressure-idle": ["at idle", "idle", "idling", "at tickover", "tickover", "tick over"],
  "engine.oil-pressure-2000": ["two thousand", "2000", "two grand", "2 000", "at speed", "revs", "at 2000"],
  "engine.smoke-cold": [
    "cold",
    "on startup",
    "startup",
    "start up",
    "on start",
    "when you start it",
    "at start",
    "starting",
  ],
  "engine.smoke-warm": ["warm", "hot", "warmed up"],
  "engine.smoke-overrun": ["overrun", "on the overrun", "lift off", "back off the gas", "deceleration"],
  "road.cold-start": ["cold", "stone cold", "january", "winter", "in the morning"],
  "road.hot-restart": ["hot", "warm"],
  "driveline.leaks-after": ["after the road", "after a drive", "after a run", "after driving"],
  "electrics.volts-rest": ["at rest", "rest", "resting", "standing", "engine off"],
  "electrics.volts-cranking": ["cranking", "cranks"],
  "electrics.volts-charging": ["charging", "charge", "running", "engine running", "engine on"],
  "gaps.width-top": ["top", "at the top", "front"],
  "gaps.width-bottom": ["bottom", "at the bottom", "rear"],
  "gaps.flushness": ["flush", "proud", "sunken", "step"],
  "driveline.axle-ratio-tag": ["tag", "by the tag", "on the tag"],
  "doors.bottoms": [
    "bottom",
    "at the bottom",
    "bottom edge",
    "lower edge",
    "down there",
    "bottom of it",
    "lower seam",
  ],
  "brakes.disc-runout": ["runout", "run out", "warped"],
};

/** Items that are spoken of only where one of these words is there, though their part is named far oftener. */
export const onlyWith: Readonly<Record<string, readonly string[]>> = {
  "body.finish": ["finish", "gloss", "shine", "paint", "luster"],
  "body.paint-thickness": [
    "micron",
    "micrometer",
    "um",
    "mil",
    "paint meter",
    "meter",
    "thickness",
    "gauge",
    "read",
    "measured",
    "thick",
  ],
  "body.paint-highest": ["highest", "thickest", "high spot"],
  "body.spot-welds": ["spot weld", "plug weld"],
  "body.patch-edges": ["patch", "patched", "weld", "welded", "welding", "replaced", "section"],
  "doors.latches": ["close", "shut", "latch", "open", "slam", "catch"],
  "doors.lid-latches": ["latch", "catch", "lock", "close", "shut"],
  "interior.seat-adjusters": ["adjust", "slide", "track", "runner", "adjuster"],
  "identity.title-kind": [
    "duplicate",
    "bonded",
    "electronic",
    "electronically",
    "bill of sale",
    "original title",
  ],
  "engine.finish": ["finish", "paint", "painted", "detailed", "detail"],
  "engine.noise": ["noise", "quiet", "knock", "tick", "ticking", "rattle", "noisy"],
};

/** A part and a word beside it that together mean another part. */
export const refinements: readonly {
  readonly from: string;
  readonly words: readonly string[];
  readonly to: string;
}[] = [
  { from: "hoses", words: ["brake"], to: "brake-hoses" },
  {
    from: "door",
    words: [
      "bottom",
      "at the bottom",
      "bottom edge",
      "lower edge",
      "down there",
      "bottom of it",
      "along the bottom",
    ],
    to: "door-bottom",
  },
  {
    from: "door-glass",
    words: ["up and down", "go up and down", "roll up and down", "wind up and down", "crank", "winder"],
    to: "regulators",
  },
  { from: "tank", words: ["inside", "in the inside"], to: "tank-inside" },
  { from: "trunk", words: ["floor"], to: "trunk-floor" },
];
