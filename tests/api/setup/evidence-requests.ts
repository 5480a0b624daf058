import { randomBytes, randomUUID } from "node:crypto";
import type { RouteId } from "@evenhand/shared/access";
import { copyKey, originalKey } from "../../../apps/api/src/capabilities/evidence/keys.ts";
import { Storage } from "../../../apps/api/src/platform/storage/storage.ts";
import { query } from "./database.ts";
import { announcement, hashOf } from "./evidence-story.ts";
import type { Asked } from "./person.ts";
import { photograph } from "./pictures.ts";
import type { Variant, Who } from "./requests.ts";
import type { Scene } from "./scene.ts";

const webp = Buffer.from("RIFF\u0004\0\0\0WEBP", "latin1");
const sizes = ["small", "medium", "large"] as const;

type Kept = { readonly sealedIn?: number; readonly state?: "arriving" | "pending" };

/** A prepared file of an organization, at no place yet. */
export async function keepFile(
  { service }: Pick<Scene, "service">,
  organization: string,
): Promise<{ file: string; sha256: string }> {
  const [file, sha256] = [randomUUID(), hashOf(randomBytes(20))];
  const copies = sizes.map((size) => ({ size, width: 1, height: 1, sha256: hashOf(webp) }));
  await query(
    service.databaseUrl,
    `INSERT INTO evidence_file (id, organization_id, sha256, bytes, state, kind, copies, created_at)
     VALUES ($1, $2, $3, 12, 'ready', 'jpeg', $4, now())`,
    [file, organization, sha256, JSON.stringify(copies)],
  );
  const storage = service.app.get(Storage, { strict: false });
  await storage.put(originalKey(organization, sha256), webp);
  for (const size of sizes) await storage.put(copyKey(file, size), webp);
  return { file, sha256 };
}

/** A file at the car as a whole of a report: prepared, unless it is still arriving. */
async function keep(
  { service }: Scene,
  report: string,
  { sealedIn, state = "pending" }: Kept = {},
): Promise<string> {
  const id = randomUUID();
  const [owner] = await query<{ organization: string }>(
    service.databaseUrl,
    "SELECT organization_id AS organization FROM report WHERE id = $1",
    [report],
  );
  const organization = owner?.organization ?? "";
  const { file, sha256 } = await keepFile({ service }, organization);
  await query(
    service.databaseUrl,
    `INSERT INTO evidence (id, report_id, organization_id, account_id, item, position, name, sha256, bytes, received, state,
       file_id, sealed_in, created_at, expires_at)
     VALUES ($1, $2, $3, $1, '', '', 'a.jpg', $4, 12, $5, $6, $7, $8, now(), now() + interval '1 day')`,
    [
      id,
      report,
      organization,
      sha256,
      state === "arriving" ? 0 : 12,
      state,
      state === "arriving" ? null : file,
      sealedIn ?? null,
    ],
  );
  return id;
}

async function reportOf({ service }: Scene, version: string): Promise<string> {
  const [row] = await query<{ id: string }>(
    service.databaseUrl,
    "SELECT report_id AS id FROM report_version WHERE id = $1",
    [version],
  );
  return row?.id ?? "";
}

type Ask = (scene: Scene) => Promise<Asked>;
const one = (about: string, open: readonly Who[], ask: Ask): Variant => ({ about, open, ask });
const everybody: readonly Who[] = [
  "dealer",
  "otherDealer",
  "buyer",
  "otherBuyer",
  "inspector",
  "otherInspector",
  "operator",
];

/** Of the dealer's draft and of the inspector's. */
const ofDrafts = (ask: (scene: Scene, report: string) => Promise<Asked>): readonly Variant[] => [
  one("the dealer's draft", ["dealer"], (scene) => ask(scene, scene.draft.id)),
  one("the inspector's draft", ["inspector"], (scene) => ask(scene, scene.inspectionDraft)),
];

const tus = { "tus-resumable": "1.0.0" };
const part = { ...tus, "content-type": "application/offset+octet-stream", "upload-offset": "0" };

const picture: readonly Variant[] = [
  one("a published statement's", everybody, async (scene) => ({
    path: { id: await keep(scene, await reportOf(scene, scene.statements.first), { sealedIn: 1 }) },
  })),
  one("an inspection's", ["buyer", "inspector"], async (scene) => ({
    path: { id: await keep(scene, await reportOf(scene, scene.way.inspection), { sealedIn: 1 }) },
  })),
  one("a draft's", ["dealer"], async (scene) => ({ path: { id: await keep(scene, scene.draft.id) } })),
];

/** How each route of photographs and papers is asked, and whom it is open to. */
export const evidenceVariants: Readonly<Partial<Record<RouteId, readonly Variant[]>>> = {
  "uploads.create": ofDrafts(async (_, report) =>
    announcement(report, await photograph(), { position: randomUUID(), sha256: hashOf(randomBytes(20)) }),
  ),
  "uploads.get": ofDrafts(async (scene, report) => ({
    path: { id: await keep(scene, report, { state: "arriving" }) },
  })),
  "uploads.append": ofDrafts(async (scene, report) => ({
    path: { id: await keep(scene, report, { state: "arriving" }) },
    headers: part,
  })),
  "evidence.ofReport": ofDrafts(async (_, id) => ({ path: { id } })),
  "evidence.ofVersion": [
    one("a published statement", everybody, async ({ statements }) => ({ path: { id: statements.first } })),
    one("an inspection", ["buyer", "inspector"], async ({ way }) => ({ path: { id: way.inspection } })),
  ],
  "evidence.ofVehicle": [
    one("a listed car", everybody, async ({ listed }) => ({ path: { id: listed.vehicle } })),
    one("a car not listed", ["dealer"], async ({ draft }) => ({ path: { id: draft.vehicle } })),
  ],
  "evidence.small": picture,
  "evidence.medium": picture,
  "evidence.large": picture,
  "evidence.original": ofDrafts(async (scene, report) => ({ path: { id: await keep(scene, report) } })),
  "evidence.mark": ofDrafts(async (scene, report) => ({
    path: { id: await keep(scene, report) },
    body: { marks: [{ kind: "circle", x: 0.4, y: 0.6, radius: 0.1 }] },
  })),
  "evidence.remove": ofDrafts(async (scene, report) => ({ path: { id: await keep(scene, report) } })),
  "evidence.restore": ofDrafts(async (scene, report) => ({ path: { id: await keep(scene, report) } })),
};
