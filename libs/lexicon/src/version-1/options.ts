/** Words that choose an option of one item. `alone`: nobody need name the item for it. */
export type OptionWords = {
  readonly item: string;
  readonly option: string;
  readonly words: readonly string[];
  readonly alone: boolean;
};

const of = (item: string, options: Readonly<Record<string, string>>, alone = false): OptionWords[] =>
  Object.entries(options).map(([option, words]) => ({
    item,
    option,
    words: words.split(";").map((one) => one.trim()),
    alone,
  }));

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

/** What each option is called when it is spoken of, beside the sheet's own words. No source: the trade's own words. */
export const optionWords: readonly OptionWords[] = [
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
  ...of("interior.top-pump", LEAK3()),
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
  ...of("underbody.lift-points", {
    sound: "sound; solid; good; healthy; strong; clean; no rust",
    "surface-corrosion": "surface rust; surface corrosion; light rust; rusty",
    patched: "patched; repaired; welded; plated",
    soft: "soft; rotten; perforated; rusted through; gone; rot; hole",
  }),
  ...of("underbody.floor-repair", {
    "as-built":
      "original; as built; factory floor; never been replaced; original floor; completely original; untouched",
    replaced: "replaced; new floor; been replaced; replacement",
    patched: "patched; patch; been patched; has a patch; patch welded",
    "covered-over": "new sheet over old; sheet over the old; covered over",
  }),
  ...of(
    "underbody.collision-repair",
    {
      none: "never been hit; never hit; no accident; accident free; never been in an accident; nobody ever hit it; never crashed; never wrecked; no accident damage; no crash damage; not been hit; no collision damage; never been wrecked; no damage history",
      "repaired-well":
        "repaired well; well repaired; hit in the rear and it was repaired well; properly repaired",
      "repaired-poorly": "repaired poorly; badly repaired; poor repair",
      unrepaired: "not repaired; never repaired; unrepaired",
    },
    true,
  ),
  ...of(
    "underbody.welds-and-sealer",
    {
      "as-built": "factory weld; factory seam sealer; original spot welds",
      neat: "neat weld; neat repair",
      rough: "rough weld; ugly weld; bird poop weld",
      failing: "sealer cracked; sealer lifting",
    },
    true,
  ),
  ...of("underbody.body-mounts", {
    sound: "sound; good; solid; new",
    cracked: "cracked; flat",
    gone: "gone; rotted",
  }),
  ...of("underbody.subframe-bushings", {
    sound: "sound; good; solid; new",
    cracked: "cracked",
    gone: "gone; metal on metal; shot",
  }),
  ...of("underbody.tie-down-points", { sound: "sound; good; there", unsound: "not sound; rusted" }),
  ...of("driveline.joint-play", {
    none: "no play; none; tight; good",
    slight: "slight play; little play; bit of play; some play",
    clear: "clear play; lot of play; loose; bad; worn",
    rough: "rough; rusty; notchy",
  }),
  ...of("driveline.limited-slip", {
    works: "limited slip works; work; fitted; working; has",
    open: "open; open axle; open differential; open diff",
    worn: "worn; does not work; slips",
  }),
  ...of("driveline.mounts", {
    sound: "sound; good; solid; new; fine",
    cracked: "cracked; crack",
    "oil-soaked": "oil soaked; soaked in oil",
    separated: "broken; separated; split; gone",
  }),
  ...of("driveline.gearbox-fluid", {
    clean: "clean; clean and full; red and clean; pink; fresh; full and clean; full",
    dark: "dark; brown; a bit dark; dirty",
    low: "low",
    burnt: "burnt; burned; smells burnt; smell burnt",
    metal: "metal in it; metal",
  }),
  ...of("driveline.tank-inside", {
    clean: "clean; clean inside; no rust; cleaned",
    coated: "coated; sealed; lined",
    rusty: "rusty; rust; rust in it",
  }),
  ...of("driveline.center-bearing", {
    sound: "sound; good; new; quiet",
    cracked: "cracked",
    loose: "loose; noisy",
  }),
  ...of("driveline.clutch-hydraulics", {
    dry: "dry; no leak; not leak; good",
    damp: "damp; weep; seep",
    leaks: "leak; leaking; drip",
    falls: "pedal falls; falls to the floor",
  }),
  ...of("steering.bushings", {
    sound: "sound; good; solid; new; fine",
    cracked: "cracked; perished; crack",
    worn: "worn; worn through; shot; gone",
    missing: "missing",
  }),
  ...of("steering.dampers", {
    dry: "dry; not leak; not leaking; no leak; new; good; not leaking just tired",
    film: "oil film; film of oil; slight mist; misting; sweat; damp",
    leaking: "leak; leaking; blown; weep; they leak; wet; drip",
    loose: "loose; bent",
  }),
  ...of("steering.damper-bounce", {
    one: "one bounce; comes up once; settles at once",
    two: "two bounces; bounces twice",
    more: "keep bouncing; bounces more",
  }),
  ...of("brakes.pedal-feel", {
    firm: "firm; hard; good pedal; high and firm; high pedal; firm pedal; solid; nice and firm",
    spongy: "spongy; soft; mushy; squishy",
    "pumps-up":
      "pumps up; comes up when pumped; rises when pumped; have to pump it; need to pump it; have to pump",
  }),
  ...of("brakes.pedal-sink", {
    holds: "not sink; does not sink; hold; stays up; no sink",
    slow: "sinks slowly; falls slowly; slowly sinks; sinks; sink",
    "to-floor": "goes to the floor; falls to the floor; to the floor; go to the floor",
  }),
  ...of("brakes.circuit", {
    dual: "dual circuit; two circuit; dual; tandem; dual master",
    single: "single circuit; single; one circuit; single master",
    mechanical: "rod; mechanical brake; cable brake; rod and cable; cables; mechanical",
  }),
  ...of(
    "brakes.fluid-kind",
    {
      "dot-3": "dot 3; dot three; dot3",
      "dot-4": "dot 4; dot four; dot4",
      "dot-5-1": "dot 5 1; dot five point one; dot 5.1",
      "dot-5": "dot 5; dot five; silicone fluid; silicone; silicone brake fluid; dot5",
      mixed: "mixed fluid",
    },
    true,
  ),
  ...of("brakes.rods", {
    sound: "sound; good; fine; greased",
    worn: "worn; sloppy",
    seized: "seized; frayed",
  }),
  ...of(
    "road.braking",
    {
      straight:
        "brake straight; stop straight; straight; dead straight under braking; do not pull; does not pull; not pull; straight under braking; pull up straight; stops straight; brakes in a straight line; no pull",
      "slight-pull": "slight pull; pull slightly; pulls a little; pulls slightly; pull a bit",
      "pulls-left":
        "pull left; pull to the left; pulls to the left; pulls left a little; drag left; pulls to the nearside",
      "pulls-right": "pull right; pull to the right; pulls to the right; drag right; pulls to the offside",
      pulls: "pull to one side",
      "locks-one": "lock up one wheel; locks one wheel; one wheel locks",
      shudders: "shudder; judder under braking; pulsate; pulsation; shudder under braking",
    },
    true,
  ),
  ...of(
    "wheels.tire-construction",
    {
      radial: "radial; radials",
      "bias-belted": "bias belted",
      bias: "bias ply; bias; crossply; cross ply; cross plies; bias plies; by as ply; crossplies",
    },
    true,
  ),
  ...of("wheels.tread-wear", {
    even: "wearing evenly; even wear; worn evenly; wear evenly; even",
    "one-edge":
      "worn on one edge; one edge worn; inside edge; outside edge; worn on the inside; worn on the outside",
    middle: "worn in the middle; middle worn",
    "both-edges": "both edges worn; worn on both edges",
    feathered: "feathered; feathering",
    cupped: "cupped; scalloped; cupping",
  }),
  ...of("wheels.wheel-kind", {
    "original-to-car": "original wheel; the original; original to the car; came on it; factory wheel",
    "right-type": "correct wheel; right type; correct type; period correct",
    reproduction: "reproduction; repro",
    "other-type": "aftermarket; not the original; not original; other type; custom wheel; later wheel",
  }),
  ...of("wheels.fixing-kind", {
    "nuts-on-studs": "nut on stud; stud and nut; lug nut",
    bolts: "wheel bolt; bolted on",
    "splined-knock-offs":
      "wire wheel; knock off; knock on; spinner; center lock; splined; splined hub; centre lock; eared nut",
  }),
  ...of("wheels.fixings", {
    "complete-and-sound": "good; sound; complete; all there; good spline; fine; tight",
    mixed: "mixed; different nut",
    worn: "worn; a bit worn; damaged; stripped",
    missing: "missing; one missing",
  }),
  ...of("wheels.hub-caps", {
    complete: "complete; all there; all four; sound; good; present",
    marked: "dented; pitted; marked; dinged; scratched; scuffed",
    incomplete: "missing; one missing; three of four; some missing; is missing",
  }),
  ...of("engine.leak-down-path", {
    crankcase: "past the rings; into the crankcase; rings",
    intake: "out the intake; through the intake; intake valve",
    exhaust: "out the exhaust; out of the tail pipe; exhaust valve",
    coolant: "into the coolant; bubbles in the radiator",
  }),
  ...of("engine.vacuum-needle", {
    steady: "steady; rock steady",
    dropping: "dropping; drops",
    drifting: "drifting; drifts",
    fluttering: "fluttering; flutter; flutters",
  }),
  ...of("engine.oil", {
    clean: "clean; clean and full; fresh; full; just changed; honey colored; new; clean and it is full",
    used: "used; dirty; black; old; due for a change; dark",
    low: "low; down; a quart low",
    "fuel-thinned": "smells of fuel; smells of gas; fuel in it; thin with fuel; smells like gas",
    milky: "milky; emulsified; mayonnaise; milkshake; creamy",
  }),
  ...of("engine.coolant", {
    clean: "clean; clean and full; fresh; green and clean; full; new; good",
    low: "low",
    rusty: "rusty; brown; rust in it",
    oily: "oily; oil in it",
  }),
  ...of("engine.wiring", {
    "as-built": "as built; original; untouched; factory; all original",
    renewed: "renewed; new harness; new loom; new; rewired; replaced; new wiring harness",
    spliced: "spliced neatly; neatly spliced; spliced",
    bodged: "bodged; hacked; mess; bare; burnt; bare in places; spliced all over; rat s nest; cobbled",
  }),
  ...of(
    "engine.noise",
    {
      quiet:
        "quiet; no noise; no knock; no tick; runs quiet; no knocks; runs quietly; no rattles; no odd noise; no strange noise; not knock",
      "tick-cold":
        "ticks when cold; tick cold; ticks cold; tick when it is cold; tick until warm; goes away when it is warm; goes away when warm; quiets down warm; tick on cold start; lifter tick cold",
      "tick-warm": "ticks when warm; tick; ticking; lifter tick; ticks; tappet noise; tappety; ticks warm",
      knock: "knock; knocks; rod knock; knocking; bottom end knock; rumbles at the bottom end",
    },
    true,
  ),
  ...of(
    "engine.as-built",
    {
      "as-built": "correct clamps; all correct clamps; correct hoses and clamps",
      mostly: "mostly correct",
      modified: "modified engine bay",
    },
    true,
  ),
  ...of("engine.rebuild-claim", {
    "rebuilt-with-bills": "rebuilt with receipts; rebuilt with bills; rebuilt and i have the receipts",
    rebuilt: "rebuilt; overhauled; rebuild; fully rebuilt; freshly rebuilt; reconditioned; built up; recon",
    "top-end":
      "head was off; head done; head has been off; top end only; top end; head rebuilt; head was done; valve job; had the head done; heads were done",
    never:
      "never been opened; never opened; never been apart; untouched; never been touched; never apart; never been out",
  }),
  ...of("engine.blow-by", {
    breath: "just a breath; hardly any; very little; a breath; no",
    puffs: "puffs; puffing",
    stream: "stream; lots of",
  }),
  ...of("engine.cooling-pressure", {
    holds: "holds pressure; held pressure; hold",
    slow: "drops slowly; falls slowly; loses slowly",
    fast: "drops at once; will not hold",
  }),
  ...of("engine.water-pump", {
    sound: "sound; good; new; replaced; quiet; fine; dry; no leak; no play",
    weeps: "weep; seep; leak; drip; leaking; weeping",
    play: "play; has play; bit of play; wobble; loose",
    noisy: "noisy; squeal; noise; growl; squeals",
  }),
  ...of("engine.fuel-pump", {
    dry: "dry; original; as built; good; no leak; fine",
    changed: "replaced; new; changed; electric; electric pump; electric fuel pump; upgraded",
    leaks: "leak; leaking; drip; weep",
  }),
  ...of("engine.fuel-age", {
    fresh: "fresh",
    "a-season": "a season old; last year s",
    stale: "stale; old; varnish; gone off; bad",
  }),
  ...of("engine.plugs", {
    tan: "tan; tan and dry; nice color",
    sooty: "sooty; black",
    oily: "oily; fouled; oil fouled",
    steamed: "steamed clean",
    damaged: "damaged",
  }),
  ...of("engine.oil-sample", {
    ordinary: "ordinary; normal; clean; came back clean; came back good",
    metal: "metal in it",
    coolant: "coolant in it",
    fuel: "fuel in it",
  }),
  ...of("engine.boost", { "as-built": "stock boost; as built; stock", raised: "turned up; raised" }),
  ...of("road.take-up", {
    smooth:
      "smooth; smoothly; takes up smoothly; good; grabs well; takes up nicely; engages smoothly; fine; strong",
    judders: "judder; chatter; shudder; grabs",
    delayed: "delayed; slow to engage",
    slips: "slip; slipping; slips",
  }),
  ...of(
    "road.shifts",
    {
      clean:
        "shift clean; shift fine; shift smooth; clean; smooth; shift like butter; shifts smoothly; shift well; shift good; change sweetly; every gear clean; like butter; crisp; shifts great; good; fine; shifts nicely; smoothly; sweet; goes through the gears",
      stiff: "stiff; notchy; slow to shift; hard to shift; stiff when cold; balky",
      grinds:
        "grind; grinds into second; crunch; crunches; grinds; crunches into second; crunch into second; beaten synchro; worn synchro; synchro is worn; grinds going into",
      "jumps-out":
        "jump out; jumps out of; jumps out; pops out; pop out; pops out of gear; jumps out of gear; jumps out of third",
      slips: "slips between gears; flares; slip",
    },
    true,
  ),
  ...of(
    "road.tracking",
    {
      straight:
        "track straight; run straight; tracks straight; tracks true; goes straight; drive straight; straight down the road; drives straight; straight as a die; run true",
      drifts: "drift; drifts left; drifts to the",
      wanders: "wander; wanders; vague; all over the road; tramline",
      pulls: "pull on the highway; pulls while driving",
    },
    true,
  ),
  ...of(
    "road.vibration",
    {
      none: "no vibration; no shake; no shimmy; smooth at speed; vibration free; no vibrations",
      slight:
        "slight vibration; little vibration; bit of a vibration; bit of vibration; small vibration; slight shake; a vibration",
      rim: "vibration in the steering wheel; shimmy in the wheel; shake in the wheel; steering wheel shake; vibration in the wheel; vibrates through the wheel",
      seat: "vibration in the seat",
    },
    true,
  ),
  ...of(
    "road.noise",
    {
      none: "no strange noise on the road; no rattle; no noise on the road; no clunks; drive quiet; quiet on the road",
      wind: "wind noise",
      clunk: "clunk; clunking; clunks; clonk",
      rumble: "rumble; wheel bearing noise; rumbles; wheel bearing hum; growl from the wheel",
      whine: "whine; whining; diff whine; differential whine; gear whine; whines; axle whine; howl",
    },
    true,
  ),
  ...of(
    "road.cold-start",
    {
      "at-once":
        "start right up; fire right up; start at once; starts immediately; fires up immediately; start on the first turn; start instantly; first turn of the key; starts first time; at once; fire up first time; right away; fires right up; start straight away; starts on the button; start on the button; starts first turn; starts every time; starts instantly; immediately; starts right up every time; start easily; starts easily; starts well; starts great; starts good",
      "within-ten-seconds":
        "few seconds; within ten seconds; starts after a few seconds; starts within a few seconds; couple of seconds; needs a bit of cranking; within a few seconds; takes a few seconds",
      "several-tries":
        "few tries; several tries; couple of tries; two or three tries; takes a few tries; hard to start; starts after a few tries; reluctant to start; needs coaxing; takes some cranking",
      "no-start":
        "does not start; will not start; no start; not start; does not run; non runner; not running",
    },
    true,
  ),
  ...of("road.idle-quality", {
    even: "even; idles smooth; idle smoothly; smooth; steady; idles nice; evenly; idles evenly; idles fine; idle good; idles well; purrs",
    uneven: "uneven; rough; lumpy; rough idle; idles rough; lopey",
    hunts: "hunt; hunting; surges; hunts up and down",
    misses: "miss; misfire; misses; has a miss",
  }),
  ...of(
    "engine.smoke-warm",
    {
      none: "no smoke; not smoke; does not smoke; smoke free; none; no smoke at all; does not smoke at all; nothing; doesn t blow smoke",
      vapor: "white vapor; steam that clears; a bit of steam; steam; condensation",
      white: "white smoke; white",
      blue: "blue smoke; blue; smokes blue; smokes a little blue; puff of blue; burns oil; oil smoke; bluish",
      black: "black smoke; black; runs rich; rich",
    },
    true,
  ),
  ...of("engine.smoke-overrun", {
    puff: "puff of blue on the overrun; puff on overrun; puffs on lift off",
    cloud: "cloud on overrun",
  }),
  ...of("identity.originality", {
    "original-to-car":
      "matching number; numbers matching; original to the car; original; original engine; number match; numbers match; one it left with; one it left the works with; it was born with; born with; the one it came with; first engine; matches the logbook; same one it was born with; original unit; it came with from new; came with it from new",
    "right-type-and-date": "date correct; date code correct; right type and date; correct date code",
    "right-type":
      "right type; correct type; period correct; from the right type; correct for the year; same type; correct style",
    "other-type":
      "other type; another type; wrong type; different type; later one; later replacement; swapped; later replacement of another type; not the correct type; not correct; bigger truck; crate engine; out of a bigger; out of a different; not original; not the original; replacement of another type; newer one",
  }),
  ...of("identity.title-holder", {
    "seller-in-hand":
      "in my name; in hand; in our name; my name; seller s name in hand; in hand seller s name; in my name in hand; title in hand; have the title; i have it here; got the title; title in my name; i have title; our name",
    "seller-not-in-hand":
      "in my name but; waiting on the title; title is coming; title on the way; bank holds the title; title is in the mail; not in hand",
    "other-name":
      "estate s name; in the previous owner s name; another name; open title; not in my name; somebody else s name; still in the; in his name; previous owner s name; in the name of; jumped title; in her name; wife s name; in the estate s name; still in the estate s name",
    "no-title":
      "no title; bill of sale only; there is no title; does not have a title; without a title; no papers; lost the title; title is lost",
  }),
  ...of("identity.title-brand", {
    clean:
      "clean title; clean; no brand; title is clean; title s clean; not branded; unbranded; clean clear title; clear title",
    rebuilt: "rebuilt title; reconstructed title; rebuilt; reconstructed",
    salvage: "salvage title; salvage; write off; category",
    flood: "flood title",
    odometer: "odometer brand",
  }),
  ...of("identity.title-kind", {
    original: "original title; original",
    duplicate: "duplicate title; duplicate",
    electronic: "electronic title; held electronically",
    bonded: "bonded title; bonded",
    "bill-of-sale": "bill of sale only",
  }),
  ...of("identity.lien", {
    none: "no lien; none; no lien on it; lien free; no finance; no money owed; nothing owed; no outstanding finance; free of lien; no loan",
    released:
      "released; lien released; paid off; released it; been released; lien has been paid; got the release; satisfied",
    "release-promised": "will be released; release is coming; release promised; to be paid off",
    open: "has a lien; still a lien; bank still; money owed; open; still owe; lien on it; open lien",
  }),
  ...of("identity.import-papers", {
    "never-imported": "never imported; home market; sold new here; domestic car",
    complete:
      "paper complete; complete; all paper; import paper complete; imported with papers; papers in order; all in order; fully imported; papers are there",
    incomplete: "incomplete; papers missing; missing paper; papers incomplete",
  }),
  ...of("identity.odometer-disclosure", {
    actual: "disclosed as actual",
    exempt: "exempt",
    "exceeds-limits": "exceeds mechanical limits",
    "not-actual": "not actual on the title",
  }),
  ...of("identity.keys", {
    "full-set-and-spare":
      "full set and a spare; full set plus a spare; two set of key; two sets; full set plus spare; set and a spare; both sets; two full sets; spare key; all keys and spares",
    "full-set":
      "one set; full set; one full set; all the keys; one set of keys; both keys; two keys; two key",
    incomplete:
      "one missing; missing; missing key; key missing; one key is missing; no trunk key; one key only; lost",
  }),
  ...of("identity.claimed-model", {
    clone: "clone; tribute; replica; recreation",
    "tags-show-it": "tags show it; documented by the tags; tag says so",
  }),
  ...of("identity.theft", {
    clear: "clear; checked clear; never stolen; no theft",
    recovered: "recovered; recovered theft; theft recovery",
    reported: "reported stolen",
  }),
  ...of("identity.owners", {
    complete: "complete; fully documented; all owners known; known from new; one owner from new; unbroken",
    told: "told; partly documented",
    gaps: "gap; gaps; unknown",
  }),
  ...of("identity.registration", {
    current: "current; up to date; valid; registered",
    lapsed: "lapsed; expired; out of date; ran out",
    none: "never registered",
  }),
  ...of(
    "identity.stood",
    {
      "in-use":
        "in regular use; drive it every; driven regularly; use it every; regular driver; driven weekly; daily driver; drive it all the time",
      "a-season": "sat for the winter; stood over winter; stored for the winter",
      "a-year-or-more":
        "sat for a year; sat for two years; stood for a year; sat a couple of years; stood for three years",
      "five-years-or-more":
        "barn find; sat for ten years; sat for years; stood for years; sat for twenty years; sat for decades; stood for ten years",
    },
    true,
  ),
  ...of(
    "identity.miles-claim",
    {
      actual:
        "actual mile; actual; original mile; true mile; real mile; original kilometer; actual mileage; genuine mile; original; all of them his; genuine; documented mile; actual original miles",
      believed:
        "believed actual; believe it is actual; believe that is actual; believed to be actual; think that is actual; believe those are actual; we believe that is right; believe it to be actual; believed to be correct",
      unknown:
        "true mileage unknown; mileage unknown; tmu; true mile unknown; not actual; unknown mileage; no idea if that is right; can not vouch for the mileage; cannot vouch; not the true figure; mileage is unknown; do not know if that is right; can not say if that is right; miles unknown; exempt mile; no way to know; do not know the true miles",
    },
    false,
  ),
  ...of(
    "identity.restoration-claim",
    {
      unrestored:
        "never restored; never been restored; unrestored; survivor; all original never restored; not restored",
      "in-part": "restored in part; partly restored; partial restoration; partially restored",
      "complete-with-bills":
        "restored with bills; restored with receipts; restoration with receipts; fully restored with all the receipts",
      complete:
        "fully restored; full restoration; nut and bolt restoration; frame off restoration; body off restoration; rotisserie restoration; complete restoration; ground up restoration; restored",
    },
    true,
  ),
  ...of(
    "visit.light",
    {
      daylight: "recorded in daylight; in daylight; filmed in daylight",
      overcast: "overcast",
      "indoor-bright": "indoors under bright lights; bright lamps indoors",
      "indoor-dim": "dim light indoors",
      dusk: "getting dark; at dusk",
    },
    true,
  ),
  ...of(
    "visit.body-surface",
    {
      dry: "car dry; car is dry; with the car dry",
      wet: "car is wet; car wet",
      dirty: "car is dirty; car dirty",
      covered: "car is covered",
    },
    true,
  ),
  ...of("identity.pad", {
    "as-stamped": "as the maker stamped it; original stamp; factory stamp",
    uneven: "uneven; restamped; re stamped",
  }),
  ...of("identity.stamping-surface", {
    machined: "machined; broach mark",
    ground: "ground; sanded; decked",
    coated: "coated; painted over",
  }),
  ...of("identity.plate-fixing", {
    "as-built": "original rivet; factory rivet; as built",
    "other-fixing": "screw; other rivet; pop rivet; wrong rivet",
    "plate-missing": "missing",
    "right-type-disturbed": "disturbed",
  }),
];

function LEAK3(): Readonly<Record<string, string>> {
  return {
    dry: "dry; no leak; not leak",
    weep: "weep; seep; weeps a little; damp",
    leaks: "leak; leaking; drip",
  };
}
