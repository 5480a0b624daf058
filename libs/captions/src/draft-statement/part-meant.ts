import type { Subject } from "@evenhand/lexicon/lexicon-version-1";
import type { Piece } from "../pieces/index.ts";
import type { Breath } from "./breath.ts";
import { wordsOf } from "./draft.ts";
import type { Draft } from "./draft.ts";
import type { Entry } from "./entries.ts";
import { CAR_ASKED, HAD_IT_DONE, OF_CAR, isLeaks, isPanel } from "./phrases.ts";

const NEVER_PAINTED =
  /^(?:(?:it|she|he) )?(?:(?:is|has|s) )?(?:never|not) (?:ever )?(?:been |had )?(?:painted|repainted|resprayed|been painted|a respray)$/u;

/** "No dents on the car." */
const ON_THE_CAR =
  /\b(?:dent|ding|scratch|chip|rust)\b.* (?:on|in) (?:the|this) (?:whole |entire )?(?:car|body)$|^(?:(?:and|so|there|is|s) )*no rust anywhere\b/u;

/** Tokens within which "it" is the part named last in the same sentence. */
const JUST_NAMED = 8;

/** "It was repainted in 2016", and no panel is in view. */
export const isOfWholeCar = (draft: Draft, { piece, text, words }: Breath): boolean => {
  // "The bed floor is wood and it's been refinished": a part was named just before.
  const isGoingOn =
    piece.join !== "start" &&
    draft.state.entries.some(
      ({ to, subjects }) =>
        piece.from - to <= JUST_NAMED &&
        subjects.every(({ id }) => !/^(?:all-panels|first-color)$/u.test(id)),
    );
  if (isGoingOn) return false;
  if (ON_THE_CAR.test(text) && words.some(({ meanings }) => meanings.some((one) => one.is === "condition")))
    return true;
  const isRepaint = words.some(
    ({ meanings, negated }) =>
      !negated &&
      meanings.some(
        (one) => one.is === "option" && one.item === "body.paint-history" && one.option === "refinished",
      ),
  );
  // "Never been painted", and no panel is in view.
  if (NEVER_PAINTED.test(text)) return !draft.state.entries.some(isPanel);
  return (
    isRepaint &&
    (OF_CAR.test(text) || CAR_ASKED.test(text) || HAD_IT_DONE.test(text)) &&
    !draft.state.entries.some((entry) => isPanel(entry) && !entry.plural)
  );
};

export const wholeCar = (draft: Draft, { piece: { from }, sides, text }: Breath): readonly Entry[] => {
  const paint = draft.context.compiled.subjects.get("all-panels");
  return paint === undefined ? [] : [entryOf(paint, sides, from, text, true)];
};

/** A part that nobody named, and that is meant. */
const entryOf = (
  subject: Subject,
  sides: Breath["sides"],
  from: number,
  context: string,
  plural: boolean,
): Entry => ({
  subjects: [subject],
  sides,
  plural,
  none: false,
  from,
  to: from,
  confidence: 1,
  heard: [],
  context,
  within: [],
});

/** "It doesn't leak" after a radiator is said of the radiator. */
export const spokenOf = (draft: Draft, breath: Breath): readonly Entry[] => {
  const { piece, text } = breath;
  const entries = breath.entries.filter(
    (one) => !isChromeOfView(draft, one, piece) && !isWrittenIn(draft, one, piece),
  );
  const named = entries.some(isPanel)
    ? entries.filter(({ subjects }) => !subjects.every(({ id }) => id === "all-panels"))
    : entries;
  if (named.length === 0 && isOfWholeCar(draft, breath)) return wholeCar(draft, breath);
  // "No smoke from the exhaust. There is an oil leak": no exhaust leaks oil.
  if (isOilLeak(draft, named)) draft.state.entries = [];
  const others = named.filter((entry) => !isLeaks(entry));
  const isOfView = piece.join !== "start" || /^(?:these|those|they|this one)\b/u.test(text);
  const inView = isOfView && draft.state.entries.length > 0;
  const isLeakOfView = inView || (others.length === 0 && isOfLeaking(draft, breath));
  const kept = (others.length > 0 || isLeakOfView ? others : named)
    .map((entry) => latchOfLid(draft, entry))
    .map((entry) => panOfGearbox(draft, entry))
    .map((entry) => sealOf(draft, entry));
  return isPaintOfView(draft, kept, piece, text) ? [] : kept;
};

/** "The bumper is straight, the chrome is pitted": the chrome of what is in view. */
const isChromeOfView = (draft: Draft, { subjects }: Entry, { join }: Piece): boolean =>
  join !== "start" &&
  subjects.every(({ id }) => id === "chrome") &&
  draft.state.entries.some((one) => one.subjects.some(({ id }) => id === "bumper"));

const PAPERS = /^identity\.(?:title|registration|owners|build-sheet|invoice|service-book)/u;
const WRITTEN = /\b(?:on|in|with|match|per|agree with)(?: (?:the|my|its|his|her|old|original|green|buff))*$/u;

/** "It's the original engine, the number's on the logbook": where it is written, and no paper is spoken of. */
const isWrittenIn = (draft: Draft, { from, subjects }: Entry, { from: begin, join }: Piece): boolean =>
  join !== "start" &&
  subjects.every(({ items }) => items.every((id) => PAPERS.test(id))) &&
  WRITTEN.test(wordsOf(draft, { from: begin, to: from })) &&
  draft.state.entries.some(({ subjects: viewed }) =>
    viewed.some(({ items }) => items.some((id) => !PAPERS.test(id))),
  );

/** Tokens after a trunk within which "in there" is in the trunk. */
const NEAR_TRUNK = 40;

const IN_THERE = /\b(?:dry|wet|damp|water|leak)\b.*\bin (?:there|here)\b/u;
const IS_DRY =
  /^(?:(?:and|yes|but|all) )*(?:is it |it is |it s |it all s |everything is )?(?:all |nice and |bone |still |pretty |really )*(?:dry|damp|wet)\b/u;

/** "Is it dry in there?", "I found a little water in here": of the trunk, where somebody stands at it. */
export const inTrunk = (draft: Draft, breath: Breath): Breath => {
  const { entries, piece, sides, text } = breath;
  const trunk = draft.context.compiled.subjects.get("trunk");
  const isBare = entries.every(({ subjects }) => subjects.every(({ id }) => id === "water"));
  const isAmongThings =
    draft.state.entries.length > 0 &&
    draft.state.entries.every((one) =>
      one.subjects.every(({ items }) => items[0]?.startsWith("trunk.") === true),
    );
  const isNear = piece.from - draft.state.trunkAt <= NEAR_TRUNK;
  const isThere = (isNear && IN_THERE.test(text)) || (isAmongThings && IS_DRY.test(text));
  return trunk === undefined || !isBare || !isThere
    ? breath
    : { ...breath, entries: [entryOf(trunk, sides, piece.from, text, false)] };
};

const isOilLeak = ({ state, tokens }: Draft, named: readonly Entry[]): boolean =>
  named.length > 0 &&
  named.every(isLeaks) &&
  named.some(({ from, to }) =>
    tokens.slice(from, to).some(({ stem }) => /^(?:oil|fluid|water|coolant|fuel)$/u.test(stem)),
  ) &&
  state.entries.every(({ subjects }) =>
    subjects.every(({ id }) => /^(?:smoke|exhaust|cold-start|noise)$/u.test(id)),
  );

/** "The exhaust is rusty. It doesn't leak": of what can leak and was spoken of in the sentence before. */
const isOfLeaking = ({ state }: Draft, { piece, text }: Breath): boolean =>
  /^(?:(?:but|and|yes|no) )?(?:it|that) (?:does|do|is|did|has)\b/u.test(text) &&
  state.entries.some(
    ({ to, plural, subjects }) =>
      piece.from - to <= LAST_SENTENCE &&
      !plural &&
      subjects.some(({ items }) => items.some((id) => CAN_LEAK.test(id))),
  );
const LAST_SENTENCE = 14;
const CAN_LEAK =
  /^(?:driveline\.(?:exhaust|leaks|gearbox|tank)|engine\.(?:radiator|water-pump|fuel-pump)|steering\.(?:box|damper)|road\.shifts|interior\.top$|electrics\.heater-core|doors\.sunroof)/u;

/** "The transmission leaks a bit from the pan": its own, and not the engine's. */
const panOfGearbox = (draft: Draft, entry: Entry): Entry => {
  const isBare = entry.to === entry.from + 1;
  const named = draft.tokens[entry.from]?.stem ?? "";
  const isPan = isBare && named === "pan" && entry.subjects.every(({ id }) => id === "leak-oil-pan");
  const isFluid = isBare && named === "fluid" && entry.subjects.every(({ id }) => id === "brake-fluid");
  const gearbox = draft.context.compiled.subjects.get("gearbox");
  const isOfGearbox = draft.state.entries.some(({ subjects }) =>
    subjects.some(({ id }) => OF_GEARBOX.test(id)),
  );
  const fluid = draft.context.compiled.subjects.get("gearbox-fluid");
  if (isFluid && isOfGearbox && fluid !== undefined) return { ...entry, subjects: [fluid] };
  return isPan && isOfGearbox && gearbox !== undefined ? { ...entry, subjects: [gearbox] } : entry;
};
const OF_GEARBOX = /^(?:gearbox|gearbox-kind|gearbox-fluid|shifts)$/u;

/** "The trunk is damp, so the seal wants replacing": a seal by itself is of what is in view. */
const sealOf = (draft: Draft, entry: Entry): Entry => {
  const isBare = !entry.plural && entry.to === entry.from + 1 && entry.sides.adds.length === 0;
  if (!isBare || entry.subjects.every(({ id }) => id !== "door-seals")) return entry;
  const isTrunk = entry.from - draft.state.trunkAt <= NEAR_TRUNK;
  const viewed = draft.state.entries.flatMap(({ subjects }) => subjects.map(({ id }) => SEALS[id]));
  const own = draft.context.compiled.subjects.get(
    viewed.find((id) => id !== undefined) ?? (isTrunk ? "trunk-seal" : ""),
  );
  return own === undefined ? entry : { ...entry, subjects: [own] };
};
const SEALS: Readonly<Record<string, string>> = {
  windshield: "windshield-seal",
  "rear-window": "rear-window-seal",
  trunk: "trunk-seal",
  "trunk-lid": "trunk-seal",
  "trunk-floor": "trunk-seal",
};

/** What a lid has of its own, by what it is called without the lid. */
const OF_LIDS: Readonly<Record<string, string>> = {
  latches: "doors.lid-latches",
  "lid-supports": "doors.lid-supports",
};

/** "Trunk lid? Fine. The latch sticks": a latch behind a lid is the lid's. */
const latchOfLid = (draft: Draft, entry: Entry): Entry => {
  const [lid] = draft.state.entries.flatMap(({ subjects }) => subjects.flatMap((one) => one.at ?? []));
  const ofLid = entry.subjects.map(({ id }) => OF_LIDS[id]).find((item) => item !== undefined);
  if (ofLid === undefined || entry.sides.adds.length > 0) return entry;
  const own = [...draft.context.compiled.subjects.values()].find(
    ({ items, at }) => items[0] === ofLid && at?.includes(lid ?? "") === true,
  );
  return own === undefined ? entry : { ...entry, subjects: [own] };
};

const OTHER_ONE = /^(?:(?:and|but) )?the other(?: one| side)? (?=is |s |has |was )/u;

/** "It has new paint", of a panel in view, is said of that panel. */
const isPaintOfView = (draft: Draft, entries: readonly Entry[], { join }: Piece, text: string): boolean => {
  const isPaint =
    entries.length > 0 && entries.every(({ subjects }) => subjects.every(({ id }) => id === "all-panels"));
  const isOfPanel = draft.state.entries.some(isPanel);
  return (
    isPaint &&
    isOfPanel &&
    !/\b(?:all|every|car|whole|everything|else|rest|other|panel|anywhere)\b/u.test(
      text.replace(OTHER_ONE, ""),
    ) &&
    (join !== "start" || /\b(?:it|its|that|there)\b/u.test(text) || OTHER_ONE.test(text))
  );
};
