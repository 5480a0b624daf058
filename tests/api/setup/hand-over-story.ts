import assert from "node:assert/strict";
import type { Answer } from "@evenhand/shared/answer";
import type { FindingInput } from "@evenhand/shared/finding";
import {
  HandOverPicture,
  type HandOverSigning,
  type HandOverStage,
  type HandOverTerms,
} from "@evenhand/shared/http/hand-overs";
import { applicablePlaces } from "@evenhand/sheet/expand";
import { transportSheet1 } from "@evenhand/sheet/transport-sheet-1";
import { caseOn } from "./homes.ts";
import { acknowledgeAll, car, inspect, summarize } from "./story.ts";
import type { World } from "./world.ts";

/** Who has to do with a car that is bought. */
type Parties = Pick<World, "dealer" | "buyer" | "inspector">;

export const inDays = (days: number): string => new Date(Date.now() + days * 86_400_000).toISOString();

export const terms: HandOverTerms = {
  claimDeadline: {
    words: "Visible damage on delivery, hidden damage within 7 days",
    source: "the carrier's terms, section 9",
    until: null,
  },
  riskPasses: "When the carrier takes it over (sales contract, clause 6)",
};

/** A car of its own, read by its buyer or bought. */
export async function carTo(
  world: Parties,
  until: "read" | "bought",
): Promise<{ caseId: string; vehicle: string; comparison: string }> {
  const { comparison, vehicle } = await inspect(world);
  if (until === "bought") {
    const { id, hash, summary } = await summarize(world.buyer, comparison);
    const body = { decision: "approve", hash, acknowledgements: acknowledgeAll(summary) };
    await world.buyer.does("summaries.decide", { path: { id }, body });
  }
  return { caseId: (await caseOn(world.buyer, vehicle))?.id ?? "", vehicle, comparison };
}

export const invite = ({ buyer }: Pick<World, "buyer">, caseId: string) =>
  buyer.does("handOvers.arrange", {
    path: { id: caseId },
    body: { carrier: "Long Valley Haulage", terms, expires: inDays(20) },
  });

const SOUND: Readonly<Record<string, Answer>> = {
  "visit.light": { kind: "choice", option: "daylight" },
  "visit.body-surface": { kind: "choice", option: "dry" },
  "identity.odometer": { kind: "reading", unit: "mi", values: [{ value: 61_240 }] },
  "identity.fuel-level": { kind: "choice", option: "quarter" },
  "identity.key-count": { kind: "reading", unit: "1", values: [{ value: 2 }] },
  "contents.loose-items": { kind: "presence", value: "absent" },
  "road.leaks": { kind: "choice", option: "none" },
  "lashing.ground-clearance": { kind: "reading", unit: "mm", values: [{ value: 140 }] },
  "lashing.tie-down-points": { kind: "choice", option: "sound" },
};
const BY_KIND: Readonly<Record<string, Answer>> = {
  faults: { kind: "faults", found: [], denied: "all" },
  presence: { kind: "presence", value: "present" },
};

/** The whole sheet in daylight on a clean car with nothing to note, but for what is given. */
export function soundFindings(...others: readonly FindingInput[]): FindingInput[] {
  return applicablePlaces(transportSheet1, car.form).map(({ item, position }): FindingInput => {
    const other = others.find((each) => each.item === item.id && (each.position ?? "") === position);
    const sound = SOUND[item.id] ?? BY_KIND[item.answer] ?? { kind: "working", value: "yes" };
    return other ?? { item: item.id, position, answer: sound };
  });
}

const DAY = { zone: "America/Chicago" } as const;

export const collected = (findings: readonly FindingInput[]) => ({
  stage: "collection",
  started: "2026-06-01T14:00:00Z",
  ended: "2026-06-01T14:20:00Z",
  place: "Larkspur yard, gate 2",
  findings,
  ...DAY,
});

export const delivered = (findings: readonly FindingInput[]) => ({
  stage: "delivery",
  started: "2026-06-04T19:00:00Z",
  ended: "2026-06-04T19:15:00Z",
  place: "14 Orchard Row",
  findings,
  ...DAY,
});

/** A report as it is signed by two people who were shown it. */
export async function signing(
  { nobody }: Pick<World, "nobody">,
  token: string,
  report: ReturnType<typeof collected>,
) {
  const { hash } = await nobody.does("carriedHandOvers.preview", { path: { token }, body: report });
  return {
    report,
    hash,
    paper: "nothing" as HandOverSigning["paper"],
    carrier: "Marlow Penn",
    other: report.stage === "collection" ? "Delia Ashcombe" : "Bea Thorne",
  };
}

type At = { readonly stage: HandOverStage; readonly item?: string; readonly position?: string };

/** Sends a photograph by the carrier's link; whatever comes is answered. */
export async function sendPicture(
  { nobody }: Pick<World, "nobody">,
  token: string,
  at: At,
  bytes: Uint8Array<ArrayBuffer>,
): Promise<{ status: number; body: unknown }> {
  const asked = new URLSearchParams({ ...at });
  const answer = await fetch(`${nobody.url}/api/v1/carried-hand-overs/${token}/pictures?${asked}`, {
    method: "POST",
    headers: { origin: nobody.url, "content-type": "application/octet-stream" },
    body: bytes,
  });
  return { status: answer.status, body: await answer.json() };
}

/** The same, and expects it to be taken. */
export async function takesPicture(
  world: Pick<World, "nobody">,
  token: string,
  at: At,
  bytes: Uint8Array<ArrayBuffer>,
): Promise<HandOverPicture> {
  const { status, body } = await sendPicture(world, token, at, bytes);
  assert.equal(status, 201, JSON.stringify(body));
  return HandOverPicture.parse(body);
}
