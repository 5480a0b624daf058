import { randomUUID } from "node:crypto";
import type { RouteId } from "@evenhand/shared/access";
import type { HandOverStage, HandOverState } from "@evenhand/shared/http/hand-overs";
import { query } from "./database.ts";
import { keepFile } from "./evidence-requests.ts";
import { carTo, inDays, invite, terms } from "./hand-over-story.ts";
import type { Asked } from "./person.ts";
import type { Variant, Who } from "./requests.ts";
import type { Scene } from "./scene.ts";

const bought = new WeakMap<Scene, Promise<{ caseId: string }>>();

/** The buyer's bought car of the scene, which nobody carries. */
async function toCarry(scene: Scene): Promise<string> {
  const known = bought.get(scene) ?? carTo(scene.world, "bought");
  bought.set(scene, known);
  const { caseId } = await known;
  await query(scene.service.databaseUrl, "UPDATE hand_over SET state = 'called-off' WHERE case_id = $1", [
    caseId,
  ]);
  return caseId;
}

/** A hand-over of it in the state. */
async function handOver(scene: Scene, state: HandOverState = "arranged"): Promise<string> {
  const { id } = await invite(scene.world, await toCarry(scene));
  await query(scene.service.databaseUrl, "UPDATE hand_over SET state = $2 WHERE id = $1", [id, state]);
  return id;
}

const one = (
  about: string,
  open: readonly Who[],
  ask: (scene: Scene) => Promise<Asked>,
): readonly Variant[] => [{ about, open, ask }];

/** A photograph of one stage of a delivered hand-over. */
const pictureOf =
  (stage: HandOverStage) =>
  async (scene: Scene): Promise<Asked> => {
    const [handOverId, id] = [await handOver(scene, "delivered"), randomUUID()];
    const { file } = await keepFile(scene, scene.world.buyer.organization);
    await query(
      scene.service.databaseUrl,
      `INSERT INTO hand_over_picture (id, hand_over_id, stage, item, position, file_id, created_at)
       VALUES ($1, $2, $3, '', '', $4, now())`,
      [id, handOverId, stage, file],
    );
    return { path: { id } };
  };

const note = { note: "as agreed" };
const parties: readonly Who[] = ["buyer", "dealer"];
/** What left is the dealer's business too; where it went is the buyer's. */
const picture: readonly Variant[] = [
  ...one("one taken at collection", parties, pictureOf("collection")),
  ...one("one taken at delivery", ["buyer"], pictureOf("delivery")),
];

/** How each route of a hand-over is asked, and whom it is open to. */
export const handOverVariants: Readonly<Partial<Record<RouteId, readonly Variant[]>>> = {
  "handOvers.arrange": one("a bought car", ["buyer"], async (scene) => ({
    path: { id: await toCarry(scene) },
    body: { carrier: "Long Valley Haulage", terms, expires: inDays(20) },
  })),
  "handOvers.ofCase": one("a bought car", parties, async (scene) => ({ path: { id: await toCarry(scene) } })),
  "handOvers.get": one("one arranged", parties, async (scene) => ({ path: { id: await handOver(scene) } })),
  "handOverPictures.small": picture,
  "handOverPictures.large": picture,
  "handOverPictures.original": one("one taken at collection", ["buyer"], pictureOf("collection")),
  "handOvers.renewLink": one("one arranged", ["buyer"], async (scene) => ({
    path: { id: await handOver(scene) },
    body: { expires: inDays(20) },
  })),
  "handOvers.setTerms": one("one arranged", ["buyer"], async (scene) => ({
    path: { id: await handOver(scene) },
    revision: 1,
    body: terms,
  })),
  "handOvers.callOff": one("one arranged", ["buyer"], async (scene) => ({
    path: { id: await handOver(scene) },
    revision: 1,
    body: note,
  })),
  "handOvers.signOff": one("one delivered", ["buyer"], async (scene) => ({
    path: { id: await handOver(scene, "delivered") },
    revision: 1,
    body: note,
  })),
  "handOvers.openClaim": one("one delivered", ["buyer"], async (scene) => ({
    path: { id: await handOver(scene, "delivered") },
    revision: 1,
    body: note,
  })),
  "handOvers.closeClaim": one("an open claim", ["buyer"], async (scene) => ({
    path: { id: await handOver(scene, "claim-open") },
    revision: 1,
    body: note,
  })),
};
