import { accessTable, type RouteId } from "@evenhand/shared/access";
import { query } from "../../api/setup/database.ts";
import type { Asked, Person } from "../../api/setup/person.ts";
import { collected, soundFindings } from "../../api/setup/hand-over-story.ts";
import { variantsOf, type Who } from "../../api/setup/requests.ts";
import type { Scene } from "../../api/setup/scene.ts";
import { guardedRoutes, servedRoutes } from "../../api/setup/served-routes.ts";
import { joinPerson } from "../../api/setup/world.ts";

/** A request that holds, and one to whom its object is open: what is spoiled. */
export type Sample = { readonly route: RouteId; readonly person: Person; readonly asked: Asked };

/** Whoever does it to themselves might be gone afterwards: it is done by somebody who is needed for nothing else. */
const endsOneself = (route: RouteId): boolean =>
  accessTable[route].method !== "GET" && accessTable[route].who.some(({ relation }) => relation === "self");

const publicBodies: Readonly<Partial<Record<RouteId, unknown>>> = {
  "sessions.create": { email: "delia@example.com", password: "not the right one" },
  "carriedHandOvers.preview": collected(soundFindings()),
  "carriedHandOvers.sign": {
    report: collected(soundFindings()),
    hash: "0".repeat(64),
    paper: "nothing",
    carrier: "Marlow Penn",
    other: "Delia Ashcombe",
  },
  "invitations.accept": { name: "Nobody", password: "long enough to pass" },
};

const orderOf = (open: readonly Who[]): Who => open[0] ?? "dealer";

/** One for every served route and every kind of object it can be about. */
export async function makeSamples(scene: Scene): Promise<Sample[]> {
  const samples: Sample[] = [];
  const spare = await joinPerson(scene.service, scene.world.dealer.organization, "Spare");
  for (const route of guardedRoutes)
    for (const variant of variantsOf(route)) {
      const original = scene.world[orderOf(variant.open)];
      const asked = await variant.ask(scene, original);
      samples.push({ route, asked, person: endsOneself(route) ? spare : original });
    }
  for (const route of servedRoutes.filter((each) => accessTable[each].public === true))
    samples.push({ route, person: scene.world.nobody, asked: { body: publicBodies[route] } });
  return samples;
}

/** Every id that a sample names: what belongs to one is sent where another's is expected. */
export const idsIn = (samples: readonly Sample[]): string[] => [
  ...new Set(JSON.stringify(samples.map(({ asked }) => asked)).match(/[0-9a-f]{8}-[0-9a-f-]{27}/g)),
];

/** Whoever was put out of their firm or signed out by what was sent is let in again, or nothing more would reach anything. */
export async function letInAgain({ service, world }: Scene): Promise<void> {
  const people = Object.values(world).filter(({ account }) => account !== "");
  await query(
    service.databaseUrl,
    `INSERT INTO membership SELECT account, organization, 'admin', now()
     FROM unnest($1::uuid[], $2::uuid[]) AS m (account, organization) ON CONFLICT DO NOTHING`,
    [people.map(({ account }) => account), people.map(({ organization }) => organization)],
  );
  await query(
    service.databaseUrl,
    "UPDATE session SET revoked_at = NULL, expires_at = now() + interval '30 days' WHERE account_id = ANY($1::uuid[])",
    [people.map(({ account }) => account)],
  );
}
