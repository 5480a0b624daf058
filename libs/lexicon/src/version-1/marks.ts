/** What a mark, a bare word or a bare figure of a checklist says of an item, where its options alone do not tell. Common practice, no source. */
export type Marks = {
  /** Items whose good answers tell kinds apart (original or another's, how old, whose): a tick is none of them. */
  readonly ofKind: readonly string[];
  /** The good answer that a tick stands for, where there are several and the first claims more. */
  readonly good: Readonly<Record<string, string>>;
  /** Items that are trouble by their own name: "pedal sinks: no" is good. */
  readonly trouble: readonly string[];
  /** Words behind a figure that make it another reading than the item's: `175 wet` beside `165 dry`. */
  readonly otherFigure: Readonly<Record<string, readonly string[]>>;
  /** Words one of which stands in what answers an item by a text of its own; a sentence of a test is none. */
  readonly codeWords: Readonly<Record<string, RegExp>>;
  /** Items meant only where one of these words stands in the name, the answer or the remark: “ball joints ok” is not said of their boots. */
  readonly needs: Readonly<Record<string, RegExp>>;
  /** The same, but where a mark of a scale grades it: a door that sags says nothing of its paint, and a door graded B may. */
  readonly needsInWords: Readonly<Record<string, RegExp>>;
  /** Names too wide for a mark or a good word beside them to answer the item: an engine that is good may tick. */
  readonly tooWide: Readonly<Record<string, RegExp>>;
  /** Answers that words alone do not give, by item and option: a title in the seller's name may lie elsewhere. */
  readonly tooMuch: Readonly<Record<string, RegExp>>;
  /** What is meant instead where one of these words stands in the answer or the remark: a heater that blows on one speed has a fan that does. The last says of which names alone. */
  readonly instead: Readonly<Record<string, readonly [words: RegExp, item: string, of?: RegExp]>>;
  /** What is asked again once the car was driven. */
  readonly afterDrive: Readonly<Record<string, string>>;
};

const ENGINE = /^(?:engine|motor)$/iu;
const TRUNK = /^(?:trunk|boot|luggage(?: area)?)$/iu;
const POWER_STEERING = /^power steering$/iu;
/** What a wiper's blade does to the glass while it sweeps, and what is wrong with its rubber. */
const OF_BLADES =
  /\b(?:streak\w*|smear\w*|chatter\w*|judder\w*|(?:blades?|rubbers?) (?:\w+ )?(?:split|torn|worn|perished|hard\w*|old|cracked|shot|poor|missing|rough|ragged)|(?:worn|split|torn|perished|hard|old|cracked|poor|new|missing) (?:\w+ )?(?:blades?|rubbers?))\b/iu;
/** The face of a dial or the knob of a switch, which may be broken while it works. */
const OF_FACE = /\b(?:glass|face|bezel|lens|dial|rim|trim|knob|button)\b/iu;
/** The same, and a reading that is low or high, which may be true. */
const OF_DIAL = new RegExp(
  `${OF_FACE.source}|\\b(?:reads?|reading|shows?) (?:a (?:bit|little) |too |very |slightly )?(?:low|high|hot|cold)\\b`,
  "iu",
);
/** A buckle or a reel that fails, and not one that is praised beside the webbing. */
const BELT_STUCK =
  /\b(?:jam(?:s|med)?|stuck|(?:not|n't) (?:latch|lock|click|fasten|retract)\w*|(?:slow|stiff) to retract|(?:buckles?|latch(?:es)?|retractors?|reels?) (?:\w+ )?(?:broken|stuck|dead|weak|stiff|slow|bad|seized|fail\w*|jam\w*|missing|sticks?|sticking|worn|loose))\b/iu;
/** What eats a panel from its lower seam, said of the bottom; a dent there is the panel's. */
const RUST_AT_BOTTOM =
  /^(?!.*\b(?:dent\w*|ding\w*|scratch\w*|chip\w*|creas\w*)\b)(?=.*\b(?:bottoms?|btm|lower (?:edge|seam|lip|corner|few|inch\w*|skin|part|section|third)|(?:at|along|round) (?:the |its )?(?:edge|base))\b).*\b(?:rust\w*|corro\w*|rot\w*|blister\w*|bubbl\w*|perforat\w*|hol(?:e|es|ed)|fill(?:er|ed)|patch\w*)\b/isu;
/** Of windows at the side a bare word is said of the glass or of how they go up and down. */
const OF_SIDE_WINDOWS = /^(?!.*\bside windows?\b)/isu;
const SYSTEM = /^(?:(?:fuel|cooling|brake) system|power steering)$/iu;

export const marks: Marks = {
  ofKind: [
    "identity.originality",
    "identity.claimed-model",
    "identity.title-kind",
    "identity.stood",
    "identity.miles-claim",
    "identity.restoration-claim",
    "interior.trim-history",
    "body.paint-history",
    "body.panel-material",
    "brightwork.emblems",
    "wheels.wheel-kind",
    "wheels.tire-age",
    "engine.rebuild-claim",
    "engine.as-built",
    "engine.fuel-age",
    "driveline.limited-slip",
  ],
  good: {
    "identity.keys": "full-set",
    "engine.smoke-cold": "none",
    "engine.smoke-warm": "none",
  },
  trouble: ["brakes.pedal-sink"],
  otherFigure: { "engine.compression": ["wet", "with oil", "after oil", "oil added", "oil in"] },
  codeWords: {
    "identity.gearbox-kind":
      /\b(?:manual|auto\w*|\d[- ]?speed|(?:three|four|five|six)[- ]?speed|overdrive|pre-?selector)\b/iu,
  },
  needs: {
    "brightwork.glass-faults": new RegExp(
      `${OF_SIDE_WINDOWS.source}|\\b(?:glass\\w*|glazing|panes?|chip\\w*|crack\\w*|scratch\\w*|delam\\w*|cloud\\w*|clear|tint\\w*|broken|smashed|shatter\\w*|star\\w*|etch\\w*)\\b`,
      "isu",
    ),
    "doors.regulators": new RegExp(
      `${OF_SIDE_WINDOWS.source}|\\b(?:work\\w*|operat\\w*|function\\w*|wind(?!ow)\\w*|wound|crank\\w*|regulator\\w*|motor\\w*|power|electric|mechanism|open\\w*|clos\\w*|mov\\w*|up|down|slow\\w*|stiff|stuck|sticks?|jam\\w*|drop\\w*|fast|smooth\\w*|lift\\w*)\\b`,
      "isu",
    ),
    "brakes.pedal-feel": /\b(?:pedal|feel\w*|firm|spong\w*|soft|hard|long|pump\w*|high|low)\b/iu,
    "brakes.pedal-sink": /\b(?:pedal|sinks?|sank|creep\w*|holds?)\b/iu,
    "road.braking": /^(?!.*\b(?:front|rear)\s+(?:brakes?|discs?|drums?)\b)/isu,
    "electrics.speedometer": /speed|mph/iu,
    "electrics.fuel-gauge": /\b(?:fuel|petrol|gas|tank|empty|full)\b/iu,
    "electrics.temperature-gauge": /\b(?:temp\w*|water|coolant)\b/iu,
    "electrics.oil-gauge": /\boil\b/iu,
    "electrics.charge-gauge":
      /\b(?:charg\w*|am(?:p|meter)s?|volt\w*|alternator|dynamo|generator|battery)\b/iu,
    "electrics.tachometer": /\b(?:tach\w*|revs?|rev\w*|rpm)\b/iu,
    "body.paint-thickness": /^(?!.*\b(?:gaps?|hinges?|shut ?lines?|drop)\b)/isu,
    "body.paint-highest": /^(?!.*\b(?:gaps?|hinges?|shut ?lines?|drop)\b)/isu,
    "body.faults": /^(?!.*\b(?:gaps?|shut ?lines?)\b)/isu,
    "road.cold-start": /\b(?:start\w*|cold|fires|fired|firing|crank\w*)\b/iu,
    "road.hot-restart": /\b(?:start\w*|restart\w*|hot|warm|fires|fired)\b/iu,
    "body.magnet": /\bmagnet\w*/iu,
    "body.patch-edges": /\bpatch\w*/iu,
    "body.spot-welds": /\bweld\w*/iu,
    "body.panel-material": /\b(?:material|steel|alumin\w*|alloy|glass|fib(?:er|re)\w*|wood\w*|grp)\b/iu,
    "doors.hinge-play": /\b(?:hinge\w*|play)\b/iu,
    "doors.drop": /\b(?:drops?|dropped|sag\w*|drag\w*)\b/iu,
    "doors.latches":
      /\b(?:latch\w*|clos\w*|shut\w*|open\w*|lock\w*|catch\w*|operat\w*|work\w*|slam\w*|handles?)\b/iu,
    "identity.gearbox-kind": /\b(?:kind|type|speeds?|manual|auto\w*|fitted|gearbox|transmission)\b/iu,
    "driveline.leaks-before": /^(?!.*\bfluid\b)|\b(?:leak|drip|weep|seep)/isu,
    "driveline.leaks-after": /^(?!.*\bfluid\b)|\b(?:leak|drip|weep|seep)/isu,
    "interior.trim-history": /^(?!.*\bseats?\b).*\b(?:trim|interior|upholstery|cabin)\b/isu,
    "interior.pedals": /\b(?:pedals|rubbers?|pads?|wear|worn|covers?)\b/iu,
    "steering.ball-joint-seals": /\b(?:seals?|boots?|gaiters?|rubbers?|dust|covers?|split|torn|perished)\b/iu,
    "interior.belt-latch":
      /\b(?:latch\w*|locks?|locking|buckl\w*|catch\w*|clicks?|retract\w*|reels?|operat\w*|function\w*|mechanism\w*|work\w*|jam\w*|stuck|inop\w*|fasten\w*)\b/iu,
    "underbody.floor-repair": /\b(?:repair\w*|patch\w*|built|original|replace\w*|new|cover\w*|factory)\b/iu,
    "underbody.welds-and-sealer": /\b(?:weld\w*|seal\w*)\b/iu,
    "body.window-channels":
      /\b(?:channels?|apertures?|under|around|below|corners?|surrounds?|frames?|rust\w*|bubbl\w*|filler)\b/iu,
  },
  tooWide: {
    "engine.noise": ENGINE,
    "engine.finish": ENGINE,
    "engine.cooling-pressure": /^cooling(?: system)?$/iu,
    "electrics.lamps": /^(?:exterior|interior|outside|inside)$/iu,
    "trunk.damp": TRUNK,
    "trunk.floor": TRUNK,
    "underbody.fresh-undercoat": /^under(?:coat|seal)(?:ing)?$/iu,
    "road.tracking": /^(?:power steering|steering (?:joints?|box|rack|wheel|column|pump|hoses?))$/iu,
    "steering.hoses": POWER_STEERING,
    "steering.free-play": POWER_STEERING,
    "driveline.leaks-before": SYSTEM,
    "driveline.leaks-after": SYSTEM,
  },
  needsInWords: {
    "body.finish":
      /\b(?:\w*paint\w*|finish\w*|gloss\w*|shin\w*|lacquer|clear ?coat|polish\w*|fade\w*|fading|dull|swirls?|orange peel|oxidi\w*|flak\w*|peel\w*)\b/iu,
  },
  tooMuch: {
    "electrics.wipers no": OF_BLADES,
    "electrics.clock no": OF_FACE,
    "electrics.speedometer no": OF_FACE,
    "electrics.tachometer no": OF_FACE,
    "electrics.fuel-gauge no": OF_DIAL,
    "electrics.temperature-gauge no": OF_DIAL,
    "electrics.oil-gauge no": OF_DIAL,
    "electrics.charge-gauge no": OF_FACE,
    "electrics.radio no": OF_FACE,
    "road.lock-up in": /\bworks?\b/iu,
    "driveline.leaks-before not-fitted": /(?:)/u,
    "driveline.leaks-after not-fitted": /(?:)/u,
    "interior.trim-history retrimmed-right":
      /^(?!.*\b(?:correct\w*|right|original|factory|proper\w*|pattern|type)\b)/isu,
    "wheels.tire-faults none": /\b(?:tread|dates?)\b/iu,
    "wheels.tread-wear even": /^(?!.*\b(?:even\w*|wear\w*|normal)\b).*\btread\b/isu,
    "identity.title-holder seller-in-hand":
      /^(?=.*\bnames?\b)(?!.*\b(?:hand|present|seen|shown|held|have|here|office|file|possession)\b)/iu,
  },
  instead: {
    "interior.belt-webbing": [BELT_STUCK, "interior.belt-latch"],
    "body.faults": [RUST_AT_BOTTOM, "doors.bottoms", /\bdoors?\b/iu],
    "engine.oil-pressure-idle": [
      /^(?!.*\b(?:idle|tick-?over)\b).*(?:\b[2-4][05]00\b|\bcruis|\bat speed\b)/isu,
      "engine.oil-pressure-2000",
    ],
    "electrics.lamps": [/\blens(?:es)?\b/iu, "brightwork.lenses"],
    "electrics.heat": [
      /^(?!.*\b(?:hot|cold|\w*warm|heats?|heat)\b).*\b(?:blows?|blowing|blower|fan|motor|speeds?)\b/isu,
      "electrics.blower",
    ],
  },
  afterDrive: { "driveline.leaks-before": "driveline.leaks-after" },
};
