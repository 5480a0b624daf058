import { readFileSync } from "node:fs";
import { Arrivals } from "../../../apps/api/src/capabilities/evidence/arrivals.ts";
import { query } from "../../api/setup/database.ts";
import {
  carTo,
  collected,
  delivered,
  invite,
  signing,
  soundFindings,
  takesPicture,
} from "../../api/setup/hand-over-story.ts";
import { Person } from "../../api/setup/person.ts";
import type { Service } from "../../api/setup/service.ts";
import type { DemoPeople } from "./demo-car.ts";

const dent = (mm: number) => ({
  kind: "faults" as const,
  found: [{ kind: "dent", spot: "middle-center", extent: { value: mm, unit: "mm" as const } }],
  denied: [],
});

/** A worker makes the copies of whatever waits for them. */
export async function prepareAll({ app, databaseUrl }: Service): Promise<void> {
  const waiting = await query<{ id: string }>(
    databaseUrl,
    "SELECT id FROM evidence_file WHERE state = 'checked'",
  );
  for (const { id } of waiting) await app.get(Arrivals, { strict: false }).take(id);
}

/**
 * A bought car that arrived wet, with a dent and a key less than it left with, and a second carrier invited to it.
 *
 * @returns the case, the hand-over that is delivered, and the second carrier's secret
 */
export async function carryDemoCar(
  service: Service,
  people: DemoPeople,
): Promise<{ caseId: string; id: string; token: string }> {
  const parties = { ...people, nobody: new Person(people.buyer.url) };
  const { caseId } = await carTo(parties, "bought");
  const { id, token } = await invite(parties, caseId);
  const sign = async (report: ReturnType<typeof collected>, paper: "noted" | "nothing") => {
    const body = { ...(await signing(parties, token, report)), paper };
    await parties.nobody.does("carriedHandOvers.sign", { path: { token }, body });
  };
  const photograph = async (stage: "collection" | "delivery", nth: number, at = {}): Promise<void> => {
    const file = new URL(`../../../fixtures/demo/pictures/larksong-${stage}-${nth}.jpg`, import.meta.url);
    const bytes = Uint8Array.from(readFileSync(file));
    await takesPicture(parties, token, { stage, ...at }, bytes);
  };
  const door = { item: "body.faults", position: "left-front-door" };
  await photograph("collection", 1);
  await photograph("collection", 2, door);
  await sign(collected(soundFindings()), "nothing");
  await photograph("delivery", 2, door);
  await sign(
    delivered(
      soundFindings(
        { item: "visit.body-surface", answer: { kind: "choice", option: "wet" } },
        { item: "body.faults", position: "left-front-door", answer: dent(80) },
        { item: "identity.key-count", answer: { kind: "reading", unit: "1", values: [{ value: 1 }] } },
      ),
    ),
    "noted",
  );
  await prepareAll(service);
  return { caseId, id, token: (await invite(parties, caseId)).token };
}
