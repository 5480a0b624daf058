import type { Item } from "@evenhand/shared/sheet";
import { code, ifPromised, ranked, unranked } from "./answers.ts";
import { item, reading, words } from "./draft.ts";
import type { ReadingDraft } from "./draft.ts";

const papers = { consequence: "papers", costRow: null } as const;
const odometer: ReadingDraft = {
  unit: "mi",
  alsoIn: ["km"],
  delta: [10],
  scatter: [0.1],
  betterIs: "lower",
  plausible: [0, 2_000_000],
  typical: 52_000,
  ask: [1, 1],
  byEye: [0.5],
  instrument: ["the odometer itself", 0.1, [0.1]],
  readOff: true,
};

/** Title, papers, odometer, keys. */
export const documents: Item[] = [
  item(
    "identity.title-holder",
    words("title", "registration document", ["pink slip", "logbook", "V5C"]),
    "See the paper itself: whose name, and whose hand it is in.",
    {
      ...papers,
      core: true,
      severity: "halt",
      minutes: 2,
      choice: ranked(
        ["seller-in-hand", "in the seller's name, in hand"],
        ["seller-not-in-hand", "in the seller's name, not in hand", "halt"],
        ["other-name", words("in another name", undefined, ["open title", "jumped title"]), "halt"],
        ["no-title", "no title", "halt"],
      ),
    },
  ),
  item(
    "identity.title-number",
    words("number on the title", "number on the registration document"),
    "Copy the VIN or chassis number printed on the title.",
    {
      ...papers,
      consequence: "identity",
      core: true,
      severity: "halt",
      minutes: 1,
      code: code("vin"),
    },
  ),
  item(
    "identity.title-brand",
    words("title brand", "insurance write-off marker", ["branded title", "salvage", "rebuilt title"]),
    "Read the title and its history for a brand.",
    {
      ...papers,
      core: true,
      severity: "halt",
      minutes: 2,
      choice: {
        ...ranked(
          ["clean", words("no brand", undefined, ["clean title"])],
          ["odometer", "odometer brand", "worth"],
          ["rebuilt", words("rebuilt", undefined, ["reconstructed"]), "halt"],
          ["flood", "flood", "halt"],
          ["salvage", words("salvage", "write-off"), "halt"],
        ),
        several: true,
      },
    },
  ),
  item(
    "identity.lien",
    words("lien", "outstanding finance", ["encumbrance", "loan"]),
    "Ask for the dated release of any lien the title shows.",
    {
      ...papers,
      core: true,
      severity: "halt",
      minutes: 2,
      choice: ranked(
        ["none", "none recorded"],
        ["released", "recorded, dated release seen"],
        ["release-promised", "recorded, release promised", "halt"],
        ["open", "recorded, open", "halt"],
      ),
    },
  ),
  item(
    "identity.lien-release-date",
    words("date of the lien's release", "date finance was settled"),
    "Copy the date from the release.",
    {
      ...papers,
      severity: "small",
      minutes: 1,
      code: code("text"),
    },
  ),
  item(
    "identity.market-label",
    words("market label", undefined, ["safety certification label", "door-jamb label"]),
    "Look for the label that names the market the car was built for.",
    {
      ...papers,
      consequence: "identity",
      severity: "worth",
      equipment: true,
      minutes: 1,
      presence: ifPromised,
    },
  ),
  item(
    "identity.import-papers",
    words("import papers", undefined, ["customs papers"]),
    "Ask how and when the car came into the country and see the papers.",
    {
      ...papers,
      severity: "halt",
      minutes: 2,
      choice: unranked(
        ["never-imported", "never imported"],
        ["complete", "imported, papers complete"],
        ["incomplete", "imported, papers incomplete", "halt"],
      ),
    },
  ),
  item(
    "identity.odometer",
    words("odometer reading", "mileage", ["mileage", "miles"]),
    "Read every digit, tenths included, and photograph it.",
    {
      ...papers,
      time: "only-rises",
      core: true,
      severity: "worth",
      minutes: 1,
      conditions: ["odometer-digits"],
      reading: reading({ ...odometer, riseAllowed: 50 }),
    },
  ),
  item(
    "identity.odometer-on-papers",
    words("odometer entries on papers", "mileage on papers", ["service records mileage"]),
    "Copy each dated entry from titles, bills and inspections, oldest first.",
    {
      ...papers,
      time: "drifts",
      positions: "paper-entries",
      severity: "worth",
      minutes: 6,
      conditions: ["entry-date"],
      reading: reading({ ...odometer, instrument: ["the paper's entry", 1, [0]], byEye: [1] }),
    },
  ),
  item(
    "identity.odometer-disclosure",
    words("odometer disclosure", "mileage declaration"),
    "Read the disclosure; exempt means nobody has verified it.",
    {
      ...papers,
      severity: "worth",
      minutes: 1,
      choice: ranked(
        ["actual", "disclosed as actual"],
        ["exempt", "exempt", "no-yardstick"],
        ["exceeds-limits", "exceeds mechanical limits", "worth"],
        ["not-actual", words("not actual", undefined, ["TMU", "true miles unknown"]), "worth"],
      ),
    },
  ),
  item(
    "identity.build-sheet",
    words("build sheet", undefined, ["broadcast sheet", "production card"]),
    "See the sheet itself and say where it was found.",
    {
      ...papers,
      severity: "small",
      minutes: 2,
      presence: ifPromised,
    },
  ),
  item(
    "identity.invoice",
    words("first invoice", undefined, ["window sticker", "bill of sale when new"]),
    "See the paper itself.",
    {
      ...papers,
      severity: "small",
      minutes: 1,
      presence: ifPromised,
    },
  ),
  item(
    "identity.restoration-bills",
    words("restoration bills", "restoration invoices"),
    "See the bills and whether they name this car.",
    {
      ...papers,
      severity: "worth",
      minutes: 4,
      presence: ifPromised,
    },
  ),
  item(
    "identity.restoration-photographs",
    words("restoration photographs"),
    "See whether they show this car, dated, with metal bare.",
    {
      ...papers,
      severity: "small",
      minutes: 4,
      presence: ifPromised,
    },
  ),
  item("identity.keys", words("keys"), "Try each key in each lock.", {
    ...papers,
    severity: "small",
    minutes: 2,
    costRow: "keys",
    choice: {
      ...ranked(
        ["full-set-and-spare", "full set and a spare"],
        ["full-set", "one full set"],
        ["incomplete", "some missing", "small"],
      ),
      neighbors: "differ",
    },
  }),
];
