import { defineMessages } from "@evenhand/message/define-messages";

/** What a headline is put together from; what it opens with is in `leads.ts` and in `kinds`. */
export const headlineMessages = defineMessages("headline", {
  hit: "Hit and repaired {where}",
  rust: "Rust {where}",
  "rust-and-bent": "Rust and bent metal {where}",
  bent: "Bent or cracked metal {where}",
  damage: "Repairs or damage {where}",
  elsewhere: "{place} and elsewhere",
  "also-place": "{own}, and {place}",
  trouble: "Trouble with {name}",
  disclosed: "{lead} (disclosed)",
  "not-as-stated": "Not as stated: {name}",
  "look-again": "To be looked at again: {name}",
  "not-shown": "Not shown to the inspector: {name}",
  "small-things": "Small things",
});

/** Under the headline: the lines it rests on, in a few words each. */
export const foundMessages = defineMessages("found", {
  line: "{place}: {said}",
  bad: "bad",
  found: "found",
  "not-seen": "not seen",
  nothing: "nothing",
  claimed: "stated",
  stated: "{line} (stated: {claim})",
  "as-stated": "{line} (as stated)",
  contradicted: "{place}: stated {claim}, which figures contradict",
  more: "{list}; and {count} more",
  "more-by": "{list}: {counts}",
  count: "{of} {count}",
  small: "{count} of them: {names}",
  "and-others": "{list} and others",
});

/** Where on the car. */
export const zoneMessages = defineMessages("zone", {
  "left-front": "at the left front",
  "right-front": "at the right front",
  left: "along the left side",
  right: "along the right side",
  "left-rear": "at the left rear",
  "right-rear": "at the right rear",
  front: "at the front",
  rear: "at the rear",
  top: "on the roof",
  whole: "of the whole car",
});

/** What nobody knows, by why nobody does. */
export const nobodyMessages = defineMessages("nobody", {
  "unseen-papers": "Papers and checks nobody has seen",
  "unseen-numbers": "Numbers on the car nobody has read",
  "unseen-opened": "Nobody looked where something must come off, or leave be given",
  "unseen-lift": "Nobody looked at this underneath, on a lift",
  "unseen-road": "Nobody has tried this on the road",
  "unseen-running": "Nobody has tried this with the engine cold or hot",
  "unseen-looking": "Nobody looked at this, though it needs neither lift nor drive",
  "no-yardstick": "Found, but nothing says whether it is good",
  "unseen-claims": "Claimed or asked for, and not seen",
  unseen: "Neither stated nor looked at",
});

/** What a place would have needed, in a few words. */
export const needMessages = defineMessages("would-need", {
  "unseen-papers": "papers",
  "unseen-numbers": "numbers on the car",
  "unseen-opened": "to be opened",
  "unseen-lift": "on a lift",
  "unseen-road": "on the road",
  "unseen-running": "engine cold or hot",
  "unseen-looking": "by looking alone",
  "no-yardstick": "without a yardstick",
});

/** Words by an id that comes from elsewhere; `undefined` where there are none for it. */
export const wordsFor = (
  { templates }: { readonly templates: Readonly<Record<string, string>> },
  id: string,
): string | undefined => (Object.hasOwn(templates, id) ? templates[id] : undefined);
