import { randomUUID } from "node:crypto";
import { accessTable, type OrganizationKind, type RouteId } from "@evenhand/shared/access";
import { contracts } from "@evenhand/shared/http/contracts";
import { problemCodeOf } from "@evenhand/shared/http/problem-codes";
import { beforeAll, expect, test } from "vitest";
import type { Person } from "../api/setup/person.ts";
import { type Variant, variantsOf, type Who } from "../api/setup/requests.ts";
import { guardedRoutes as guarded } from "../api/setup/served-routes.ts";
import { type Scene, setScene, withSession } from "../api/setup/scene.ts";
import { useService } from "../api/setup/service.ts";
import { joinPerson } from "../api/setup/world.ts";

const service = useService({ emptyBetween: false });
let scene: Scene;
beforeAll(async () => {
  scene = await setScene(service());
});

const kindOf: Readonly<Record<Who, OrganizationKind>> = {
  dealer: "dealer",
  otherDealer: "dealer",
  buyer: "buyer",
  otherBuyer: "buyer",
  inspector: "inspector",
  otherInspector: "inspector",
  operator: "operator",
};
const isWho = (name: string): name is Who => Object.hasOwn(kindOf, name);
const everybody = Object.keys(kindOf).filter(isWho);

/** May somebody of this kind ever do it, by the table? */
const mayEver = (route: RouteId, kind: OrganizationKind): boolean =>
  accessTable[route].who.some((grant) => grant.kind === kind || grant.kind === "anyone");

/** Never by the table: 403. Not this object: 404, as if it were not there; 403 for who may know that it is. */
function expected(route: RouteId, variant: Variant, who: Who): [number, string | null] {
  if (!mayEver(route, kindOf[who]) || variant.shut?.includes(who)) return [403, "not-permitted"];
  return variant.open.includes(who) ? [contracts[route].status, null] : [404, "not-found"];
}

async function personFor({ ownSession, asNew }: Variant, original: Person): Promise<Person> {
  if (asNew) return joinPerson(service(), original.organization, `New ${randomUUID()}`, "admin");
  return ownSession ? (await withSession(service(), original)).person : original;
}

const cases = guarded.flatMap((route) =>
  variantsOf(route).flatMap((variant) =>
    everybody.map((who) => ({ route, about: variant.about, who, variant })),
  ),
);

test.each(cases)("$route, $about, by $who", async ({ route, variant, who }) => {
  const original = scene.world[who];
  const person = await personFor(variant, original);
  const answer = await person.ask(route, await variant.ask(scene, original));
  const code = problemCodeOf(String(answer.body?.type ?? ""));
  expect([answer.status, code]).toEqual(expected(route, variant, who));
});

test.each(guarded)("%s without a session asks for one", async (route) => {
  const [variant] = variantsOf(route);
  const asked = (await variant?.ask(scene, scene.world.dealer)) ?? {};
  const answer = await scene.world.nobody.ask(route, asked);
  expect(answer.status).toBe(401);
  expect(answer.headers["www-authenticate"]).toContain("Bearer");
});

const withObject = guarded.filter((route) => accessTable[route].path.includes(":id"));

test.each(withObject)(
  "%s about an object that is not there is 404 to those whom it could be open to",
  async (route) => {
    const [variant] = variantsOf(route);
    for (const who of everybody.filter((each) => mayEver(route, kindOf[each]))) {
      const asked = (await variant?.ask(scene, scene.world[who])) ?? {};
      const answer = await scene.world[who].ask(route, { ...asked, path: { id: randomUUID() } });
      expect([who, answer.status]).toEqual([who, 404]);
    }
  },
);

test("every guarded route is asked, and everybody whom the table lets in gets in somewhere", () => {
  for (const route of guarded) {
    const open = new Set(
      variantsOf(route)
        .flatMap((variant) => variant.open)
        .map((who) => kindOf[who]),
    );
    const granted = everybody.map((who) => kindOf[who]).filter((kind) => mayEver(route, kind));
    expect([route, [...open].toSorted((a, b) => a.localeCompare(b))]).toEqual([
      route,
      [...new Set(granted)].toSorted((a, b) => a.localeCompare(b)),
    ]);
  }
});
