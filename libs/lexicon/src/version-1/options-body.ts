import { of } from "./option-words.ts";
import type { OptionWords } from "./option-words.ts";

const LEAK = {
  none: "no leak; not leak; dry; none; no drip; bone dry; dry as a bone; not leaking; do not leak",
  weep: "weep; weeping; seep; seeping; seepage; damp; sweat; sweating; wet; slight leak; moist; misting; oil film",
  drip: "drip; dripping; leak; leaking; leaky; drop on the floor; leaves a spot; leaves a drop; spot on the floor",
  run: "run; running leak; pouring; gush; pours; runs out; leaks badly; leak badly",
};
const LOOSE = {
  tight: "tight; no play; good; snug; firm",
  slight: "slight play; little play; bit of play; some play; small play; slightly loose",
  loose: "loose; worn; shot; sloppy; flopping; lot of play",
};

const PUMP = {
  dry: "dry; no leak; not leak",
  weep: "weep; seep; weeps a little; damp",
  leaks: "leak; leaking; drip",
};
/** Body, trunk, interior and electrics: what each option is called when it is spoken of, beside the sheet's own words. No source: the trade's own words. */
export const bodyOptions: readonly OptionWords[] = [
  ...[
    "driveline.leaks-before",
    "driveline.pinion-seal",
    "steering.box-leak",
    "brakes.master-cylinder",
    "brakes.wheel-cylinders",
    "brakes.calipers",
    "engine.radiator",
  ].flatMap((item) => of(item, LEAK)),
  ...["steering.tie-rod-ends", "steering.idler-and-pitman", "steering.drag-link"].flatMap((item) =>
    of(item, LOOSE),
  ),
  ...of("body.paint-history", {
    original:
      "original paint; original; factory paint; first paint; paint it came with; factory finish; paint is original; untouched paint; paint is all original; never painted; never resprayed; never repainted; single stage original",
    blended: "blended; blended in; partly painted; blown in",
    refinished:
      "refinished; resprayed; repainted; respray; repaint; painted; been painted; had paint; new paint; paint work done; paint work; pain work done; fresh paint; redone paint; older respray; had some paint; repaint done",
    repaired: "repaired and painted; repaired and refinished; bodywork done; body work done",
  }),
  ...of("body.panel-material", {
    aluminum: "aluminum; alloy; made of aluminum",
    "glass-fiber": "fiberglass; glass fiber; grp",
    steel: "made of steel; all steel",
  }),
  ...of("body.magnet", {
    holds:
      "magnet holds; magnet hold; magnet sticks; magnet stick; magnet and it holds; magnet sticks everywhere; takes a magnet; hold a magnet; magnet grabs; magnet holds on",
    weak: "magnet is weak; magnet hardly holds; magnet barely sticks",
    falls:
      "magnet falls off; magnet does not stick; magnet drops off; will not take a magnet; magnet does not hold; magnet fall off",
  }),
  ...of("body.fender-inner-face", {
    flat: "flat; undisturbed",
    patched: "patched",
    doubled: "doubled; second skin",
  }),
  ...of("body.cowl-water", {
    drains: "drains; drain like it should; drain; dry inside; drains fine",
    slow: "drains slowly; slow to drain",
    leaks: "leaks inside; leak; leaking",
    holes: "rusted through; rotten; has holes; hole",
  }),
  ...of("body.wood-frame", {
    sound: "sound; solid; good; nothing moves",
    repaired: "repaired; replaced; new wood; spliced",
    loose: "loose; joints move; moves",
    soft: "soft; rotten; rot; spongy",
  }),
  ...of("brightwork.emblems", {
    "complete-original":
      "all there and all original; complete and original; all original; all there; complete; original badges; all correct",
    "complete-reproduction": "reproduction; some reproduction; repro; they are reproductions",
    incomplete: "missing; one missing; some missing; incomplete; is missing",
  }),
  ...of("doors.drains", {
    open: "open; clear; drain",
    partly: "partly blocked; partly open",
    blocked: "blocked; plugged; clogged",
  }),
  ...of("trunk.damp", {
    dry: "dry; bone dry; no water; no damp; dry as a bone",
    damp: "damp; moist",
    wet: "standing water; wet; puddle; water in it",
  }),
  ...of("interior.trim-history", {
    original: "original; all original; factory; untouched; never been out",
    "part-retrimmed": "part retrimmed; partly retrimmed; some of it redone",
    "retrimmed-right":
      "correct pattern; right pattern; retrimmed in the correct pattern; redone in the correct pattern; retrimmed; redone; reupholstered; recovered; correct material; redone right; correct reproduction",
    "retrimmed-other":
      "wrong pattern; another pattern; different pattern; not the correct pattern; not the right pattern; custom upholstery; incorrect pattern",
  }),
  ...of("interior.smell", {
    none: "not smell of anything; no smell; smells of nothing; no bad smell; no odor; smell clean; nothing",
    smoke: "tobacco; cigarette smoke; smells of smoke",
    musty: "musty; mildew; moldy; damp smell; mold; smells musty",
    fuel: "smell of gas inside; fuel smell inside; smells like gas",
    exhaust: "smells of exhaust; exhaust smell",
    burnt: "burnt wiring; smells burnt",
  }),
  ...of("interior.top-pump", PUMP),
  ...of(
    "electrics.system-voltage",
    { six: "six volt; 6 volt; 6v; 6 v", twelve: "twelve volt; 12 volt; 12v; 12 v" },
    true,
  ),
  ...of(
    "electrics.polarity",
    {
      "negative-ground": "negative ground; negative earth",
      "positive-ground": "positive ground; positive earth",
    },
    true,
  ),
  ...of("electrics.charger-kind", { alternator: "alternator", generator: "generator; dynamo" }, true),
  ...of("electrics.heater-core", {
    dry: "dry; no leak; good; new",
    bypassed: "bypassed; disconnected",
    leaks: "leak; leaking",
  }),
  ...of("electrics.dash-wiring", {
    "as-built": "as built; original; untouched",
    "added-neat": "added neat",
    spliced: "spliced",
    unsafe: "bare; burnt; loose; mess",
  }),
  ...of("electrics.fuse-box", {
    sound: "sound; clean; good",
    corroded: "corroded; green",
    heat: "melted; marks of heat",
    bridged: "bridged; foil",
  }),
];
