import { expect, test } from "vitest";
import { claimsIn } from "../../testing/claims-in.ts";

test.each([
  [
    "I put a magnet on the quarters. It sticks on the right one, and it doesn't stick on the left one.",
    ["body.magnet falls @left-quarter", "body.magnet holds @right-quarter"],
  ],
  ["I put a magnet on the left rocker and it fell right off.", ["body.magnet falls @left-rocker"]],
  ["The left door sticks.", ["doors.latches intermittent @left-front-door"]],
])("by the magnet: %s", (text, expected) => {
  expect(claimsIn(text)).toEqual(expected);
});

test.each([
  ["All exterior lights work.", ["electrics.lamps yes @16"]],
  [
    "The fuel gauge is stuck on full. Everything else on the dash works.",
    [
      "electrics.charge-gauge yes",
      "electrics.fuel-gauge no",
      "electrics.oil-gauge yes",
      "electrics.speedometer yes",
      "electrics.tachometer yes",
      "electrics.temperature-gauge yes",
    ],
  ],
  ["The fuel gauge reads a bit low.", []],
  ["It's never had air.", ["electrics.air-conditioning not-fitted"]],
  ["The bumpers front and rear are good.", ["brightwork.bumpers even-wear @front,rear"]],
])("works and is there: %s", (text, expected) => {
  expect(claimsIn(text)).toEqual(expected);
});

test.each([
  ["It's got the original rally wheels.", ["wheels.wheel-kind original-to-car @4"]],
  ["The title's still in the estate's name, but it's here.", ["identity.title-holder other-name"]],
  [
    "The title is in my name, free and clear.",
    ["identity.lien none", "identity.title-holder seller-in-hand"],
  ],
  ["It idles a little rough until it warms up.", ["road.idle-quality uneven"]],
  ["The tires are starting to crack.", ["wheels.tire-faults crack @4"]],
  ["There's nothing to crack on the dash.", []],
  ["The shifts are clean and it doesn't pop out of gear.", ["road.shifts clean"]],
  ["It took about five seconds of cranking to start.", ["road.cold-start within-ten-seconds"]],
  [
    "Oil pressure's fifteen at a hot idle and forty-five at two thousand.",
    ["engine.oil-pressure-2000 45 psi", "engine.oil-pressure-idle 15 psi"],
  ],
  ["It leaks oil pretty bad at the back of the motor.", ["driveline.leaks-before run @rear-main-seal"]],
  ["You've got to be careful going into second or it'll grind.", ["road.shifts grinds"]],
  ["The exhaust is stainless and it doesn't blow.", ["driveline.exhaust -blow-hole @5"]],
  ["The top is a good fit.", []],
])("as it is said every day: %s", (text, expected) => {
  expect(claimsIn(text)).toEqual(expected);
});

test.each([
  [
    "Everything works on it, the gauges, the horn. The only thing that doesn't is the clock.",
    [
      "electrics.charge-gauge yes",
      "electrics.clock no",
      "electrics.fuel-gauge yes",
      "electrics.horn yes",
      "electrics.oil-gauge yes",
      "electrics.speedometer yes",
      "electrics.tachometer yes",
      "electrics.temperature-gauge yes",
    ],
  ],
  [
    "everything works the horn the wipers the only one that doesn't work is the radio",
    ["electrics.horn yes", "electrics.radio no", "electrics.wipers yes"],
  ],
  [
    "The horn and the wipers work, the only exception is the clock.",
    ["electrics.clock no", "electrics.horn yes", "electrics.wipers yes"],
  ],
  ["The only thing that doesn't work is the air conditioning.", ["electrics.air-conditioning no"]],
  ["What doesn't work? | The horn, and the clock.", ["electrics.clock no", "electrics.horn no"]],
  ["Windows electric? | No. They all work.", ["doors.regulators yes @left-front-window,right-front-window"]],
  ["The radio works but the sound's not very good.", ["electrics.radio yes"]],
])("all but one: %s", (text, expected) => {
  expect(claimsIn(text)).toEqual(expected);
});

test.each([
  ["I had it painted in 2005.", ["body.paint-history refinished @14"]],
  ["No dents on the car.", ["body.faults -dent @14"]],
  [
    "The right door was dented. I don't see any rust on it anywhere.",
    ["body.faults dent -corrosion -perforation @right-front-door"],
  ],
  ["The left quarter had some rust in it and that was cut out and replaced.", []],
  ["The top is white and it was new when he did the car.", []],
])("of the whole car, and of what was: %s", (text, expected) => {
  expect(claimsIn(text)).toEqual(expected);
});

test.each([
  [
    "The transmission shifts good, the fluid is nice and red.",
    ["driveline.gearbox-fluid clean", "road.shifts clean"],
  ],
  ["There's a little seepage around the valve cover.", ["driveline.leaks-before weep @valve-covers"]],
  [
    "There's a small drip under it, that's the rear main seal.",
    ["driveline.leaks-before drip @rear-main-seal"],
  ],
  [
    "The carpets are worn on the driver's side, fine everywhere else.",
    ["interior.carpet even-wear @3", "interior.carpet heavy-wear @left-front"],
  ],
  ["It has 71,000 miles on it. I've put about six thousand on it myself.", ["identity.odometer 71000 mi"]],
  ["The steering has a little play, perhaps two centimeters.", ["steering.free-play 20 mm"]],
  ["The gearbox has five gears.", ["identity.gearbox-kind five-speed"]],
  ["It loses a little oil from the valve cover.", ["driveline.leaks-before weep @valve-covers"]],
  ["The radiator does not lose water.", ["engine.radiator none"]],
  ["There's a light tick when it's warm.", ["engine.noise tick-warm"]],
])("figures, fluids and leaks: %s", (text, expected) => {
  expect(claimsIn(text)).toEqual(expected);
});

test.each([
  ["I've got one key.", ["identity.keys incomplete"]],
  ["There's a couple inches of play in the steering.", ["steering.free-play 2 in"]],
  [
    "Steering wanders a bit. There's two inches of play in the box.",
    ["road.tracking wanders", "steering.free-play 2 in"],
  ],
  ["It has no air.", ["electrics.air-conditioning not-fitted"]],
  ["There is no air in the tires.", []],
  ["Tires are mismatched, two from 2015 and two from 2019.", []],
  ["The right rear light does not work.", ["electrics.lamps no @right-tail"]],
  ["The rear doors close well.", []],
  ["The doors open and close nice and solid.", ["doors.latches yes @left-front-door,right-front-door"]],
  [
    "The driver's door doesn't close right unless you slam it.",
    ["doors.latches intermittent @left-front-door"],
  ],
])("counted, placed and closed: %s", (text, expected) => {
  expect(claimsIn(text)).toEqual(expected);
});

test.each([
  [
    "No smoke from the exhaust. There is an oil leak. It's coming from the valve cover.",
    ["driveline.leaks-before drip @valve-covers", "engine.smoke-warm none"],
  ],
  [
    "The car was painted in 2013. | What about that bubble there? | Yeah, that's rust on the left front fender.",
    ["body.faults corrosion @left-front-fender", "body.paint-history refinished @14"],
  ],
  ["There's rust coming back on the left front fender.", ["body.faults corrosion @left-front-fender"]],
  ["It was sprayed in the original color.", ["body.paint-history refinished @14"]],
  [
    "The floor has never been welded.",
    ["underbody.floor-pans -patch @4", "underbody.floor-repair as-built @4"],
  ],
  ["The odometer shows 34,500 miles, but it can be 134,500.", ["identity.odometer 34500 mi"]],
])("what a question, an exhaust and a doubt leave open: %s", (text, expected) => {
  expect(claimsIn(text)).toEqual(expected);
});

test.each([
  [
    "The driver's seat is torn the rest are fine",
    ["interior.seat-faults tear @left-front", "interior.seats even-wear @rear,right-front"],
  ],
  ["Has it been repainted? | Yeah, about fifteen years ago.", ["body.paint-history refinished @14"]],
  [
    "Do the gauges work? | Everything but the fuel gauge.",
    [
      "electrics.charge-gauge yes",
      "electrics.fuel-gauge no",
      "electrics.oil-gauge yes",
      "electrics.speedometer yes",
      "electrics.tachometer yes",
      "electrics.temperature-gauge yes",
    ],
  ],
  ["What doesn't work is the clock and the radio.", ["electrics.clock no", "electrics.radio no"]],
  [
    "The trunk is here. The spare's there. | Any water get in here? | No.",
    ["trunk.damp dry", "trunk.spare present"],
  ],
  [
    "is it the original engine it is it was rebuilt in two thousand ten",
    ["engine.rebuild-claim rebuilt", "identity.originality original-to-car @engine"],
  ],
  ["The wheels have a scratch on the right front.", ["wheels.wheel-faults scratch @right-front"]],
  ["The alloy wheels are bent on the left rear.", ["wheels.wheel-faults bend @left-rear"]],
  [
    "The lights work. There's some light tapping until it warms up.",
    ["electrics.lamps yes @18", "engine.noise tick-cold"],
  ],
  [
    "Oil pressure is 3 bar at idle and 5 bar at speed.",
    ["engine.oil-pressure-2000 5 bar", "engine.oil-pressure-idle 3 bar"],
  ],
  ["The title is in my wife's name and mine.", ["identity.title-holder seller-in-hand"]],
  ["The car was repainted in 2013.", ["body.paint-history refinished @14"]],
])("answered, left over and named in full: %s", (text, expected) => {
  expect(claimsIn(text)).toEqual(expected);
});
