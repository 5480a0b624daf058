import { expect, test } from "vitest";
import { claimsIn } from "../../testing/claims-in.ts";

test.each([
  "I have a new headliner for it, it's in the trunk.",
  "I've got a new carpet set in a box.",
  "It comes with a new windshield that goes with the car.",
  "We have new tires on the shelf.",
  "There's a new top in the garage.",
  "There's a new muffler waiting to go on.",
  "I've got new shocks to go on.",
  "It comes with two spare doors.",
  "There's a spare engine.",
  "I have a spare windshield.",
])("what goes with the car and is not on it: %s", (text) => {
  expect(claimsIn(text)).toEqual([]);
});

test.each([
  "I'm putting new shocks on it next week.",
  "We're having the seats recovered.",
  "I'm getting a new windshield.",
  "They're having the bumper rechromed.",
  "We're fitting new tires.",
  "I'm still ordering new carpets.",
  "He's getting it painted.",
  "We are getting the headliner replaced.",
])("what will be done: %s", (text) => {
  expect(claimsIn(text)).toEqual([]);
});

test.each([
  ["It has new tires.", ["wheels.tire-age new @4"]],
  ["It comes with a spare.", ["trunk.spare present"]],
  ["There's a spare in the trunk.", ["trunk.spare present"]],
  ["There's a spare key.", ["identity.keys full-set-and-spare"]],
  ["There's two inches of play in the box.", ["steering.free-play 2 in"]],
  ["I'm getting a tick when it's cold.", ["engine.noise tick-cold"]],
])("what is on it: %s", (text, expected) => {
  expect(claimsIn(text)).toEqual(expected);
});

test.each([
  "Is there a jack? | There was one.",
  "Is there a jack? | There used to be one.",
  "Is there a jack? | There should be one.",
  "And the jack? | There's supposed to be one.",
  "And the jack? | There might be one.",
  "Is there a jack? | There was a jack once.",
  "Is there a jack? | There would have been one.",
  "Is there a jack? | There ought to be one.",
])("what was there once, or should be: %s", (text) => {
  expect(claimsIn(text)).toEqual([]);
});

test.each([
  "The exhaust sounds good.",
  "The exhaust sounds really nice.",
  "The muffler sounds great.",
  "Exhaust has a nice sound to it.",
  "The exhaust has a lovely note.",
  "The mufflers sound pretty good.",
  "The exhaust sounds absolutely fantastic.",
  "That's the sound of the muffler.",
])("what is only heard: %s", (text) => {
  expect(claimsIn(text)).toEqual([]);
});

test.each([
  ["Horn sounds good.", ["electrics.horn yes"]],
  ["The radio sounds great.", ["electrics.radio yes"]],
  ["The frame is a sound one.", ["underbody.rails -corrosion -perforation @4"]],
])("what works if it sounds, and sound metal: %s", (text, expected) => {
  expect(claimsIn(text)).toEqual(expected);
});
