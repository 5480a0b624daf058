import { published } from "../limit-record/index.ts";
import { breaks, cannotTell, defineRecord, holds, regulation } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const odometerDisclosureRecord = defineRecord("odometer-disclosure", {
  title: "Odometer disclosure",
  reads: "model year, year of transfer, weight rating, whether it drives itself",
  formula:
    "model years up to 2010: exempt from ten years after; from 2011: from twenty years after; over 16,000 lb or not self-propelled: exempt",
  limits: {
    "disclosure.early-years": published(
      "exempt after this, model years up to 2010",
      10,
      "a",
      "49 CFR 580.17(a)(3)",
    ),
    "disclosure.late-years": published(
      "exempt after this, model years from 2011",
      20,
      "a",
      "49 CFR 580.17(a)(3)",
    ),
    "disclosure.weight": published(
      "exempt over this gross weight rating",
      16000,
      "lb",
      "49 CFR 580.17(a)(1)",
    ),
  },
  source: regulation("49 CFR 580.17(a)"),
  consequence: "papers",
  over: "both-reports",
  strength: "reminder",
  cautions: [],
  note: "A reminder, not advice: state law may ask for more, and an exempt mileage is not a verified one.",
  outcomes: {
    "exempt-by-age": holds(
      "Model year {modelYear}: exempt from odometer disclosure since {exemptFrom}. Exempt is not verified; state law may ask for more.",
    ),
    "exempt-by-kind": holds(
      "Exempt from odometer disclosure by weight or kind. Exempt is not verified; state law may ask for more.",
    ),
    due: holds(
      "Model year {modelYear}: an odometer disclosure is due on transfer until {exemptFrom}. A reminder; take advice locally.",
    ),
    "claimed-exempt-but-due": breaks(
      "worth",
      "Said to be exempt from odometer disclosure, but model year {modelYear} is only from {exemptFrom}. A reminder; take advice locally.",
    ),
    "too-few": cannotTell("Model year or year of transfer is not known."),
  },
});
