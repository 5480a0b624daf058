import {
  carTo,
  collected,
  delivered,
  invite,
  signing,
  soundFindings,
} from "../../api/setup/hand-over-story.ts";
import { Person } from "../../api/setup/person.ts";
import type { DemoPeople } from "./demo-car.ts";

const dent = (mm: number) => ({
  kind: "faults" as const,
  found: [{ kind: "dent", spot: "middle-center", extent: { value: mm, unit: "mm" as const } }],
  denied: [],
});

/**
 * A bought car that arrived wet, with a dent and a key less than it left with, and a second carrier invited to it.
 *
 * @returns the case, the hand-over that is delivered, and the second carrier's secret
 */
export async function carryDemoCar(
  people: DemoPeople,
): Promise<{ caseId: string; id: string; token: string }> {
  const parties = { ...people, nobody: new Person(people.buyer.url) };
  const { caseId } = await carTo(parties, "bought");
  const { id, token } = await invite(parties, caseId);
  const sign = async (report: ReturnType<typeof collected>, paper: "noted" | "nothing") => {
    const body = { ...(await signing(parties, token, report)), paper };
    await parties.nobody.does("carriedHandOvers.sign", { path: { token }, body });
  };
  await sign(collected(soundFindings()), "nothing");
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
  return { caseId, id, token: (await invite(parties, caseId)).token };
}
