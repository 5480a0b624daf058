import { of } from "./option-words.ts";
import type { OptionWords } from "./option-words.ts";

/** Engine: what each option is called when it is spoken of, beside the sheet's own words. No source: the trade's own words. */
export const engineOptions: readonly OptionWords[] = [
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
    clean: "clean; clean and full; fresh; just changed; honey colored; new; clean and it is full",
    used: "used; dirty; need a change; need changing; due for a change; bit black; bit dark; could do with a change; could do with changing; black; old; due for a change; dark; due a change; due an oil change; needs doing; needs changing; black as",
    low: "low; is down; s down; bit down; down a bit; down a quart; quart down; a quart low",
    "fuel-thinned": "smells of fuel; smells of gas; fuel in it; thin with fuel; smells like gas",
    milky: "emulsion; mayo; milky; emulsified; mayonnaise; milkshake; creamy",
  }),
  ...of(
    "engine.oil",
    {
      clean:
        "fresh oil change; had an oil change; oil was changed; oil has been changed; just changed the oil; oil just changed; oil s been changed",
      milky: "mayonnaise; mayo; mayo under the cap; milky oil; emulsion under the cap",
    },
    true,
  ),
  ...of("engine.coolant", { clean: "water s clean; water is clean; water clean; water looks clean" }, true),
  ...of("engine.coolant", {
    clean:
      "clean; clean and full; fresh; green and clean; new; good; green; green and full; bright green; full; full and clean; full and green; pink; blue; like new; up to the mark",
    low: "low; is down; s down; down a bit; bit down; bit low; needs topping up",
    rusty: "rusty; brown; brown as tea; brown as; muddy; like tea; rust in it",
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
        "quiet; no noise; no knock; no tick; runs quiet; no knocks; runs quietly; no odd noise; no strange noise; not knock; not tick; no ticking; no knocking; not rattle",
      "tick-cold":
        "tick a bit when it is cold; goes away once it warm up; goes away once warm; goes away when it is warm; goes away when warm; quiets down warm; tick until it warm up; tick until it warms up; tick till it warm up; tick when cold; tapping/tap until it warm up; tapping from the top end until it warm up; tapping when cold; tick/rattle till it gets oil; tick/rattle until it gets oil; tick/rattle till the oil comes up; tick/rattle until the oil comes up; tick/rattle when you first start; bit of tick cold; tappety when cold; tappet noise when cold; noisy when cold; noisy till warm; ticks when cold; tick cold; ticks cold; tick when it is cold; tick until warm; tick on cold start; lifter tick cold; tick till it is warm; tick until it is warm; tick till warm; tick till hot; tick until hot; noisy until warm; noisy until it is warm; rattle until it is warm; rattle till warm; tick on start up; tick at start up; rattle on start up; tick tick when it is cold",
      "tick-warm":
        "ticks when warm; light/little/slight/small/faint tick; bit of a tick; tick when it is warm; tick when warm; lifter noise; bit of lifter noise; tappets; tick; ticking; lifter tick; ticks; tappet noise; tappety; ticks warm",
      knock: "knock; knocks; rod knock; knocking; bottom end knock; rumbles at the bottom end",
    },
    true,
  ),
  ...of("engine.noise", {
    "tick-cold":
      "goes away once it warm up; goes away once warm; until it warm up; till it warm up; goes away when it is warm; goes away when warm; quiets down warm; quiets down; goes away",
  }),
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
    rebuilt:
      "rebuilt; did the whole engine; did the engine; engine was done; engine done; been rebuilt; had a rebuild; rebuild on it; gone through; overhauled; rebuild; fully rebuilt; freshly rebuilt; reconditioned; built up; recon",
    "top-end":
      "head was off; head done; head has been off; top end only; recon head; reconditioned head; top end done; top end was done; top end rebuild; top end rebuilt; had the top end done; bottom end has never been touched; bottom end has never been apart; bottom end s never been apart; bottom end never; head rebuilt; head been rebuilt; head has been rebuilt; head was rebuilt; head was done; valve job; had the head done; heads were done",
    never:
      "never been opened; never opened; never been apart; untouched; never been touched; never apart; never been out; never been rebuilt; never rebuilt; not been apart; not been rebuilt",
  }),
  ...of("engine.combustion-gas", {
    absent:
      "negative; clean; clear; passed; came back clean; came back clear; stayed blue; did not change color; no sign of combustion gas",
    present: "positive; failed; turned yellow; changed color; came back positive",
  }),
  ...of(
    "engine.wiring",
    { renewed: "been rewired; has been rewired; was rewired; completely rewired; fully rewired" },
    true,
  ),
  ...of("engine.blow-by", {
    breath: "just a breath; hardly any; very little; a breath",
    puffs: "puffs; puffing",
    stream: "stream; lots of",
  }),
  ...of("engine.cooling-pressure", { holds: "held pressure; holds pressure" }, true),
  ...of("engine.cooling-pressure", {
    holds: "holds pressure; held pressure; hold",
    slow: "drops slowly; falls slowly; loses slowly",
    fast: "drops at once; will not hold; does not hold",
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
];
