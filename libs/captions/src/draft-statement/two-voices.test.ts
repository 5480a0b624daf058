import { expect, test } from "vitest";
import { claimsIn } from "../../testing/claims-in.ts";

test.each([
  ">> The windshield looks cracked. | >> No, that's a hair.",
  ">> The shocks are leaking. | >> Nope, just dirty.",
  ">> There is filler in the left quarter. | >> No, that's mud.",
  ">> The carpets are new. | >> Well, no. They came with the car.",
  ">> I see the headliner is torn. | >> That's a seam.",
  ">> The hood has a dent. | >> That's a shadow.",
  ">> The dash is cracked. | >> It's just the light.",
  ">> Rust on the left fender. | >> That's primer.",
  ">> There's a stain on the rear seat. | >> Ha, it's only dust.",
])("what one says and the other puts right: %s", (text) => {
  expect(claimsIn(text)).toEqual([]);
});

test.each([
  [">> The tires are new. | >> No, they're ten years old.", ["wheels.tire-age over-six-years @4"]],
  [">> So the engine is original. | >> No, it's been swapped.", ["identity.originality other-type @engine"]],
  [
    ">> Both rockers are solid. | >> No, there's a hole in the left one.",
    ["body.faults perforation @left-rocker"],
  ],
  [">> The clock works. | >> No it doesn't.", ["electrics.clock no"]],
  // A no that agrees, and one that only opens what is said next.
  [">> It doesn't leak at the oil pan. | >> No, it's dry.", ["driveline.leaks-before none @oil-pan"]],
  [">> No cracks in the windshield. | >> No, none.", ["brightwork.glass-faults -crack @windshield"]],
  [">> There's a dent in the roof. | >> No rust there.", ["body.faults dent -corrosion -perforation @roof"]],
  [">> The clock works. | >> It does.", ["electrics.clock yes"]],
  [">> The hood has a dent. | >> That's a big one.", ["body.faults dent @hood"]],
  [">> Rust on the left fender. | >> It's just surface rust.", ["body.faults corrosion @left-front-fender"]],
])("what the other says to it: %s", (text, expected) => {
  expect(claimsIn(text)).toEqual(expected);
});

test.each([
  ">> The seats look original. | >> Could be. I don't know.",
  ">> The radiator is leaking. | >> I wouldn't know.",
  ">> The frame is solid. | >> Maybe.",
  ">> The engine was rebuilt. | >> Not sure.",
  ">> The dash is cracked. | >> Hard to tell.",
  ">> The clock works. | >> No idea.",
  ">> The clock works. | >> You tell me.",
  ">> The shocks are leaking. | >> They might be.",
  ">> The left rocker is rusty. | >> I doubt it.",
  "I bet the clock doesn't work.",
])("what nobody stands behind: %s", (text) => {
  expect(claimsIn(text)).toEqual([]);
});

test.each([
  ["So no rust at all? | I didn't say that. There's some in the floors.", "corrosion"],
  ["So no rust? | Just a little in the floors.", "corrosion"],
  ["Not a bit of rust? | There is some in the floors.", "corrosion"],
  ["No rust? | A bit in the floors.", "corrosion"],
  ["No rust? | Not in the floors.", "-corrosion -perforation"],
  ["So no rust? | Not in the floors, no.", "-corrosion -perforation"],
  ["Any rust? | Not in the floors, no.", "-corrosion -perforation"],
  ["Any rust? | Some in the floors.", "corrosion"],
])("an answer to what was asked with a no: %s", (text, expected) => {
  expect(claimsIn(text)).toEqual([`underbody.floor-pans ${expected} @4`]);
});

test.each([
  ["Does the air conditioning work? | No.", ["electrics.air-conditioning no"]],
  ["Does the air conditioning blow cold? | No.", ["electrics.air-conditioning no"]],
  ["Air conditioning? | No.", ["electrics.air-conditioning not-fitted"]],
  ["Are the floors solid and is the exhaust new? | It's new, yes.", ["driveline.exhaust -all @5"]],
  [
    "The hood is straight, no dings. | These usually rust in the quarters, don't they? | They do, and the rockers go too. Both rockers are solid.",
    ["body.faults -corrosion -perforation @left-rocker,right-rocker", "body.faults -dent -ding @hood"],
  ],
  ["My uncle's had rust in the floors.", []],
  ["My grandfather had one with a rusty floor.", []],
  ["Power brakes, no power steering.", []],
])("what was asked, and of which car: %s", (text, expected) => {
  expect(claimsIn(text)).toEqual(expected);
});
