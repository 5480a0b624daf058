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
