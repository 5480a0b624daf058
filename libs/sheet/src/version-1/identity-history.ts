import type { Item } from "@evenhand/shared/sheet";
import { code, ifPromised, ranked, rankedLoosely, shouldBeAbsent, unranked } from "./answers.ts";
import { item, words } from "./draft.ts";

const identity = { consequence: "identity", costRow: null } as const;
const papers = { consequence: "papers", costRow: null } as const;

/** What the car is said to be, and what its papers make of it. */
export const histories: Item[] = [
  item(
    "identity.claimed-model",
    words("model and engine as claimed", undefined, ["clone", "tribute", "replica", "re-creation"]),
    "Set what is claimed against tags, numbers and option codes; say clone or tribute where that is what it is.",
    {
      ...identity,
      minutes: 4,
      choice: {
        ...ranked(
          ["tags-show-it", "tags and numbers show it"],
          ["nothing-against", "nothing speaks against it"],
          ["not-shown", "nothing on the car shows it", "no-yardstick"],
          ["clone", words("another model made to look like it", undefined, ["clone", "tribute"]), "worth"],
        ),
        weakerIsNotOtherwise: true,
        refutes: { "not-shown": ["tags-show-it"] },
      },
    },
  ),
  item(
    "identity.options",
    words("options against the option codes", undefined, ["factory options", "trim tag options"]),
    "Tick each claimed option off the body tag or the build sheet; name in the note what no code bears out.",
    {
      ...identity,
      minutes: 4,
      choice: ranked(
        ["as-coded", "as coded"],
        ["no-codes", "no codes to see", "no-yardstick"],
        ["some-added", "some added later", "no-yardstick"],
        ["against-codes", "codes say otherwise", "worth"],
      ),
    },
  ),
  item(
    "identity.pad",
    words("characters on the stamping pad", undefined, ["restamped pad", "re-stamped engine"]),
    "Low lamp along the pad: even or wandering characters, another face, ghosts of older ones, a bare pad.",
    {
      ...identity,
      positions: "numbered-units",
      minutes: 3,
      cautions: ["prop-hood"],
      choice: ranked(
        ["as-stamped", "as the maker stamped it"],
        [
          "service-unit",
          words("service replacement, stamped as one or bare", undefined, ["service block"]),
          "worth",
        ],
        ["uneven", "uneven, or over older characters", "halt"],
      ),
    },
  ),
  item(
    "identity.gearbox-kind",
    words("gearbox kind and speeds", undefined, ["four-speed", "overdrive", "automatic"]),
    "Write what is fitted: manual or automatic, how many speeds, overdrive, where the lever is.",
    { ...identity, minutes: 1, code: code("description") },
  ),
  item(
    "identity.title-kind",
    words("kind of title", "kind of registration document", [
      "bonded title",
      "duplicate title",
      "bill of sale",
    ]),
    "Read what kind of paper it is and how the seller came by it.",
    {
      ...papers,
      severity: "halt",
      minutes: 1,
      choice: unranked(
        ["original", "original"],
        ["duplicate", "duplicate", "no-yardstick"],
        ["electronic", "held electronically", "no-yardstick"],
        ["bonded", words("bonded", undefined, ["surety bond"]), "halt"],
        ["estate", "of an estate, letters not seen", "halt"],
        ["on-engine-number", "written on an engine number", "halt"],
        ["bill-of-sale", "bill of sale only", "halt"],
      ),
    },
  ),
  item(
    "identity.theft",
    words("theft check", undefined, ["theft recovery", "stolen"]),
    "Have the number checked where the law lets you, and write where and when.",
    {
      ...papers,
      severity: "halt",
      minutes: 3,
      choice: ranked(
        ["clear", "checked, clear"],
        ["recovered", "recovered theft", "worth"],
        ["reported", "reported stolen", "halt"],
      ),
    },
  ),
  item(
    "identity.buy-back",
    words("bought back by its maker", undefined, ["lemon", "buy-back"]),
    "Read title and papers for a buy-back.",
    {
      ...papers,
      severity: "worth",
      minutes: 1,
      presence: shouldBeAbsent,
    },
  ),
  item(
    "identity.owners",
    words("chain of owners", undefined, ["ownership history", "provenance"]),
    "Lay titles, registrations and bills in order and look for a gap.",
    {
      ...papers,
      minutes: 4,
      choice: ranked(
        ["complete", "complete, papers seen"],
        ["told", "told, part on paper", "no-yardstick"],
        ["gaps", "gaps of years", "no-yardstick"],
      ),
    },
  ),
  item("identity.service-book", words("service book and bills"), "See them and whether they name this car.", {
    ...papers,
    severity: "small",
    minutes: 3,
    presence: ifPromised,
  }),
  item(
    "identity.registration",
    words("registration", undefined, ["license plates", "tags"]),
    "Read plate and card: current, lapsed since when, whose.",
    {
      ...papers,
      severity: "small",
      minutes: 1,
      choice: ranked(
        ["current", "current"],
        ["lapsed", "lapsed", "small"],
        ["none", "never registered here", "repair"],
        ["other-car", "of another car", "halt"],
      ),
    },
  ),
  item(
    "identity.stood",
    words("how long it stood", undefined, ["storage", "barn find", "sat for years"]),
    "From plate, inspection stickers, fuel, tires and dust: since when it has not been driven.",
    {
      ...papers,
      severity: "repair",
      minutes: 1,
      choice: rankedLoosely(
        ["in-use", "in use"],
        ["a-season", "a season"],
        ["a-year-or-more", "a year or more", "repair"],
        ["five-years-or-more", "five years or more", "worth"],
      ),
    },
  ),
  ...(
    [
      ["identity.last-driven", words("last driven"), "Ask the seller when it was last driven and how far."],
      [
        "identity.last-serviced",
        words("last serviced"),
        "Ask the seller when it was last serviced and what was done.",
      ],
    ] as const
  ).map(([id, named, how]) =>
    item(id, named, how, {
      ...papers,
      severity: "repair",
      asked: "statement",
      minutes: 1,
      code: code("text"),
    }),
  ),
  item(
    "identity.miles-claim",
    words("miles as claimed", "mileage as claimed", [
      "actual miles",
      "original miles",
      "true mileage unknown",
    ]),
    "What the seller says of the miles; papers, digits and wear are read beside it.",
    {
      ...papers,
      severity: "worth",
      asked: "statement",
      minutes: 1,
      choice: ranked(
        ["actual", "actual", "no-yardstick"],
        ["believed", "believed to be actual", "no-yardstick"],
        ["unknown", words("true miles unknown", undefined, ["TMU"]), "no-yardstick"],
      ),
    },
  ),
  item(
    "identity.restoration-claim",
    words("restoration as claimed", undefined, ["frame-off restoration", "survivor", "unrestored"]),
    "What the seller says was done to the car as a whole; bills, dates and paint are read beside it.",
    {
      ...papers,
      severity: "worth",
      asked: "statement",
      minutes: 1,
      choice: unranked(
        ["unrestored", "never restored", "no-yardstick"],
        ["in-part", "restored in part", "no-yardstick"],
        ["complete-with-bills", "restored, bills seen", "no-yardstick"],
        ["complete", "restored, no bills", "no-yardstick"],
      ),
    },
  ),
];

/** What everything comes to, in the inspector's own words. */
export const opinion: Item[] = [
  item(
    "visit.opinion",
    words("the inspector's plain opinion", undefined, ["would you buy it", "verdict"]),
    "Say whether you would buy this car for yourself at the price asked, and in the note why, in your own words.",
    {
      consequence: "papers",
      severity: "worth",
      costRow: null,
      core: true,
      minutes: 3,
      choice: unranked(
        ["would-buy", "would buy", "no-yardstick"],
        ["for-less", "would buy for less, or once something is put right", "no-yardstick"],
        ["would-not", "would not buy", "worth"],
      ),
    },
  ),
];
