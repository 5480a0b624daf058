/** What hangs on the item that is answered, and not on the words: data beside the items, by their ids. Common practice, no source. */
export type Answering = {
  /** What a number without a unit may be: least, most, and the unit it is then taken in. */
  readonly bareFigures: Readonly<Record<string, readonly [number, number, string]>>;
  /** From which figure on a degree without a scale is one of Fahrenheit; below it Celsius. */
  readonly fahrenheitFrom: Readonly<Record<string, number>>;
  /** The unit that is meant where another is said: "six mil" of a brake pad is millimeters. */
  readonly unitsMeant: Readonly<Record<string, Readonly<Record<string, string>>>>;
  /** Items whose figure may be said with its tenth behind it: "twelve six". */
  readonly inTenths: readonly string[];
  /** Items whose figure may be said without its point: "three fifty-five". */
  readonly inHundredths: readonly string[];
  /** Least and most that can be, in the item's own unit: fourteen inches of a wheel are no tread. */
  readonly plausible: Readonly<Record<string, readonly [number, number]>>;
  /** Items whose figure may be said in thousands and hundreds with neither word: "sixty-one four". */
  readonly inThousands: readonly string[];
  /** Words beside which a figure is none of the item: what is asked for is the pressure of warm oil. */
  readonly notWith: Readonly<Record<string, RegExp>>;
  /** The same of talk, where one figure is said at a time and nothing beside it says what else it may be. */
  readonly notSpokenWith: Readonly<Record<string, RegExp>>;
  /** Items that are nought where they are said to be tight. */
  readonly noughtIsTight: RegExp;
  /** What the denial of an option says, where it says anything: not original is of another kind, not repainted is original. */
  readonly denied: Readonly<Record<string, Readonly<Record<string, string>>>>;
  /** What so many of a thing are, where their number is all that is said. */
  readonly byCount: Readonly<Record<string, Readonly<Record<number, string>>>>;
  /** Items of which a word without a part says nothing right after one of these was spoken of: no rattle, of an engine. */
  readonly notAfter: Readonly<Record<string, RegExp>>;
  /** Items of which the same words may be said in one breath as of the one before them: no smoke, hot or cold. */
  readonly saidTogether: readonly string[];
  /** Items whose words are listed at another: the same smoke, start and leak at another time. */
  readonly sameWords: Readonly<Record<string, string>>;
  /** What was said before stays where this is said behind it: it ticks cold, then it is quiet. */
  readonly keeps: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>>;
  /** Papers that are there where something is told of them: "the build sheet is framed". */
  readonly presentIfTold: RegExp;
  /** The unit of a bare figure where one of these words stands beside it. */
  readonly unitBeside: Readonly<Record<string, readonly (readonly [word: RegExp, unit: string])[]>>;
  /** Items to which "no" is no more than no. */
  readonly notByNo: RegExp;
  /** Things that are there by their own name: "power windows?" "no" is that they are not fitted. */
  readonly notFittedByNo: RegExp;
  /** Items that praise says nothing of. */
  readonly notByPraise: RegExp;
};

/** Cold, and neither hot nor warm beside it. */
const COLD_ALONE = /^(?!.*\b(?:hot|warm)\b).*\bcold\b/u;
/** Another speed than the sheet asks for. */
const OTHER_SPEED = /\b(?:(?:three|four|five) (?:thousand|grand)|3000|4000)\b/u;

export const answering: Answering = {
  bareFigures: {
    "engine.compression": [40, 320, "psi"],
    "engine.leak-down": [0, 100, "%"],
    "engine.vacuum": [4, 30, "inHg"],
    "engine.oil-pressure-idle": [2, 120, "psi"],
    "engine.oil-pressure-2000": [5, 120, "psi"],
    "engine.timing": [0, 40, "deg"],
    "engine.dwell": [20, 70, "deg"],
    "electrics.volts-rest": [5, 15, "V"],
    "electrics.volts-cranking": [3, 14, "V"],
    "electrics.volts-charging": [5, 16, "V"],
    "electrics.vent-temperature": [0, 90, "deg?"],
    "road.temperature-after-20": [50, 260, "deg?"],
    "visit.ambient-temperature": [-20, 120, "deg?"],
    "road.idle": [300, 1500, "rpm"],
    "identity.odometer": [1000, 999999, "mi"],
    "wheels.pressure": [10, 70, "psi"],
    "wheels.tread-depth": [1, 20, "1/32in"],
    "body.paint-thickness": [40, 3000, "um"],
    "body.paint-highest": [40, 5000, "um"],
    "gaps.width-top": [1, 15, "mm"],
    "gaps.width-bottom": [1, 15, "mm"],
    "brakes.lining-thickness": [1, 20, "mm"],
    "brakes.disc-thickness": [5, 40, "mm"],
    "driveline.axle-ratio": [2, 7.5, "1"],
    "driveline.axle-ratio-tag": [2, 7.5, "1"],
    "brakes.disc-runout": [0, 0.5, "mm"],
    "steering.king-pin-play": [0, 10, "mm"],
    "brakes.fluid-boiling-point": [80, 600, "deg?"],
  },
  fahrenheitFrom: {
    "electrics.vent-temperature": 25,
    "road.temperature-after-20": 130,
    "visit.ambient-temperature": 45,
    "brakes.fluid-boiling-point": 300,
  },
  unitsMeant: {
    "brakes.lining-thickness": { mil: "mm" },
    "brakes.disc-thickness": { mil: "mm" },
    "wheels.tread-depth": { mil: "mm" },
    "engine.vacuum": { in: "inHg" },
  },
  inTenths: ["electrics.volts-rest", "electrics.volts-cranking", "electrics.volts-charging"],
  inHundredths: ["driveline.axle-ratio", "driveline.axle-ratio-tag"],
  plausible: {
    "wheels.tread-depth": [0, 24],
    "steering.free-play": [0, 12],
    "brakes.lining-thickness": [0, 1],
    "brakes.disc-thickness": [3, 60],
    "electrics.volts-rest": [0, 30],
    "electrics.volts-cranking": [0, 30],
    "electrics.volts-charging": [0, 35],
    "wheels.pressure": [5, 90],
  },
  inThousands: ["identity.odometer"],
  notWith: { "engine.oil-pressure-idle": COLD_ALONE, "engine.oil-pressure-2000": COLD_ALONE },
  notSpokenWith: {
    "identity.odometer":
      /\bput\b.*\bon (?:it|her|the car)\b|\bsince (?:i|we)\b|\b(?:a|per|every|last) year\b|\bare mine\b/u,
    "road.noise": /\b(?:power steering|steering pump|pump|blower|fan|belt|starter|radio|heater|wiper)\b/u,
    "engine.oil-pressure-idle": OTHER_SPEED,
    "engine.oil-pressure-2000": OTHER_SPEED,
  },
  noughtIsTight: /play/u,
  denied: {
    "identity.originality": { "original-to-car": "other-type" },
    "body.paint-history": { refinished: "original", original: "refinished" },
    "identity.miles-claim": { actual: "unknown" },
    "body.magnet": { holds: "falls" },
    "engine.rebuild-claim": { rebuilt: "never" },
    "identity.registration": { current: "lapsed" },
    "underbody.floor-repair": { patched: "as-built", replaced: "as-built" },
    "driveline.tank-inside": { rusty: "clean" },
    "interior.trim-history": { original: "retrimmed-right" },
    "identity.title-holder": { "seller-in-hand": "seller-not-in-hand" },
    "wheels.wheel-kind": { "original-to-car": "other-type" },
    "road.lock-up": { in: "out" },
  },
  byCount: { "identity.keys": { 1: "incomplete", 2: "full-set" } },
  notAfter: { "road.noise": /^(?:engine|brightwork|doors)\.|^road\.(?:idle|cold)/u },
  saidTogether: ["engine.smoke-cold", "engine.smoke-warm"],
  sameWords: {
    "engine.smoke-cold": "engine.smoke-warm",
    "driveline.leaks-after": "driveline.leaks-before",
    "road.hot-restart": "road.cold-start",
  },
  keeps: {
    "interior.trim-history": { "part-retrimmed": ["original"] },
    "engine.noise": { "tick-cold": ["quiet"] },
    "engine.smoke-cold": { blue: ["none"], white: ["none"], black: ["none"], vapor: ["none"] },
  },
  presentIfTold: /^identity\.(?:build-sheet|invoice|service-book|restoration-photographs)$/u,
  unitBeside: { "identity.odometer": [[/\b(?:kilometer|km)\b/u, "km"]] },
  notFittedByNo:
    /^electrics\.(?:power-|air-conditioning)|^doors\.sunroof|hardtop|tonneau|limited-slip|battery-cutoff/u,
  notByNo: /^identity\.(?!lien)/u,
  notByPraise:
    /^identity\.|^visit\.|^body\.|electrics\.(?:system|polarity|charger)|fluid-kind|brakes\.circuit|tire-age|tire-construction|wheel-kind|fixing-kind|collision|rebuild|trim-history|floor-repair|damp|^road\.|smoke|leaks/u,
};
