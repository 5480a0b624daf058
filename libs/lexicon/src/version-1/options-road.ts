import { of } from "./option-words.ts";
import type { OptionWords } from "./option-words.ts";

/** Road: what each option is called when it is spoken of, beside the sheet's own words. No source: the trade's own words. */
export const roadOptions: readonly OptionWords[] = [
  ...of("road.take-up", {
    smooth:
      "smooth; smoothly; takes up smoothly; good; grabs well; takes up nicely; engages smoothly; fine; strong; no slip; does not slip; not slip; light no slip; bites well; bites cleanly; bites nicely; bite nicely; nicely; perfectly; bites low; bites where it should; like it should; as it should; light; light and smooth",
    judders: "judder; chatter; shudder; grabby; grabs and; grab a little; grab a bit; grab when hot",
    delayed: "delayed; slow to engage",
    slips: "slip; slipping; slips",
  }),
  ...of(
    "road.shifts",
    {
      clean:
        "shift clean; shift fine; shift smooth; clean; smooth; shift like butter; shift like a dream; shift like new; shifts smoothly; shift well; shift good; change sweetly; every gear clean; like butter; crisp; shifts great; good; fine; shifts nicely; smoothly; sweet; goes through the gears; goes through all the gears; shifts through all the gears; runs through the gears; finds every gear; every gear is there; no grinding; does not grind; doesn t grind; never grinds",
      stiff: "stiff; notchy; slow to shift; hard to shift; stiff when cold; balky",
      grinds:
        "grind; grind if you rush it; grind a bit; crunch if you rush it; graunch; weak synchro; synchro/synchromesh is weak; synchro/synchromesh on first/second/third is weak; synchro/synchromesh s weak; synchro/synchromesh is going; synchro/synchromesh is gone; crunch a bit; grind into; grinds into second; crunch; crunchy; a bit crunchy; bit crunchy; baulks; crunches; grinds; crunches into second; crunch into second; beaten synchro; worn synchro; synchro is worn; grinds going into; make noise when you shift; makes noise when you shift; make a noise when you shift; makes a noise when you shift",
      "jumps-out":
        "jump out; jumps out of; jumps out; pops out; pop out; pops out of gear; jumps out of gear; jumps out of third",
      slips: "slips between gears; flares; slip",
    },
    true,
  ),
  ...of("road.shifts", {
    clean:
      "cleanly; nicely; well; beautifully; perfectly; slick; slick as you like; like it should; as it should; light and easy; positive; precise; spot on; no trouble; no problem; no issue; nice; real nice; soft; softly; smooth as silk; smooth as butter",
    slips: "slipping; slipping in",
    stiff: "stiff cold; bit stiff; reluctant; vague",
    grinds: "worn; beaten",
  }),
  ...of(
    "road.tracking",
    {
      straight:
        "track straight; run straight; tracks straight; tracks true; goes straight; drive straight; straight down the road; drives straight; straight as a die; run true; goes down the road straight; straight and true; hands off straight; holds a straight line; does not wander; stays in its lane; drives nice and straight; drive nice and straight; down the road nice and straight; straight and level; goes straight down the road; arrow straight; straight as an arrow down the road; drive arrow straight",
      drifts: "drift; drifts left; drifts to the",
      wanders:
        "wander a bit; wander a little; wander around; wander on the road; steering wander; wander; wanders; vague; all over the road; tramline",
      pulls: "pull on the highway; pulls while driving",
    },
    true,
  ),
  ...of(
    "road.vibration",
    {
      none: "no vibration; no shake; no shimmy; does not shake; no shaking; does not shimmy; does not vibrate; doesn t shake; smooth at speed; vibration free; no vibrations",
      slight:
        "slight vibration; little vibration; bit of a vibration; bit of vibration; small vibration; slight shake; a vibration",
      rim: "vibration in the steering wheel; shudder in the wheel; shudder through the wheel; shudder in the steering wheel; wobble in the wheel; shake the wheel; wheel shake; wheel wobble; shimmy in the wheel; shake in the wheel; steering wheel shake; vibration in the wheel; vibrates through the wheel; vibration through the steering wheel; vibration through the wheel; shake through the wheel; steering wheel wobble",
      seat: "vibration in the seat",
    },
    true,
  ),
  ...of(
    "road.noise",
    {
      none: "no strange noise on the road; no rattle; no noise on the road; no clunks; drive quiet; quiet on the road; no squeak; no squeak or rattle; no squeaks; no knocks or clunks; no clunk or rattle",
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
        "start right up; first crank; fired right off; fires right off; fire right off; started on the first attempt; first attempt; fired first time; started readily; start readily; straight on the key; straight away on the key; start easy; start on the key; start on the button; start first time; start first turn; start at the first turn; start without fuss; bang on; start straight off; first touch; first flick; catch at once; fire right up; start at once; starts immediately; fires up immediately; start on the first turn; start instantly; first turn of the key; starts first time; at once; fire up first time; right away; fires right up; start straight away; starts on the button; start on the button; starts first turn; goes first time; go first time; fires first time; starts every time; starts instantly; immediately; starts right up every time; start easily; starts easily; starts well; starts great; starts good; starts at first; start at first; at first try; starts at once; on the first try; at first turn; comes at once; comes immediately",
      "within-ten-seconds":
        "few seconds; couple of crank; couple crank; few crank; second of cranking; few cranks; a few cranks; crank for a few seconds; bit of cranking; crank a while; cranks a while; crank for a bit; take a bit of cranking; took a bit of cranking; within ten seconds; starts after a few seconds; starts within a few seconds; couple of seconds; needs a bit of cranking; within a few seconds; takes a few seconds",
      "several-tries":
        "few tries; couple try; couple of go; took a couple; second try; third try; third time; couple of attempt; few attempt; second attempt; third attempt; fourth attempt; few go; took some doing; few pumps; several tries; couple of tries; two or three tries; takes a few tries; hard to start; starts after a few tries; reluctant to start; needs coaxing; takes some cranking",
      "no-start":
        "does not start; will not start; no start; not start; does not run; non runner; not running",
    },
    true,
  ),
  ...of("road.cold-start", {
    "at-once":
      "fine; no trouble; no problem; no issue; right up; straight up; good; nicely; perfectly; immediate; instant; no drama; no fuss; on the button; on the key; first time; first turn; half a turn; first crank; first go; at the first; at first; quarter turn",
    "several-tries":
      "reluctant; reluctantly; takes a bit; a bit of a pig; need a few goes; a pain; difficult; struggles; fussy; does not like it",
    "within-ten-seconds":
      "takes a few turns; few turns; after a few turns; needs a few turns; bit of churning",
  }),
  ...of("road.lock-up", {
    in: "work; works; come in; comes in; engages; engage; clicks in; drops in; kicks in; in and out",
    out: "does not work; not work; not working; does not engage; will not engage; does not come in; never comes in; disconnected",
    "none-fitted":
      "not fitted; no overdrive; does not have; does not have it; has not got; without overdrive; never fitted",
  }),
  ...of(
    "road.idle-quality",
    {
      even: "smooth at idle; steady at idle; even at idle; ticks over nicely; ticks over sweetly; ticks over like a watch",
      uneven: "rough at idle; lumpy at idle",
      hunts: "hunt at idle; hunting at idle; hunt on tickover",
      misses: "miss at idle; misfire at idle",
    },
    true,
  ),
  ...of("road.idle-quality", {
    even: "even; idles smooth; idle smoothly; smooth; steady; idles nice; evenly; idles evenly; idles fine; idle good; idles well; purrs; nicely; well; smoothly; beautifully; sweetly; perfectly; fine; good; nice; rock steady; nice and smooth; nice and steady; nice and even; tick over nicely; lovely; spot on; settles nicely",
    uneven: "uneven; rough; lumpy; rough idle; idles rough; lopey; bit rough; a bit rough; lumpy; not smooth",
    hunts: "up and down; hunt; hunting; surges; hunts up and down",
    misses: "miss; misfire; misses; has a miss",
  }),
  ...of(
    "engine.smoke-warm",
    {
      none: "no smoke; not smoke; does not smoke; smoke free; none; no smoke at all; not a puff; no smoke out the back; no smoke out of the back; does not burn oil; burns no oil; clean tailpipe; does not smoke at all; nothing; doesn t blow smoke; not see any smoke; not see smoke; not seen any smoke; not seeing any smoke; no smoke coming out",
      vapor: "white vapor; steam that clears; a bit of steam; steam; condensation",
      white: "white smoke; white",
      blue: "blue smoke; blue; smokes blue; smokes a little blue; puff of blue; burns oil; oil smoke; bluish; burn any oil; burning any oil; burning oil; use any oil",
      black: "black smoke; black; runs rich; rich",
    },
    true,
  ),
  ...of("engine.smoke-warm", {
    none: "goes away; go away; goes right away; went away; clears; clear up; clears up; clears right up; cleared up; clears itself; gone in a second; gone in a minute; gone in a few seconds; gone after a second; gone after a minute; disappears; disappear; then nothing; nothing after that; stops after a minute; quits after a minute; it is clean; then clean; then it is clear; it is clear; after nothing; after that nothing; afterwards nothing; later nothing; runs clean; burns clean; cleans up",
  }),
  ...of("engine.smoke-overrun", {
    none: "no smoke; no blue smoke; not smoke; no puff; none; nothing; not a puff",
    puff: "puff; puff of blue on the overrun; puff on overrun; puffs on lift off; puff of smoke; blue smoke; puff of blue",
    cloud: "cloud on overrun",
  }),
];
