import { randomUUID } from "node:crypto";
import type { RouteId } from "@evenhand/shared/access";
import { query } from "./database.ts";
import { keepFile } from "./evidence-requests.ts";
import type { Asked } from "./person.ts";
import { photograph } from "./pictures.ts";
import type { Variant, Who } from "./requests.ts";
import { askedLine, type Scene } from "./scene.ts";

type Ask = (scene: Scene) => Promise<Asked>;
const one = (about: string, open: readonly Who[], ask: Ask): Variant => ({ about, open, ask });

const contested = new WeakMap<Scene, Promise<string>>();

/** A line of its own that the dealer contested and the buyer put to the inspector. */
const lineOf = (scene: Scene): Promise<string> => {
  const known = contested.get(scene) ?? askedLine(scene.world).then(({ line }) => line);
  contested.set(scene, known);
  return known;
};

type Side = "dealer" | "buyer" | "inspector";

/** A photograph of that line, which no move names. */
async function keep(scene: Scene, side: Side): Promise<{ id: string; sha256: string }> {
  const { service, world } = scene;
  const id = randomUUID();
  const { organization, account } = world[side];
  const { file, sha256 } = await keepFile({ service }, organization);
  await query(
    service.databaseUrl,
    `INSERT INTO release_picture (id, release_id, organization_id, account_id, file_id, created_at)
     VALUES ($1, $2, $3, $4, $5, now())`,
    [id, await lineOf(scene), organization, account, file],
  );
  return { id, sha256 };
}

const waitingOf =
  (side: Side): Ask =>
  async (scene) => ({ path: { id: (await keep(scene, side)).id } });
/** To each of the three their own, while no move names it. */
const ownWaiting = (["dealer", "buyer", "inspector"] as const).map((side) =>
  one(`one of the ${side}'s that no move names`, [side], waitingOf(side)),
);

/** Named by a move with which the dealer contests. */
async function sent(scene: Scene): Promise<Asked> {
  const { id, sha256 } = await keep(scene, "dealer");
  await query(scene.service.databaseUrl, "UPDATE release_picture SET sent_at = now() WHERE id = $1", [id]);
  await query(
    scene.service.databaseUrl,
    `INSERT INTO settlement_move (id, release_id, deed, at, actor, move, from_state, to_state, evidence)
     VALUES ($1, $2, $1, now(), 'dealer', 'contest', 'released', 'contested', $3)`,
    [randomUUID(), await lineOf(scene), JSON.stringify([{ kind: "photograph", id, sha256 }])],
  );
  return { path: { id } };
}

const shown: readonly Variant[] = [
  ...ownWaiting,
  one("one sent with what was contested", ["buyer", "dealer", "inspector"], sent),
];

/** How each route of photographs that speak for a move is asked, and whom it is open to. */
export const releasePictureVariants: Readonly<Partial<Record<RouteId, readonly Variant[]>>> = {
  "releasePictures.add": [
    one("one put to the inspector", ["buyer", "dealer", "inspector"], async (scene) => ({
      path: { id: await lineOf(scene) },
      bytes: await photograph(),
    })),
    one("a released item", ["buyer", "dealer"], async ({ release }) => ({
      path: { id: release },
      bytes: await photograph(),
    })),
  ],
  "releasePictures.list": [
    one("one put to the inspector", ["buyer", "dealer", "inspector"], async (scene) => ({
      path: { id: await lineOf(scene) },
    })),
  ],
  "releasePictures.small": shown,
  "releasePictures.large": shown,
  "releasePictures.original": [one("one sent with what was contested", ["dealer"], sent), ...ownWaiting],
  "releasePictures.remove": ownWaiting,
};
