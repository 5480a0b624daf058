import { expect, test } from "vitest";
import { claimsIn } from "../../testing/claims-in.ts";

test.each([
  ["does it have any rust there's a little on the left rocker", ["body.faults corrosion @left-rocker"]],
  ["is the glass okay yeah no cracks anywhere", ["brightwork.glass-faults -crack @6"]],
  [
    "do all the gauges work the speedometer works the gas gauge does not",
    ["electrics.fuel-gauge no", "electrics.speedometer yes"],
  ],
  [
    "the horn works the clock does not what about the radio radio works",
    ["electrics.clock no", "electrics.horn yes", "electrics.radio yes"],
  ],
  ["how's the transmission shifts perfect no slipping", ["road.shifts clean"]],
  ["does it smoke at all no smoke at all", ["engine.smoke-warm none"]],
  ["any leaks it leaks a little oil from the rear main", ["driveline.leaks-before weep @rear-main-seal"]],
  [
    "front bumper has a dent on it does the radio work no",
    ["brightwork.bumper-faults dent @front", "electrics.radio no"],
  ],
  ["is the frame good underneath yeah it's solid", ["underbody.rails -corrosion -perforation @4"]],
  [
    "the spare's in here and the jack is in here is it dry yeah it's dry",
    ["trunk.damp dry", "trunk.jack present", "trunk.spare present"],
  ],
])("asked without marks: %s", (text, expected) => {
  expect(claimsIn(text)).toEqual(expected);
});

test.each([
  ["the radio is the original one it works", ["electrics.radio yes"]],
  ["the rear main is dry and so is the gearbox", ["driveline.leaks-before none @gearbox,rear-main-seal"]],
  ["what it does need is a new battery the horn works", ["electrics.horn yes"]],
  ["there is the spare and the hood has a chip", ["body.faults chip @hood", "trunk.spare present"]],
])("told without marks: %s", (text, expected) => {
  expect(claimsIn(text)).toEqual(expected);
});
