/** A paper with the last instant it is good for; `null` where it names none. */
export type Paper = { readonly reference: string; readonly validUntil: number | null };

/** A place of the gate to the road: what holds, steers, stops and shows the car. An item without its places has position "". */
export type GateItem = {
  readonly item: string;
  readonly position: string;
  readonly seen: boolean;
  readonly safetyOpen: boolean;
};

export type RoadFacts = {
  /** The owner's written consent to this drive. */
  readonly consent: { readonly by: string; readonly signedAt: number } | null;
  readonly insurance: Paper | null;
  readonly plates: Paper | null;
  /** Who bears damage on the drive, as agreed in writing. */
  readonly damageBorneBy: "owner" | "dealer" | "inspection-firm" | "insurer" | null;
  /** Every gate item of the brief, and every place that closes the gate. */
  readonly gate: readonly GateItem[];
  /** What the inspector doubts, in their own words: it closes the road whatever was found. */
  readonly doubts: readonly string[];
};

export type RoadShortfall =
  | { readonly code: "consent-missing" }
  | { readonly code: "insurance-missing" }
  | { readonly code: "insurance-ended"; readonly validUntil: number }
  | { readonly code: "plates-missing" }
  | { readonly code: "plates-ended"; readonly validUntil: number }
  | { readonly code: "damage-unsettled" }
  | { readonly code: "gate-not-seen"; readonly items: readonly string[] }
  | { readonly code: "safety-item-open"; readonly places: readonly GatePlace[] }
  | { readonly code: "own-doubt"; readonly words: readonly string[] };

type GatePlace = Pick<GateItem, "item" | "position">;

function paperShortfall(kind: "insurance" | "plates", paper: Paper | null, now: number): RoadShortfall[] {
  if (paper === null) return [{ code: `${kind}-missing` }];
  const { validUntil } = paper;
  return validUntil !== null && validUntil <= now ? [{ code: `${kind}-ended`, validUntil }] : [];
}

/**
 * What is still wanting before the car may be driven: written consent, insurance, plates, who bears damage, the gate
 * looked at, nothing found there that closes it, and no doubt of the inspector's own. Empty when nothing is. Local law asks for more: this list never says that a drive
 * is lawful or that the car is roadworthy.
 *
 * @example
 * roadShortfalls({ consent: null, insurance, plates, damageBorneBy: "insurer", gate, doubts: [] }, now) // [{ code: "consent-missing" }]
 */
export function roadShortfalls(facts: RoadFacts, now: number): RoadShortfall[] {
  const { consent, insurance, plates, damageBorneBy, gate, doubts } = facts;
  const shortfalls: RoadShortfall[] = [];
  if (consent === null || consent.signedAt > now) shortfalls.push({ code: "consent-missing" });
  shortfalls.push(...paperShortfall("insurance", insurance, now), ...paperShortfall("plates", plates, now));
  if (damageBorneBy === null) shortfalls.push({ code: "damage-unsettled" });
  const unseen = [...new Set(gate.filter(({ seen }) => !seen).map(({ item }) => item))];
  if (gate.length === 0 || unseen.length > 0) shortfalls.push({ code: "gate-not-seen", items: unseen });
  const places = gate
    .filter(({ safetyOpen }) => safetyOpen)
    .map(({ item, position }): GatePlace => ({ item, position }));
  if (places.length > 0) shortfalls.push({ code: "safety-item-open", places });
  if (doubts.length > 0) shortfalls.push({ code: "own-doubt", words: doubts });
  return shortfalls;
}
