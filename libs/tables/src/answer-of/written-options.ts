/** Options as sheets write them, beside the lexicon's words. Patterns as there. No source: the trade's own habits. */
type WrittenOption = { readonly item: string; readonly option: string; readonly words: readonly string[] };

const of = (item: string, options: Readonly<Record<string, string>>): WrittenOption[] =>
  Object.entries(options).map(([option, words]) => ({
    item,
    option,
    words: words.split(";").map((one) => one.trim()),
  }));

const START = {
  "at-once":
    "fired right up; first turn; instant; immediate; easy; at once; started at once; first time; good; start well",
  "several-tries":
    "several tries; attempt; two attempt; three attempt; several attempt; two try; three try; four try; few try; couple try; second try; third try; second pull/attempt/turn/go; third pull/attempt/turn/go; hard; hard to start; reluctant; many tries; long crank",
  "no-start": "no start; would not start; will not start; did not start; dead",
};

const SMOKE = {
  none: "none; no smoke; no; nil; clear; clean",
  blue: "blue; burning oil; oil smoke; blueish",
  white: "white",
  black: "black; rich; sooty",
  vapor: "vapor; steam; condensation",
};

export const writtenOptions: readonly WrittenOption[] = [
  ...of("electrics.warning-lamps", { yes: "go out; goes out; went out; all go out; out once running" }),
  ...of("electrics.oil-gauge", { yes: "go out; goes out; went out; out once running" }),
  ...of("engine.combustion-gas", {
    absent: "negative; pass; passed; blue; no gas; no change; none; clear; stayed blue",
    present: "positive; fail; failed; yellow; turned yellow; gas found; changed color",
  }),
  ...of("road.cold-start", START),
  ...of("road.hot-restart", START),
  ...of("engine.smoke-cold", SMOKE),
  ...of("engine.smoke-warm", SMOKE),
  ...of("engine.smoke-overrun", {
    none: "none; no smoke; no; nil; clear",
    puff: "puff; slight; little; brief; blue; blue on the overrun; on the overrun; puff of blue",
    cloud: "cloud; heavy; lots",
  }),
  ...of("driveline.leaks-before", { none: "none; no; nil; dry" }),
  ...of("driveline.leaks-after", { none: "none; no; nil; dry" }),
  ...of("road.take-up", {
    smooth: "smooth; good; progressive; clean",
    judders: "judder; grabby; grab; shudder; chatter",
    slips: "slip; slipping",
    delayed: "delayed; slow; late",
  }),
  ...of("road.shifts", {
    clean: "clean; smooth; good; slick; no crunch; all good",
    stiff: "stiff; notchy; baulky; heavy; obstructive",
    grinds:
      "scratch; scratches; grind; grinding; crunch; crunching; crunchy; graunch; weak synchro; synchro weak",
    "jumps-out": "jumps out; pops out; jump out of gear; drops out",
    slips: "slip; slipping",
  }),
  ...of("road.tracking", {
    straight: "straight; true; tracks straight; good",
    drifts: "drift; drifts slightly; slight drift",
    wanders: "wander; wandering; vague",
    pulls: "pull; pulls",
  }),
  ...of("road.braking", {
    "slight-pull":
      "pull slightly left/right; slight pull left/right; pulls slightly left/right; pulls a little left/right; pull a little left/right; pull bit left/right; slight pull; pull slightly; pulls slightly; pull a little; pulls a bit",
  }),
  ...of("road.vibration", {
    none: "none; no; smooth; nil",
    slight: "slight; minor; little",
    rim: "shimmy; steering wheel; wheel shake; in rim; in the wheel; wheel; through the wheel; rim; shimmy in rim",
    seat: "seat; floor; through the seat",
  }),
  ...of("road.noise", {
    none: "none; no; quiet; nil",
    wind: "wind; wind noise",
    clunk: "clunk; knock; clunking",
    rumble: "rumble; bearing; droning; drone; growl",
    whine: "whine; axle whine; diff whine; howl",
  }),
  ...of("road.idle-quality", {
    even: "even; smooth; steady; good",
    uneven: "uneven; rough; lumpy",
    hunts: "hunt; hunting; surge",
    misses: "miss; misfire",
  }),
  ...of("engine.plugs", {
    tan: "tan; good; normal; biscuit; brown; light brown; gray",
    sooty: "sooty; black; carbon; rich",
    oily: "oily; oil fouled; wet oil; oil",
    steamed: "steamed; steam cleaned; white",
    damaged: "damaged; cracked; broken",
  }),
  ...of("engine.leak-down-path", {
    crankcase: "crankcase; filler; oil filler; ring; breather; dipstick",
    intake: "intake; carburetor; carb; inlet",
    exhaust: "exhaust; tailpipe; tail pipe",
    coolant: "coolant; radiator; header tank",
    neighbor: "neighbor; next cylinder; adjacent",
  }),
  ...of("engine.water-pump", {
    sound: "sound; good; dry; quiet; ok",
    weeps: "weep; weeping; weeping slightly; seep; leak; leaking; damp",
    play: "play; loose; bearing play; wobble",
    noisy: "noisy; squeal; growl",
  }),
  ...of("engine.cooling-pressure", {
    holds: "hold; holds; pass; good; ok",
    slow: "slow drop; drops slowly; loses slowly; slow",
    fast: "fast; drops fast; will not hold; does not hold; fail; falls",
  }),
  ...of("engine.noise", {
    "tick-cold":
      "tappet cold; tapping cold; tap cold; rattle cold; noisy cold; lifter cold; rattle start up; rattle few second",
  }),
  ...of("engine.oil", {
    clean: "clean; fresh; golden; new",
    used: "used; dark; dark but clean; black; dirty; due; brown",
    milky: "milky; mayo; emulsion; white",
    low: "low; below min; under min",
  }),
  ...of("engine.fuel-pump", { dry: "dry; good; ok; sound", leaks: "leak; leaking; weep" }),
  ...of("body.paint-history", {
    original: "never repainted; not repainted",
    refinished: "repainted; resprayed; respray; repaint",
  }),
  ...of("steering.damper-bounce", { one: "1", two: "2", more: "3; 4; several; keeps bouncing" }),
  ...of("identity.keys", {
    "full-set-and-spare": "2 sets; two sets; 2; two keys; 2 keys; spare; with spare; both",
    "full-set": "1 set; one set; one key; 1 key; 1; single",
    incomplete: "missing; incomplete; no key for the trunk",
  }),
  ...of("identity.title-holder", {
    "seller-in-hand":
      "yes; in hand; present; seen; with seller; held; clear and in hand; seller name in hand; in seller s name in hand; seller in hand; clear in hand",
    "seller-not-in-hand": "not in hand; seller name not in hand; at bank",
    "other-name": "other name; someone else; open title; not in seller name",
    "no-title": "no title; no; none; lost; missing",
  }),
  ...of("identity.title-brand", {
    clean: "clean; clear; none; no brand",
    salvage: "salvage",
    rebuilt: "rebuilt; reconstructed",
    flood: "flood",
  }),
  ...of("visit.opinion", {
    "would-buy": "yes; would buy; buy; would; recommended; recommend",
    "for-less":
      "yes for less; not at this price; not at that price; at this price no; for less; at the right price; at a lower price; negotiate; less money; if put right; would buy at a lower price; buy at a lower price; would buy for less; yes at a lower price; would buy less money; would buy less; buy less money; only for less; if the price is right",
    "would-not": "no; would not; walk away; avoid; not recommended; do not buy",
  }),
  ...of("body.cowl-water", {
    drains: "drains; clear; good; ok; dry",
    slow: "slow",
    leaks: "leak; leaking; wet inside",
    holes: "hole; rotten; rusted through",
  }),
  ...of("interior.smell", {
    musty: "musty; damp; mildew; mold",
    none: "none; no; ok; clean; good; nothing",
    smoke: "smoke; cigarette; tobacco",
    fuel: "fuel; gas; petrol",
  }),
  ...of("driveline.joint-play", {
    none: "none; tight; no play; good; nil",
    slight: "slight; slight play; little",
    clear: "loose; clunk; play; clear play; worn; rear clunk loose",
    rough: "rough; dry; notchy; squeak",
  }),
  ...of("driveline.gearbox-fluid", {
    clean: "clean; red; good; fresh; clear",
    dark: "dark; brown; black",
    low: "low",
    burnt: "burnt; burned; smells burnt",
    metal: "metal; glitter; swarf",
  }),
  ...of("driveline.mounts", {
    sound: "sound; good; ok; solid",
    cracked: "cracked; crack; perished; split",
    "oil-soaked": "oil soaked; oily; soft",
    separated: "separated; broken; torn; collapsed",
  }),
  ...of("steering.bushings", {
    sound: "sound; good; ok; tight",
    cracked: "cracked; perished; split",
    worn: "worn; play; shot; loose",
    missing: "missing; gone",
  }),
  ...of("steering.tie-rod-ends", {
    loose: "play; has play; worn; slack; loose",
    slight: "slight play; little play",
  }),
  ...of("steering.dampers", {
    dry: "dry; good; ok; no leak; firm",
    film: "film; misting; damp; sweat",
    leaking: "leak; leaking; wet; weep; weeping; seeping; blown",
    loose: "loose; bent; worn bush",
  }),
  ...of("brakes.pedal-feel", {
    firm: "firm; good; hard; high",
    spongy: "spongy; soft; long; mushy",
    "pumps-up": "pumps up; pump",
  }),
  ...of("brakes.fluid-kind", {
    "dot-3": "dot 3; dot3",
    "dot-4": "dot 4; dot4",
    "dot-5": "dot 5; dot5; silicone",
    "dot-5-1": "dot 5.1",
    mixed: "mixed",
  }),
  ...of("wheels.tread-wear", {
    even: "even; good; normal",
    "one-edge":
      "inner edge; outer edge; one edge; inside edge; outside edge; worn inner; worn outer; inside; outside",
    middle: "center; middle; center worn",
    "both-edges": "both edges; both shoulders; shoulders",
    feathered: "feathered; feathering",
    cupped: "cupped; cupping; scalloped",
  }),
];
