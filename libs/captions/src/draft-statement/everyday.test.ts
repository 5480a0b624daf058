import { expect, test } from "vitest";
import { claimsIn } from "../../testing/claims-in.ts";

test.each([
  [
    "The trunk is here. The spare is there. | Is it dry in there? | Yeah, it's dry.",
    ["trunk.damp dry", "trunk.spare present"],
  ],
  [
    "The trunk is here. The spare is there. I found a little water in here.",
    ["trunk.damp damp", "trunk.spare present"],
  ],
  ["The trunk is clean.", []],
  ["The trunk is solid.", ["trunk.floor -corrosion -perforation"]],
  ["The trunk was damp, the seal is worn.", ["brightwork.seals heavy-wear @trunk", "trunk.damp damp"]],
  ["In the trunk the mat is worn.", ["trunk.lining heavy-wear"]],
  // Nobody says of what.
  ["Here is a mat, it is worn.", []],
])("in the trunk: %s", (text, expected) => {
  expect(claimsIn(text)).toEqual(expected);
});

test.each([
  ["She's got eighty-eight thousand and change on her.", ["identity.odometer 88000 mi"]],
  ["sixty-two thousand on it", ["identity.odometer 62000 mi"]],
  ["It's got ninety-one thousand.", ["identity.odometer 91000 mi"]],
  ["I spent eight thousand on it.", []],
  ["I've put three thousand on it.", []],
  [
    "The odometer reads 74,212 miles, and we cannot prove that.",
    ["identity.miles-claim unknown", "identity.odometer 74212 mi"],
  ],
])("bare miles: %s", (text, expected) => {
  expect(claimsIn(text)).toEqual(expected);
});

test.each([
  [
    "Power windows? | Nope, they crank.",
    [
      "doors.regulators yes @left-front-window,right-front-window",
      "electrics.power-windows not-fitted @left-front-window,right-front-window",
    ],
  ],
  ["Does it have air conditioning? | No.", ["electrics.air-conditioning not-fitted"]],
  ["Radio? | No.", ["electrics.radio no"]],
])("a thing of a kind that is asked for: %s", (text, expected) => {
  expect(claimsIn(text)).toEqual(expected);
});

test.each([
  [
    "Smoke? | A bit of white first thing, it clears up.",
    ["engine.smoke-cold white", "engine.smoke-warm none"],
  ],
  ["There's a tick when it's cold but it goes away.", ["engine.noise tick-cold"]],
  ["I don't see any smoke out of the tailpipe.", ["engine.smoke-warm none"]],
])("smoke that goes away: %s", (text, expected) => {
  expect(claimsIn(text)).toEqual(expected);
});

test.each([
  ["it's not the original engine it runs good", ["identity.originality other-type @engine"]],
  ["it's not the original motor it's loud", ["identity.originality other-type @engine"]],
  [
    "front bumper has a dent on the passenger side the hood has scratches",
    ["body.faults scratch @hood", "brightwork.bumper-faults dent @front"],
  ],
  ["left fender is good right rocker on this side has rust", ["body.faults corrosion @right-rocker"]],
])("without marks: %s", (text, expected) => {
  expect(claimsIn(text)).toEqual(expected);
});

test.each([
  ["The tires are like brand new.", []],
  ["The tires are nearly new.", []],
  ["The tires are brand new.", ["wheels.tire-age new @4"]],
  ["The tires have good tread. They're seven years old.", ["wheels.tire-age over-six-years @4"]],
  ["The spare is there. It's ten years old.", ["trunk.spare present"]],
])("how old tires are: %s", (text, expected) => {
  expect(claimsIn(text)).toEqual(expected);
});

test.each([
  ["The exhaust is rusty. It doesn't leak.", ["driveline.exhaust corrosion -blow-hole @5"]],
  ["The exhaust is rusty, but it doesn't leak.", ["driveline.exhaust corrosion -blow-hole @5"]],
  [
    "The transmission shifts good, it leaks a little from the pan.",
    ["driveline.leaks-before weep @gearbox", "road.shifts clean"],
  ],
  ["The engine leaks a little from the pan.", ["driveline.leaks-before weep @oil-pan"]],
  ["The power steering has a whine to it.", []],
  [
    "There's a small oil leak between the engine and gearbox.",
    ["driveline.leaks-before weep @rear-main-seal"],
  ],
])("what leaks and whines: %s", (text, expected) => {
  expect(claimsIn(text)).toEqual(expected);
});

test.each([
  ["The front seats have been reupholstered.", ["interior.trim-history part-retrimmed"]],
  ["The seats have been reupholstered in the correct pattern.", ["interior.trim-history retrimmed-right"]],
  [
    "The front seats have been reupholstered. The back seat is original.",
    ["interior.trim-history part-retrimmed"],
  ],
  ["The driver's seat slides fine.", ["interior.seat-adjusters yes @left-front"]],
  ["The bench seat is torn.", ["interior.seat-faults tear @left-front,right-front"]],
  ["The front bumper is straight, the chrome is pitted.", ["brightwork.bumper-faults pitting @front"]],
  ["The chrome is pitted.", []],
  ["I scraped the right fender, see that?", ["body.faults scratch @right-front-fender"]],
  ["The speedometer works, the fuel gauge also.", ["electrics.fuel-gauge yes", "electrics.speedometer yes"]],
  ["The bed liner is worn and it's been painted.", []],
])("said in passing: %s", (text, expected) => {
  expect(claimsIn(text)).toEqual(expected);
});
