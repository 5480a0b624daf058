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

/** How grave what was found is, gravest first; what each means stands with `Severity`. */
export const SEVERITIES = ["halt", "danger", "worth", "repair", "small"] as const;

/** The order of a visit. */
export const STAGES = [
  "cold",
  "papers",
  "daylight",
  "cold-start",
  "running",
  "lift",
  "road",
  "hot",
  "second-lift",
  "last",
] as const;

/** How much of the sheet a visit takes: each depth holds the ones before it. */
export const DEPTHS = ["first-look", "half-day", "day"] as const;

/** What a look at an item takes beside the person. */
export const NEEDS = [
  "lift",
  "daylight",
  "road",
  "cold-engine",
  "hot-engine",
  "dismantling",
  "permission",
] as const;

/** Whether a thing works. */
export const WORKING = ["yes", "no", "intermittent", "not-known"] as const;

/** Whether a thing is there. */
export const PRESENCE = ["present", "absent", "not-known"] as const;

/** The house scale, worst first. */
export const HOUSE_GRADES = ["spent", "heavy-wear", "even-wear", "light-wear", "as-new"] as const;

/** Why a thing was not seen. */
export const NOT_SEEN_REASONS = [
  "not-reached",
  "not-tested",
  "needs-dismantling",
  "not-permitted",
  "unsafe",
  "weather",
  "no-tool",
  "covered",
  "dark",
  "wet",
  "dirty",
  "no-time",
] as const;

/** How firmly a thing is said. */
export const FIRMNESSES = ["asserted", "hedged", "second-hand"] as const;

/** States of an appointment, from the hold to its end. */
export const APPOINTMENT_STATES = [
  "held",
  "requested",
  "accepted",
  "confirmed",
  "under-way",
  "reported",
  "declined",
  "cancelled",
  "missed",
  "expired",
] as const;

/** Who may bear damage on the road. */
export const DAMAGE_BEARERS = ["owner", "dealer", "inspection-firm", "insurer"] as const;
