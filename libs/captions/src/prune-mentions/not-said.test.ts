import { expect, test } from "vitest";
import { claimsIn } from "../../testing/claims-in.ts";

test.each([
  ["The hood has a decent scratch on it.", ["body.faults scratch @hood"]],
  ["There's a fair bit of rust in the left rocker.", ["body.faults corrosion @left-rocker"]],
  ["There's a really nice dent in the roof.", ["body.faults dent @roof"]],
  ["The driver's seat has a pretty good tear in it.", ["interior.seat-faults tear @left-front"]],
  ["There's a nice crack in the windshield.", ["brightwork.glass-faults crack @windshield"]],
  ["The front bumper has a pretty good dent.", ["brightwork.bumper-faults dent @front"]],
])("how large a fault is praises nothing: %s", (text, expected) => {
  expect(claimsIn(text)).toEqual(expected);
});

test.each([
  ["The left fender was rusty so I replaced it.", []],
  ["The left fender I changed, it was too rusty, now it is a new one.", []],
  ["The windshield was cracked, that's a new one.", ["brightwork.glass-faults -all @windshield"]],
  ["The muffler was rotted out and we put a new one on.", ["driveline.exhaust -all @mufflers"]],
  ["The radiator was leaking so it's been recored.", ["engine.radiator none"]],
  ["The horn was dead, I fixed that.", []],
  // Nobody put it right.
  ["The left fender was rusty.", ["body.faults corrosion @left-front-fender"]],
])("what was wrong and was put right is not wrong: %s", (text, expected) => {
  expect(claimsIn(text)).toEqual(expected);
});

test.each([
  ["The carpet was replaced with a rubber mat.", []],
  ["The dash was replaced with a new one.", ["interior.dash-top as-new"]],
  ["The fuel pump was replaced by an electric one.", ["engine.fuel-pump changed"]],
  ["He always kept the dash covered.", []],
])("what stands in its place is not new: %s", (text, expected) => {
  expect(claimsIn(text)).toEqual(expected);
});

test.each([
  ["The dash doesn't have any cracks.", []],
  ["The windshield doesn't have any chips or cracks.", ["brightwork.glass-faults -chip -crack @windshield"]],
  ["The car doesn't have a radio.", ["electrics.radio not-fitted"]],
  ["The hood was repainted because of a rock chip.", ["body.paint-history refinished @hood"]],
  ["It needs new tires.", []],
  ["The carpet is good, it could use new seals.", ["interior.carpet even-wear @4"]],
  ["The horn doesn't always work.", ["electrics.horn intermittent"]],
  ["The doors used to stick.", []],
  ["It pulls to the left when you brake hard.", ["road.braking pulls-left"]],
])("what it has not, why, and how hard: %s", (text, expected) => {
  expect(claimsIn(text)).toEqual(expected);
});
