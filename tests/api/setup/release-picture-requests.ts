import { randomUUID } from "node:crypto";
import type { RouteId } from "@evenhand/shared/access";
import { query } from "./database.ts";
import { keepFile } from "./evidence-requests.ts";
import type { Asked } from "./person.ts";
import { photograph } from "./pictures.ts";
import type { Variant, Who } from "./requests.ts";
import type { Scene } from "./scene.ts";

type Ask = (scene: Scene) => Promise<Asked>;
const one = (about: string, open: readonly Who[], ask: Ask): Variant => ({ about, open, ask });

/** The dealer's photograph of the line that was contested and put to the inspector. */
async function keep({ service, world, askedRelease }: Scene): Promise<{ id: string; sha256: string }> {
  const id = randomUUID();
  const { file, sha256 } = await keepFile({ service }, world.dealer.organization);
  await query(
    service.databaseUrl,
    `INSERT INTO release_picture (id, release_id, organization_id, account_id, file_id, created_at)
     VALUES ($1, $2, $3, $4, $5, now())`,
    [id, askedRelease, world.dealer.organization, world.dealer.account, file],
  );
  return { id, sha256 };
}

const waiting = async (scene: Scene): Promise<Asked> => ({ path: { id: (await keep(scene)).id } });

/** Named by the move with which the dealer contested. */
async function sent(scene: Scene): Promise<Asked> {
  const { id, sha256 } = await keep(scene);
  await query(scene.service.databaseUrl, "UPDATE release_picture SET sent_at = now() WHERE id = $1", [id]);
  await query(
    scene.service.databaseUrl,
    "UPDATE settlement_move SET evidence = $2 WHERE release_id = $1 AND move = 'contest'",
    [scene.askedRelease, JSON.stringify([{ kind: "photograph", id, sha256 }])],
  );
  return { path: { id } };
}

const shown: readonly Variant[] = [
  one("one that no move names", ["dealer"], waiting),
  one("one sent with what was contested", ["buyer", "dealer", "inspector"], sent),
];

/** How each route of photographs that speak for a move is asked, and whom it is open to. */
export const releasePictureVariants: Readonly<Partial<Record<RouteId, readonly Variant[]>>> = {
  "releasePictures.add": [
    one("one put to the inspector", ["buyer", "dealer", "inspector"], async ({ askedRelease }) => ({
      path: { id: askedRelease },
      bytes: await photograph(),
    })),
    one("a released item", ["buyer", "dealer"], async ({ release }) => ({
      path: { id: release },
      bytes: await photograph(),
    })),
  ],
  "releasePictures.list": [
    one("one put to the inspector", ["buyer", "dealer", "inspector"], async ({ askedRelease }) => ({
      path: { id: askedRelease },
    })),
  ],
  "releasePictures.small": shown,
  "releasePictures.large": shown,
  "releasePictures.original": [one("one sent with what was contested", ["dealer"], sent)],
  "releasePictures.remove": [one("one that no move names", ["dealer"], waiting)],
};
