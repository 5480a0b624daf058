import { expect, test } from "vitest";
import { ofCoupe } from "../../testing/claims-in.ts";
import { spokenText } from "../spoken-text/index.ts";
import { draftStatement } from "./index.ts";
import type { Remark } from "./index.ts";

const draft = (text: string): Remark[] => draftStatement(spokenText([{ start: 5, end: 20, text }]), ofCoupe);

/** Item, place and what matters of the answer. */
const short = ({ item, position, answer }: Remark): string => {
  const said =
    answer.kind === "faults"
      ? [
          ...answer.found.map(({ kind }) => kind),
          ...(answer.denied === "all" ? ["-all"] : answer.denied.map((kind) => `-${kind}`)),
        ]
      : answer.kind === "choice"
        ? [answer.option]
        : answer.kind === "reading"
          ? [String(answer.values[0]?.value), answer.unit]
          : answer.kind === "working" || answer.kind === "grade" || answer.kind === "presence"
            ? [String(answer.value)]
            : [answer.kind];
  return [item, position, ...said].filter((one) => one !== "").join(" ");
};

test.each([
  [
    "Both rockers are solid.",
    ["body.faults left-rocker -corrosion -perforation", "body.faults right-rocker -corrosion -perforation"],
  ],
  ["There is a dent in the left fender.", ["body.faults left-front-fender dent"]],
  ["Everything works except the clock and the radio.", ["electrics.clock no", "electrics.radio no"]],
  [
    "Everything works except the clock, the radio and the horn.",
    ["electrics.clock no", "electrics.radio no", "electrics.horn no"],
  ],
  [
    "The fuel gauge and the clock work, all but the clock and the fuel gauge.",
    ["electrics.clock no", "electrics.fuel-gauge no"],
  ],
  ["Everything works except the heater fan, which only has one speed.", []],
  ["Seats, driver's seat is torn.", ["interior.seat-faults left-front tear"]],
  ["Doors, the driver's door has rust.", ["body.faults left-front-door corrosion"]],
  [
    "The driver's seat is worn but not torn.",
    ["interior.seats left-front heavy-wear", "interior.seat-faults left-front -tear"],
  ],
  ["Oil pressure is forty cold.", []],
  ["The hood has a chip and the roof has a scratch.", ["body.faults hood chip", "body.faults roof scratch"]],
  [
    "The rear main is dry, and so is the gearbox.",
    ["driveline.leaks-before rear-main-seal none", "driveline.leaks-before gearbox none"],
  ],
  [
    "It shows eighty-seven thousand, no, sorry, eighty-six thousand two hundred miles.",
    ["identity.odometer 86200 mi"],
  ],
  ["The clock works. No, it doesn't.", ["electrics.clock no"]],
  ["The wipers don't work. The horn does.", ["electrics.wipers no", "electrics.horn yes"]],
  ["The brake calendar on the left rear is leaking.", ["brakes.wheel-cylinders left-rear drip"]],
  ["No radio in it.", ["electrics.radio not-fitted"]],
  ["I haven't tested the horn.", ["electrics.horn not-seen"]],
  [
    "Front pads are six millimeters.",
    ["brakes.lining-thickness left-front 6 mm", "brakes.lining-thickness right-front 6 mm"],
  ],
  [
    "Compression is one forty-five, one forty-eight, one fifty and one forty.",
    [
      "engine.compression cylinder-1 145 psi",
      "engine.compression cylinder-2 148 psi",
      "engine.compression cylinder-3 150 psi",
      "engine.compression cylinder-4 140 psi",
    ],
  ],
  ["Tires are four years old on the left front.", ["wheels.tire-age left-front three-to-six-years"]],
  ["It has never been hit.", ["underbody.collision-repair none"]],
  ["There is no radio.", ["electrics.radio not-fitted"]],
  ["The radio doesn't do anything.", ["electrics.radio no"]],
  ["Heater? Hot.", ["electrics.heat yes"]],
  ["Headlining? Sagging over the back seat.", ["interior.headliner heavy-wear"]],
  [
    "Brake lights? Left one's out. And the right? That one's working.",
    ["electrics.lamps left-stop no", "electrics.lamps right-stop yes"],
  ],
  ["Wipers yes, washers no.", ["electrics.wipers yes", "electrics.washers no"]],
  ["There's a dent right here, can you see it, on the roof.", ["body.faults roof dent"]],
  [
    "The roof has no dents, the clutch doesn't slip, the brakes stop straight.",
    ["body.faults roof -dent", "road.take-up smooth", "road.braking straight"],
  ],
  [
    "Battery is at twelve six and with it running we got fourteen one.",
    ["electrics.volts-rest 12.6 V", "electrics.volts-charging 14.1 V"],
  ],
  ["There is an oil spot under it.", []],
  // A word that only looks like one of the trade's is left as it is.
  ["We were putting it away and looking at the roof.", []],
  // What is said of the rest is not said of the part in view.
  ["The gearbox weeps. Otherwise dry.", ["driveline.leaks-before gearbox weep"]],
])("%s", (text, expected) => {
  expect(draft(text).map(short).toSorted()).toEqual(expected.toSorted());
});

test("a lamp that may be the excepted one is claimed neither to work nor not to", () => {
  const said = draft("All the lights work except the left rear.").map(short);
  expect(said).toContain("electrics.lamps right-tail yes");
  expect(said).toContain("electrics.lamps left-rear-turn no");
  expect(said.filter((one) => /left-(?:tail|stop)/u.test(one))).toEqual([]);
});

test.each([
  ["Does the clock work? Never has.", ["electrics.clock no"]],
  ["The clock works? No. Does the radio work? Sure does.", ["electrics.clock no", "electrics.radio yes"]],
  ["Does it smoke? Not that I know of.", ["engine.smoke-warm none"]],
  // A no to what is denied already denies it.
  ["The radiator doesn't leak? No.", ["engine.radiator none"]],
  ["I don't think the radio works.", ["electrics.radio no"]],
  ["No smoke, hot or cold.", ["engine.smoke-cold none", "engine.smoke-warm none"]],
  // What is true of the model is asked of this car, and claimed of it only where somebody comes back to it.
  ["The clock on a Spider never works. This one does.", ["electrics.clock yes"]],
  ["They all rust in the roof.", []],
  ["I'd change the hood, the roof has a dent.", ["body.faults roof dent"]],
  // Whose it is nobody knows, and a count is a yes only to whether there are any.
  ["Do the doors shut? Mine does.", []],
  ["Does the dash have cracks? Three.", ["interior.dash-top heavy-wear"]],
  // What was said of another part is not turned round for the one that is asked for since.
  ["The windshield has no chips. Is that leather? It's vinyl.", ["brightwork.glass-faults windshield -chip"]],
  ["Compression should be one seventy.", []],
  ["Door skins rot in the sun.", []],
  // What is named beside money is in view for what follows.
  [
    "The hood has a dent. The trunk lid is worth five hundred dollars. It has a chip.",
    ["body.faults hood dent", "body.faults trunk-lid chip"],
  ],
  ["Rear bumper's pitted up pretty good.", ["brightwork.bumper-faults rear pitting"]],
  [
    "The seats must be changed.",
    [
      "interior.seats left-front heavy-wear",
      "interior.seats rear heavy-wear",
      "interior.seats right-front heavy-wear",
    ],
  ],
])("answered or told of the model: %s", (text, expected) => {
  expect(draft(text).map(short).toSorted()).toEqual(expected.toSorted());
});

test.each([
  "Hello and welcome, I hope you are all well.",
  "Is there any rust in the doors?",
  "My brother had one of these and it rotted clean away.",
  "We're asking eighteen thousand dollars.",
  "If you fit new tires it will drive better.",
  "I would put new seats in it.",
  "Call us, and come and see it.",
])("claims nothing: %s", (text) => {
  expect(draft(text)).toEqual([]);
});

test.each([
  ["The hood was repainted.", "asserted"],
  ["The hood was repainted, I believe.", "hedged"],
  ["I think the hood was repainted.", "hedged"],
  ["The seller says the hood was repainted.", "second-hand"],
  ["According to the last owner, the hood was repainted.", "second-hand"],
])("%s is %s", (text, firmness) => {
  expect(draft(text).map((remark) => remark.firmness)).toEqual([firmness]);
});

test("a claim carries its second, its words, and where they stand", () => {
  const text = "Hello there. The roof has a dent.";
  const [remark] = draft(text);
  expect(remark?.words).toBe("The roof has a dent");
  expect(text.slice(remark?.start, remark?.end)).toBe(remark?.words);
  expect(remark?.second).toBeGreaterThanOrEqual(5);
});

test("a part taken from what was in view is marked, and what was misheard is shown", () => {
  const remarks = draft("The roof is straight. It has no rust either.");
  expect(remarks.some(({ inferred }) => inferred)).toBe(true);
  expect(draft("The rock her panel on the left is solid.")[0]?.heard).toEqual(["rock her panel"]);
});

test.each([
  ["The dash is crack free.", ["interior.dash-top"]],
  ["The left front fender is rust free and dent free.", ["body.faults"]],
  ["The windshield is free from chips and scratches.", ["brightwork.glass-faults"]],
])("what a part is free of is not found there: %s", (text, items) => {
  for (const { item, answer } of draft(text)) {
    expect(items).toContain(item);
    expect(answer.kind === "faults" ? answer.found : []).toEqual([]);
    expect(answer).not.toMatchObject({ kind: "grade", value: "heavy-wear" });
  }
});

test("from how far away one looks is no length of a scratch", () => {
  const [remark] = draft("The front bumper has a scratch you'd not see from ten feet.");
  expect(remark?.answer).toMatchObject({ kind: "faults", found: [{ kind: "scratch" }] });
  expect(JSON.stringify(remark?.answer)).not.toContain("extent");
});

test.each([
  ["Horn, wipers, and the only thing out is the clock.", ["electrics.clock no"]],
  ["Horn, wipers, only the clock is dead.", ["electrics.clock no"]],
  ["Horn, wipers and clock are dead.", ["electrics.clock no", "electrics.horn no", "electrics.wipers no"]],
])("what alone is out is said of nothing named before it: %s", (text, expected) => {
  expect(draft(text).map(short).toSorted()).toEqual(expected);
});
