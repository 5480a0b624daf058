import type { FirmLimits, LimitUse } from "@evenhand/shared/cross-check";
import type { Source } from "@evenhand/shared/sheet";

/** A figure a rule judges against. Only common-practice figures may be replaced by a firm's own. */
export type LimitRecord = {
  readonly words: string;
  readonly value: number;
  readonly unit: string;
  readonly source: Source;
  readonly firmMaySet: boolean;
  /** What a firm may set it to. */
  readonly between?: readonly [number, number];
};

const practice = (
  words: string,
  value: number,
  unit: string,
  between: readonly [number, number],
): LimitRecord => ({
  words,
  value,
  unit,
  source: { kind: "common-practice", text: "common practice, no source" },
  firmMaySet: true,
  between,
});

const published = (words: string, value: number, unit: string, text: string): LimitRecord => ({
  words,
  value,
  unit,
  source: { kind: "regulation", text },
  firmMaySet: false,
});

/** Every figure the handbook judges against, by a stable id. */
export const limits = {
  "date-correct.usual-days": practice(
    "a part is usually made at most this long before the car",
    60,
    "d",
    [0, 365],
  ),
  "date-correct.plausible-days": practice("still plausible before the car", 180, "d", [0, 730]),
  "date-correct.low-volume-days": practice("plausible for parts made in small numbers", 365, "d", [0, 1460]),
  "claims.new-days": practice("what is called new was made at most this long before", 730, "d", [30, 3650]),
  "tire-age.caution-years": practice("caution from this age", 6, "a", [3, 10]),
  "tire-age.replace-years": practice("replace at this age", 10, "a", [5, 15]),
  "tire.rolling-share": practice("rolling circumference over pi times diameter", 0.97, "1", [0.93, 1]),
  "tire.rolling-tolerance": practice(
    "half width of the rolling circumference's range, as a share",
    0.015,
    "1",
    [0.002, 0.05],
  ),
  "tire.rollout-share": practice(
    "measured rollout from the size's own circumference, as a share",
    0.03,
    "1",
    [0.005, 0.1],
  ),
  "ratio.spacing-share": practice(
    "half the spacing of axle ratios where the maker's list is not entered",
    0.025,
    "1",
    [0.005, 0.1],
  ),
  "ratio.rounding": practice(
    "a ratio quoted to two decimals is that far from the quotient",
    0.01,
    "1",
    [0.005, 0.05],
  ),
  "ratio.slip-low": practice(
    "least slip of an unlocked torque converter at a steady speed",
    0.01,
    "1",
    [0, 0.1],
  ),
  "ratio.slip-high": practice(
    "greatest slip of an unlocked torque converter at a steady speed",
    0.08,
    "1",
    [0.01, 0.2],
  ),
  "ratio.slowest": practice("road speed under which a ratio is not worked out", 20, "mph", [5, 60]),
  "speedometer.share": practice("speedometer error that matters, as a share", 0.05, "1", [0.01, 0.2]),
  "displacement.share": practice("displacement from the claimed one, as a share", 0.01, "1", [0.002, 0.05]),
  "compression.lowest-share": practice("lowest cylinder over the highest", 0.75, "1", [0.5, 0.95]),
  "leak-down.good": practice("leak-down under this is good, at 100 psi", 10, "%", [2, 30]),
  "leak-down.poor": practice("leak-down over this is poor, at 100 psi", 20, "%", [5, 50]),
  "leak-down.pressure": practice("test pressure the leak-down bands are for", 100, "psi", [60, 120]),
  "vacuum.low": practice(
    "least manifold vacuum of a stock engine at idle, at sea level",
    17,
    "inHg",
    [10, 20],
  ),
  "vacuum.high": practice("usual greatest manifold vacuum at idle, at sea level", 21, "inHg", [18, 25]),
  "vacuum.height": practice("vacuum lost for each 1,000 ft of height", 1, "inHg", [0.5, 1.5]),
  "vacuum.late-timing": practice("timing is late when it is this far behind the maker's", 2, "deg", [1, 6]),
  "oil-pressure.per-1000-rpm": practice("oil pressure for each 1,000 rpm, hot", 10, "psi", [3, 20]),
  "oil-pressure.hot": practice("oil at this temperature counts as hot", 80, "degC", [60, 110]),
  "charging.low-12": practice("least charging voltage, 12 V", 13.5, "V", [12.8, 14.2]),
  "charging.high-12": practice("greatest charging voltage, 12 V", 14.8, "V", [14.2, 15.5]),
  "charging.low-6": practice("least charging voltage, 6 V", 6.9, "V", [6.4, 7.2]),
  "charging.high-6": practice("greatest charging voltage, 6 V", 7.4, "V", [7.2, 8]),
  "charging.rpm-low": practice("charging is judged from this speed", 1500, "rpm", [800, 2500]),
  "charging.rpm-high": practice("charging is judged up to this speed", 2000, "rpm", [1500, 4000]),
  "cranking.least-12": practice("least voltage while cranking, 12 V", 9.6, "V", [8.5, 10.5]),
  "cranking.least-6": practice("least voltage while cranking, 6 V", 4.8, "V", [4, 5.5]),
  "paint.thin": practice("thinner than a factory finish", 75, "um", [40, 120]),
  "paint.factory": practice("factory finish or thin refinish up to this", 200, "um", [120, 300]),
  "paint.refinish": practice("refinish up to this; normal on a good restoration", 400, "um", [200, 600]),
  "paint.heavy": practice("heavy build up to this", 700, "um", [400, 900]),
  "paint.filler": practice(
    "filler likely from heavy build up to this; over it filler or body lead",
    1000,
    "um",
    [700, 2000],
  ),
  "paint.stand-out": practice(
    "robust standard deviations a panel lies off the car's median",
    3.5,
    "1",
    [2, 6],
  ),
  "paint.matters": practice(
    "a panel nearer to the car's median than this does not stand out",
    75,
    "um",
    [20, 200],
  ),
  "paint.matters-share": practice("nor one nearer than this share of the median", 0.3, "1", [0.1, 1]),
  "panel-color.noticeable": practice(
    "color difference of neighboring panels that is noticed",
    2,
    "dE",
    [0.5, 6],
  ),
  "gap.taper": practice("taper of a gap, or left against right", 3, "mm", [1, 10]),
  "square.difference": practice("wheelbase or diagonal, left against right", 6, "mm", [2, 20]),
  "wear.low-miles": practice("heavy wear is not expected under this", 30000, "mi", [5000, 100000]),
  "in-use.tread": published(
    "least tread depth, in 1/32 in",
    2,
    "1/32in",
    "49 CFR 570.9(a), from memory for passenger cars",
  ),
  "in-use.lining-riveted": published(
    "least lining over the fastener",
    0.03125,
    "in",
    "49 CFR 570.5(e), from memory; read in 570.59(c)",
  ),
  "in-use.lining-bonded": published(
    "least bonded lining over the shoe",
    0.03125,
    "in",
    "49 CFR 570.5(e), from memory",
  ),
  "in-use.toe-share": published("toe over the maker's value", 1.5, "1", "49 CFR 570.7(d)"),
  "in-use.runout": published("greatest lateral or radial runout of a wheel", 0.125, "in", "49 CFR 570.10(b)"),
  "in-use.free-play-16": published(
    "greatest free play, wheel of 16 in or less",
    2,
    "in",
    "49 CFR 570.7(a) table 1",
  ),
  "in-use.free-play-18": published(
    "greatest free play, wheel of 18 in",
    2.25,
    "in",
    "49 CFR 570.7(a) table 1",
  ),
  "in-use.free-play-20": published(
    "greatest free play, wheel of 20 in",
    2.5,
    "in",
    "49 CFR 570.7(a) table 1",
  ),
  "in-use.free-play-22": published(
    "greatest free play, wheel of 22 in",
    2.75,
    "in",
    "49 CFR 570.7(a) table 1",
  ),
  "vin.first-year": published(
    "check digit and year character are required from this model year",
    1981,
    "a",
    "49 CFR 565, from memory",
  ),
  "disclosure.early-years": published(
    "exempt after this, model years up to 2010",
    10,
    "a",
    "49 CFR 580.17(a)(3)",
  ),
  "disclosure.late-years": published(
    "exempt after this, model years from 2011",
    20,
    "a",
    "49 CFR 580.17(a)(3)",
  ),
  "disclosure.weight": published("exempt over this gross weight rating", 16000, "lb", "49 CFR 580.17(a)(1)"),
} as const satisfies Record<string, LimitRecord>;

export type LimitId = keyof typeof limits;

/** Whether a text is the id of a limit. */
export const isLimitId = (id: string): id is LimitId => Object.hasOwn(limits, id);

/**
 * The figure in force for a limit: a firm's own where it may set one, else the handbook's.
 *
 * @example limitUse("displacement.share", {}).value // 0.01
 */
export const limitUse = (id: LimitId, firm: FirmLimits = {}): LimitUse => {
  const record: LimitRecord = limits[id];
  const own = record.firmMaySet ? firm[id] : undefined;
  return own === undefined
    ? { id, value: record.value, unit: record.unit, origin: record.source.kind }
    : { id, value: own, unit: record.unit, origin: "firm" };
};

/** A limit a firm or a maker stands behind, in place of the handbook's. */
export const makersLimit = (id: LimitId, value: number): LimitUse => ({
  id,
  value,
  unit: limits[id].unit,
  origin: "maker",
});

export type LimitProblem = {
  readonly id: string;
  readonly reason: "unknown-limit" | "not-the-firms-to-set" | "out-of-range";
};

/**
 * What is wrong with a firm's own figures, all of it; an empty list means they can be used.
 *
 * @example firmLimitProblems({ "in-use.tread": 1 }) // [{ id: "in-use.tread", reason: "not-the-firms-to-set" }]
 */
export const firmLimitProblems = (firm: FirmLimits): LimitProblem[] =>
  Object.entries(firm).flatMap(([id, value]): LimitProblem[] => {
    if (!isLimitId(id)) return [{ id, reason: "unknown-limit" }];
    const record: LimitRecord = limits[id];
    if (!record.firmMaySet || record.between === undefined) return [{ id, reason: "not-the-firms-to-set" }];
    const [low, high] = record.between;
    return value >= low && value <= high ? [] : [{ id, reason: "out-of-range" }];
  });
