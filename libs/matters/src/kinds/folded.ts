import { kind } from "./kind.ts";
import type { Kind } from "./kind.ts";

/** What nobody knows, by what it would have needed, in the order in which a line is asked whether it belongs. */
export const unknowns: readonly Kind[] = [
  kind("unseen-papers", "unknown", "papers", [], {
    says: {},
    decides: "The papers themselves, and a search under the car's numbers.",
    ask: "Will you send photographs of the title, both sides, and of every other paper?",
    step: "see-paper",
  }),
  kind("unseen-numbers", "unknown", "numbers on the car", [], {
    says: {},
    decides: "Each number photographed straight on.",
    ask: "Will you send photographs of every plate and stamping on the car?",
    step: "look-again",
  }),
  kind("unseen-opened", "unknown", "places that must be opened", [], {
    says: {},
    decides: "Drums, plugs or carpets off, with the dealer's leave.",
    ask: "May drums, plugs and carpets come off at the next look?",
    step: "open-up",
  }),
  kind("unseen-lift", "unknown", "the underside", [], {
    says: {},
    decides: "An hour on a lift.",
    ask: "May the car go on a lift?",
    step: "look-again",
  }),
  kind("unseen-road", "unknown", "the road", [], {
    says: {},
    decides: "A drive, once it is safe to drive.",
    ask: "May the car be driven once what is unsafe is put right?",
    step: "look-again",
  }),
  kind("unseen-running", "unknown", "the engine cold or hot", [], {
    says: {},
    decides: "A start from stone cold, and the engine at its working heat.",
    ask: "Will you leave the car cold overnight before the next look?",
    step: "look-again",
  }),
  kind("unseen-looking", "unknown", "what needs neither lift nor drive", [], {
    says: {},
    decides: "A second look.",
    ask: "Will you send photographs of what was not seen?",
    step: "look-again",
  }),
  kind("no-yardstick", "unknown", "values nothing judges", [], {
    says: {},
    decides: "The maker's figure, or somebody who knows the make.",
    ask: "What should these values be on this car, and where does it say so?",
    step: "ask",
  }),
  kind("unseen-claims", "unknown", "what could not be looked at", [], {
    says: {},
    decides: "A second look at what was claimed or asked for.",
    ask: "When can what was not seen be looked at?",
    step: "look-again",
  }),
  kind("unseen", "unknown", "what else nobody saw", [], {
    says: {},
    decides: "A second look, with time enough.",
    ask: "When can the rest be looked at?",
    step: "look-again",
  }),
];

/** Where many are folded into one. */
export const folds: readonly Kind[] = [
  kind("repairs", "rest", "other repairs", [], {
    says: { repair: "Other things to put right" },
    decides: "A workshop's estimate.",
    ask: "Which of these do you put right before the sale?",
    step: "bargain",
  }),
  kind("small-things", "small", "small things", [], {
    says: { small: "Small things" },
    decides: "Nothing hangs on them.",
    ask: "Did you know of these?",
    step: "bargain",
  }),
];
