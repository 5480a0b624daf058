import { of } from "./option-words.ts";
import type { OptionWords } from "./option-words.ts";

/** Steering, brakes and wheels: what each option is called when it is spoken of, beside the sheet's own words. No source: the trade's own words. */
export const chassisOptions: readonly OptionWords[] = [
  ...of("steering.bushings", {
    sound: "sound; good; solid; new; fine",
    cracked: "cracked; perished; crack",
    worn: "worn; worn through; shot; gone",
    missing: "missing",
  }),
  ...of("steering.dampers", {
    dry: "dry; not leak; not leaking; no leak; new; good; not leaking just tired",
    film: "oil film; film of oil; slight mist; misting; sweat; damp",
    leaking:
      "leak; leaking; leakage; blown; weeping; weep; wet with oil; oily; leaking badly; pouring; they leak; wet; drip",
    loose: "loose; bent",
  }),
  ...of("steering.damper-bounce", {
    one: "one bounce; comes up once; settles at once",
    two: "two bounces; bounces twice",
    more: "keep bouncing; bounces more",
  }),
  ...of("brakes.pedal-feel", {
    firm: "firm; hard; nice and hard; nice and high; rock solid; high; good pedal; high and firm; high pedal; firm pedal; solid; nice and firm; pedal is high; pedal s high; nice high pedal; high and hard; good firm pedal; rock hard",
    spongy: "spongy; soft; long; feel spongy; bit spongy; bit soft; low and soft; mushy; squishy",
    "pumps-up":
      "pumps up; pump them; got to pump; need pumping; have to pump; pump it up; pump them up; pump it; comes up when pumped; rises when pumped; have to pump it; need to pump it; have to pump",
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
    "brakes.circuit",
    {
      dual: "dual circuit; dual master; dual master cylinder; tandem master; tandem master cylinder; split circuit; dual circuit brakes",
      single: "single circuit; single master; single master cylinder",
    },
    true,
  ),
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
        "brake straight; stop straight; straight; dead straight under braking; do not pull; does not pull; not pull; straight under braking; pull up straight; pull up square; pull up square and true; stop square; square; stops straight; brakes in a straight line; no pull",
      "slight-pull":
        "touch of a pull; pull a touch; tiny pull; a hair to the left; a hair to the right; slight pull; pull slightly; pull very slightly; pull ever so slightly; pull just a little; pull a little bit; pulls a little; pulls slightly; pull a bit",
      "pulls-left": "pull left; pull to the left; pulls to the left; drag left; pulls to the nearside",
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
    "original-to-car":
      "original; factory; from factory; original wheel; the original; original to the car; came on it; factory wheel",
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
    complete: "all its; got all; has all; all of them; complete; all there; all four; sound; good; present",
    marked: "dented; pitted; marked; dinged; scratched; scuffed",
    incomplete: "missing; one missing; three of four; some missing; is missing",
  }),
];
