import { of } from "./option-words.ts";
import type { OptionWords } from "./option-words.ts";

const LEAK = {
  none: "no leak; not leak; dry; none; no drip; bone dry; dry as a bone; not leaking; do not leak",
  weep: "weep; weeping; leaks a little; leaking a little; little leak; leak slightly; lose a little oil/water/fluid; loses a little oil/water/fluid; lose a bit of oil/water; small leak; small/little/slight/minor/tiny oil leak; tiny leak; minor leak; slow leak; bit of a leak; leak a bit; leaking slightly; touch of oil; oil mist; bit damp; wet around; seep; seeping; seepage; damp; sweat; sweating; wet; slight leak; moist; misting; oil film",
  drip: "drip; dripping; oil on the floor; leave its mark; marks its territory; drops a bit; drop overnight; odd spot; odd drop; lose oil; lose water; lose coolant; lose fluid; leaks a drop; leak; leaking; leaky; drop on the floor; leaves a spot; leaves a drop; spot on the floor",
  run: "run; running leak; pouring; gush; pours; runs out; leaks badly; leak badly; leak bad; leak pretty bad; leak real bad; leaks oil bad; leak oil pretty bad; leak oil real bad; leak oil badly; leak a lot; leaks a lot of oil; leak like a sieve; bad leak; bad oil leak; big leak; bad leaks",
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
  ...of("electrics.heat", {
    yes: "hot; toasty; warm; blow hot; blow warm; gets warm; lovely and warm; nice and warm; roasting; boiling; like an oven; like a furnace; cook you; cooks you; roast you; roasts you; run you out; runs you out; drive you out; burn you up; keeps you warm; keep you warm",
    no: "cold; lukewarm; stays cold; blow cold; never gets warm; barely warm",
  }),
  ...of("electrics.horn", { yes: "loud; loud and clear; honk; beep; blow; sound", no: "silent; croak" }),
  ...of("electrics.air-conditioning", {
    yes: "cold; ice cold; blow cold; cool; gets cold; blows nice and cold",
    no: "warm; blow warm; blow hot; need a charge; need charging; need gas; need regassing; need a compressor; not cold; need recharging; does not get cold; disconnected; need a recharge; need a regas; need regas; need a service; need work; needs a compressor; need some gas; compressor is missing; compressor seized; not connected; blows ambient",
  }),
  ...of("electrics.blower", {
    yes: "blow; blow hard; strong; moves air; plenty of air; both speed; all speed; three speed; two speed; every speed; all three speed",
    intermittent: "only on high; only on fast; one speed only; only works on high; high only",
  }),
  ...of("electrics.fuel-gauge", {
    yes: "spot on; accurate; right on; right on the money; reads right; read right; reads correctly",
    no: "read empty; stuck on empty; on empty; always read full; read full; show empty; always on empty; guess",
  }),
  ...of("electrics.temperature-gauge", {
    yes: "spot on; sit in the middle; sits in the middle; reads normal; right on; right on the money; reads right",
  }),
  ...of("electrics.speedometer", {
    yes: "spot on; right on; right on the money; reads right; a little fast; a bit fast; a little slow; a bit slow",
    intermittent: "bounces; bounce; jump; jumps about; needle wave; wave; flick about; needle bounce",
  }),
  ...[
    "electrics.tachometer",
    "electrics.temperature-gauge",
    "electrics.oil-gauge",
    "electrics.charge-gauge",
  ].flatMap((item) =>
    of(item, {
      intermittent:
        "bounces; bounce; jumps about; needle bounce; flick about; flickers; wanders; sticks at times",
    }),
  ),
  ...of("doors.regulators", {
    intermittent:
      "struggles; struggle; needs a hand; need a hand; needs help; need help; hard to wind; hard to turn",
  }),
  ...of("electrics.power-windows", {
    intermittent: "needs a hand; need a hand; needs help; need help; goes down but not up; sometimes",
  }),
  ...of("electrics.wipers", {
    yes: "both speed; all speed; go slow; goes slow; run slow; runs slow; go slowly; moves slowly",
    intermittent: "only on fast; only go on fast",
  }),
  ...of("brakes.parking-brake", {
    yes: "hold on the hill; hold on a hill; hold on a slope; three click; four click",
    no: "want adjusting; want adjustment; want a tweak; roll away; useless; need adjusting; needs adjusting; need adjustment; needs adjustment; rolls away; does nothing; will not hold; not hold; not trust it; would not trust it; hopeless",
  }),
  ...of("interior.headliner", {
    "heavy-wear":
      "hanging; hanging down; coming down; come loose; coming loose; come away; coming away; come unstuck; loose; falling down; drooping; come down; sagging; droop; dropped; down at the back; dropping; stain; stained; water stain; water stained",
  }),
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
    blended: "blended; blended in; partly painted; blown in; been touched up",
    refinished:
      "refinished; had a respray; been resprayed; been painted; done in; color change; been sprayed; had paint; resprayed; repainted; respray; repaint; painted; been painted; had paint; new paint; paint work done; paint work; pain work done; fresh paint; redone paint; older respray; had some paint; repaint done; painting is made new; paint is made new; painted again; paint s been done; paint has been done; paint was done; paint been done; paint is done; was redone; been redone; got redone; is redone; was sprayed; sprayed; painted/repainted/sprayed/resprayed in the original color; painted/repainted/sprayed/resprayed in its original color; painted/repainted/sprayed/resprayed the original color",
    repaired:
      "repaired and painted; repaired; been repaired; repair done; repaired and refinished; bodywork done; body work done",
  }),
  ...of("body.panel-material", {
    aluminum: "aluminum; alloy; made of aluminum",
    "glass-fiber": "fiberglass; glass fiber; grp",
    steel: "made of steel; all steel",
  }),
  ...of("body.magnet", {
    holds:
      "magnet holds; magnet hold; magnet adhere; magnet sticks; magnet stick; magnet and it holds; magnet sticks everywhere; takes a magnet; hold a magnet; magnet grabs; magnet holds on; magnet on them and it held; magnet on it and it held; magnet stuck; magnet held; magnet sticks to; magnet stick to; magnet on it and it stays; magnet on it and it sticks; magnet on it and it stuck; held my magnet; holds my magnet",
    weak: "magnet is weak; magnet hardly holds; magnet barely sticks; magnet barely holds",
    falls:
      "magnet falls off; magnet does not stick; magnet drops off; will not take a magnet; magnet does not hold; magnet fall off; magnet will not stick; magnet will not hold; magnet just fall off; magnet slide off; magnet slides off; magnet did not stick; magnet would not stick; magnet did not hold; magnet would not hold; magnet fell off; magnet fell right off; magnet on it and it did not stick; magnet on it and it did not hold; magnet on it and it fell off; magnet on it and it fell right off; magnet on it and it will not stick; magnet on it and it does not stick; magnet on it and it would not stick; magnet on it and nothing",
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
      "are present; all present; present and original; all present and original; are there; all of them there; every one there; present and correct; all there and all original; complete and original; all original; all there; complete; original badges; all correct",
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
    damp: "damp; moist; dampness; condensation; a little water; a bit of water; some water; little bit of water; drop of water; little moisture; some moisture; bit of moisture",
    wet: "standing water; wet; puddle; water in it; water; water sitting; soaking; soaked; an inch of water",
  }),
  ...of(
    "interior.trim-history",
    {
      "retrimmed-right":
        "been retrimmed; been reupholstered; interior has been redone; interior has been done",
    },
    true,
  ),
  ...of("interior.trim-history", {
    original: "original; all original; factory; untouched; never been out",
    "part-retrimmed": "part retrimmed; partly retrimmed; some of it redone",
    "retrimmed-right":
      "correct pattern; right pattern; retrimmed in the correct pattern; redone in the correct pattern; retrimmed; redone; re trimmed; reupholstered; re upholstered; recovered; correct material; redone right; correct reproduction",
    "retrimmed-other":
      "wrong pattern; another pattern; different pattern; not the correct pattern; not the right pattern; custom upholstery; incorrect pattern",
  }),
  ...of("interior.smell", {
    none: "not smell of anything; no smell; smells of nothing; no bad smell; no odor; smell clean; nothing",
    smoke:
      "smoker; smoked in; stale smoke; cigar; tobacco; cigarette; of smoke; like smoke; of cigarette; cigarette smoke; smells of smoke",
    musty:
      "musty; mildew; moldy; damp smell; mold; smells musty; damp; damp dog; mouldy; stale; like a damp; old carpet",
    fuel: "smell of gas inside; of gas; of gasoline; of petrol; of fuel; like gas; like gasoline; like petrol; like fuel; gas smell; petrol smell; fuel smell inside; smells like gas",
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
    bypassed: "bypassed; disconnected; been bypassed; looped; blanked off",
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
