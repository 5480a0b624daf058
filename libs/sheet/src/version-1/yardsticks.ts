import type { Severity } from "@evenhand/shared/severity";
import type { ConditionNeeded, Item, Limit, ReadingSpec } from "@evenhand/shared/sheet";
import { commonPractice } from "./sources.ts";

type Yardstick = Partial<
  Pick<ReadingSpec, "alarms" | "sound" | "mirror" | "noAlarmBecause" | "dayToDay" | "dayToDayShare"> &
    Pick<Item, "sameConditions" | "yardstickNeeds">
>;

type Where = Partial<Pick<Limit, "at" | "when" | "systemVolts" | "byOption" | "isReadingOf">>;

const alarm =
  (side: Limit["side"]) =>
  (value: number, severity: Severity, where: Where = {}): Limit => ({
    side,
    value,
    severity,
    source: commonPractice,
    ...where,
  });
/** Bad under, and bad over a figure of common practice; equality passes. */
const under = alarm("min");
const over = alarm("max");

const onSpare = { at: { spare: "small" } } as const;
const gauge = "it tells of the gauge, and nothing of the car";
const charged: ConditionNeeded = { condition: "charger-off", atLeast: 2 };
/** A generator is never judged at idle, an alternator only for what it gives too much. */
const atSpeed = [{ condition: "engine-speed", atLeast: 1200 }];
const hotOil = [{ condition: "oil-temperature", atLeast: 70 }];

const fromClaim =
  "right or wrong only beside the claim, the tag and the turns: the handbook's rules judge it";
const dimension = "a dimension, neither good nor bad by itself";
const makers = "only the maker's own figure can judge it";
const sides = "judged against the other side and the maker's figure, never by itself";
const miles = "miles are neither good nor bad by themselves: papers, digits and wear judge them";
const forRatio = "read to work out the axle ratio";

const panelThickness: Yardstick = { alarms: [over(400, "worth")], sound: { atMost: 200 } };
const gapWidth: Yardstick = {
  alarms: [over(8, "worth"), under(2, "worth")],
  sound: { atLeast: 2.5, atMost: 7 },
};
const doorSag: Yardstick = { alarms: [over(6, "repair"), over(12, "worth")], sound: { atMost: 4 } };

/**
 * Past which figure a reading is bad, and how bad, where no regulation says it; in the item's base unit. All are common practice
 * without a source, and a firm may change them; where a maker publishes a limit, his is entered and rules. `sound` leaves the
 * stretch nobody can judge by the figure alone without a yardstick, and where nothing is bad says what such a figure ordinarily is;
 * `mirror` sets a reading beside the one on the other side of the car; `dayToDay` is how far the thing moves by itself between days.
 */
export const yardsticks: Readonly<Record<string, Yardstick>> = {
  "visit.paint-gauge-check": { noAlarmBecause: gauge },
  "visit.tread-gauge-check": { noAlarmBecause: gauge },
  "visit.ambient-temperature": { noAlarmBecause: "weather is nobody's fault" },
  "visit.engine-cold": { alarms: [over(5, "repair")], dayToDay: 3 },
  "identity.odometer": { noAlarmBecause: miles },
  "identity.odometer-on-papers": { noAlarmBecause: miles },
  "body.paint-thickness": panelThickness,
  "body.paint-highest": panelThickness,
  "gaps.width-top": gapWidth,
  "gaps.width-bottom": gapWidth,
  "gaps.flushness": { alarms: [over(4, "repair"), under(-4, "repair")], sound: { atLeast: -3, atMost: 3 } },
  "doors.hinge-play": doorSag,
  "doors.drop": doorSag,
  "interior.steering-wheel-diameter": {
    noAlarmBecause: "it only says what free play is allowed",
    sound: { atLeast: 13, atMost: 22 },
  },
  "electrics.vent-temperature": {
    alarms: [over(14, "repair", { when: [{ condition: "outside-temperature", atMost: 35 }] })],
    sound: { atMost: 10 },
    dayToDay: 4,
  },
  "electrics.volts-rest": {
    alarms: [
      under(12.2, "small", { systemVolts: 12 }),
      under(11.9, "repair", { systemVolts: 12 }),
      under(6.1, "small", { systemVolts: 6 }),
      under(5.9, "repair", { systemVolts: 6 }),
    ],
    yardstickNeeds: [charged],
    dayToDay: 0.3,
  },
  "electrics.volts-cranking": {
    alarms: [under(9.6, "repair", { systemVolts: 12 }), under(4.8, "repair", { systemVolts: 6 })],
    dayToDay: 0.4,
  },
  "electrics.volts-charging": {
    alarms: [
      under(13.5, "repair", { systemVolts: 12, when: atSpeed }),
      over(14.8, "repair", { systemVolts: 12 }),
      under(6.9, "repair", { systemVolts: 6, when: atSpeed }),
      over(7.4, "repair", { systemVolts: 6 }),
    ],
    sound: { when: atSpeed },
    dayToDay: 0.3,
  },
  "underbody.wheelbase": { noAlarmBecause: sides, mirror: { sound: 3, alarm: 15, severity: "worth" } },
  "underbody.diagonals": { noAlarmBecause: sides, mirror: { sound: 4, alarm: 15, severity: "worth" } },
  "driveline.axle-ratio": { noAlarmBecause: fromClaim },
  "driveline.axle-ratio-tag": { noAlarmBecause: fromClaim },
  "driveline.axle-turns": { noAlarmBecause: fromClaim },
  "driveline.ring-teeth": { noAlarmBecause: fromClaim },
  "driveline.pinion-teeth": { noAlarmBecause: fromClaim },
  "steering.ball-joint-play": {
    alarms: [over(2, "danger")],
    sound: { atMost: 1 },
    sameConditions: ["loaded"],
  },
  "steering.king-pin-play": { alarms: [over(3, "danger"), over(1.5, "repair")] },
  "underbody.ground-clearance": { alarms: [under(90, "small")] },
  "steering.wheel-bearing-play": { alarms: [over(0.2, "repair"), over(0.5, "danger")] },
  "steering.ride-height": {
    noAlarmBecause: sides,
    mirror: { sound: 10, alarm: 15, severity: "repair" },
  },
  "steering.toe": {
    alarms: [over(6, "repair"), under(-6, "repair"), over(15, "danger"), under(-15, "danger")],
    sound: { atLeast: -4, atMost: 4 },
  },
  "brakes.lining-thickness": { alarms: [under(0.09375, "repair")] },
  "brakes.disc-thickness": { noAlarmBecause: "the figure cast in the disc decides" },
  "brakes.disc-runout": { alarms: [over(0.15, "repair")], sound: { atMost: 0.1 } },
  "brakes.drum-diameter": {
    alarms: [over(0, "danger", { isReadingOf: { item: "brakes.drum-cast-figure", unit: "in" } })],
  },
  "brakes.drum-cast-figure": {
    noAlarmBecause: "the figure the drum is judged by",
    sound: { atLeast: 6, atMost: 18 },
  },
  "brakes.fluid-boiling-point": {
    alarms: [
      // By grade the least wet boiling point of 49 CFR 571.116 (S5.1.2, from memory); judging used fluid by it is practice.
      under(140, "repair", {
        byOption: {
          item: "brakes.fluid-kind",
          rows: [
            { option: "dot-3", value: 140 },
            { option: "dot-4", value: 155 },
            { option: "dot-5-1", value: 180 },
          ],
        },
      }),
      under(120, "danger"),
    ],
    sound: { atLeast: 160 },
    dayToDay: 5,
  },
  "wheels.pressure": {
    alarms: [under(20, "danger", onSpare), over(50, "danger", onSpare)],
    yardstickNeeds: [{ condition: "tire-cold", is: true }],
    sameConditions: ["tire-cold"],
    dayToDay: 4,
  },
  "wheels.torque": { alarms: [under(40, "danger"), over(160, "repair")], dayToDay: 10 },
  "wheels.rollout": { noAlarmBecause: dimension },
  "engine.compression": {
    alarms: [under(85, "worth")],
    sound: { atLeast: 110 },
    yardstickNeeds: [
      { condition: "warm", is: true },
      { condition: "throttle-open", is: true },
    ],
    sameConditions: ["warm", "throttle-open"],
  },
  "engine.leak-down": {
    alarms: [over(20, "worth")],
    yardstickNeeds: [{ condition: "test-pressure", atLeast: 70, atMost: 110 }],
    sameConditions: ["test-pressure"],
  },
  "engine.vacuum": {
    alarms: [under(15, "repair")],
    sound: { atLeast: 17 },
    yardstickNeeds: [{ condition: "height", atMost: 1500 }],
    dayToDay: 1,
  },
  "engine.oil-pressure-idle": {
    alarms: [under(8, "worth")],
    sound: { atLeast: 10, when: hotOil },
    dayToDay: 3,
  },
  "engine.oil-pressure-2000": {
    alarms: [under(20, "worth")],
    sound: { atLeast: 25, when: hotOil },
    dayToDay: 4,
  },
  "engine.freeze-point": { alarms: [over(-15, "small"), over(-5, "repair")], dayToDay: 2 },
  "engine.timing": { noAlarmBecause: makers, dayToDay: 1 },
  "engine.dwell": { noAlarmBecause: makers, dayToDay: 1 },
  "engine.bore": { noAlarmBecause: dimension },
  "engine.stroke": { noAlarmBecause: dimension },
  "engine.displacement": { noAlarmBecause: dimension },
  "road.idle": { alarms: [over(1100, "small"), under(400, "small")], dayToDay: 100 },
  "road.gear-ratio": { noAlarmBecause: forRatio },
  "road.revolutions": { noAlarmBecause: forRatio, sameConditions: ["gear"] },
  "road.indicated-revolutions": {
    noAlarmBecause:
      "right or wrong only beside a shop tachometer at the same moment: the handbook's rule judges it",
    sameConditions: ["gear"],
  },
  "road.indicated-speed": { noAlarmBecause: forRatio },
  "road.gps-speed": { noAlarmBecause: forRatio },
  "road.temperature-after-20": {
    alarms: [over(102, "repair"), under(60, "small")],
    sound: { atLeast: 70, atMost: 98 },
    dayToDay: 6,
  },
};

/**
 * An item with its figures of practice: those of the table before any its section wrote.
 *
 * @example withYardstick(compression).reading?.alarms[0]?.value // 85
 */
export function withYardstick(item: Item): Item {
  const found = yardsticks[item.id];
  if (found === undefined || item.reading === undefined) return item;
  const { sameConditions, yardstickNeeds, ...figures } = found;
  return {
    ...item,
    ...(sameConditions === undefined ? {} : { sameConditions }),
    ...(yardstickNeeds === undefined ? {} : { yardstickNeeds }),
    reading: { ...item.reading, ...figures },
  };
}
