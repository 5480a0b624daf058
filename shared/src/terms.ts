// Lists of terms, once and without the validator: contracts make their enums from them, screens their choices.

/** What somebody who inspects may know in particular. */
export const SKILLS = ["marque", "body", "welding", "electrics", "engine", "gearbox", "structure"] as const;

/** What ties an inspector, or their firm, to a dealer. The list is our own; the idea is that of ISO/IEC 17020:2012, Annex A. */
export const INTEREST_KINDS = [
  "owns",
  "employed-by",
  "director-in-common",
  "family",
  "lends-to",
  "owes",
  "supplies",
  "commission",
] as const;

/** What somebody has had to do with one car before. */
export const CAR_DEALINGS = ["owned", "bought", "sold", "repaired", "restored", "consigned"] as const;
