import type { OrganizationKind } from "@evenhand/shared/access";
import type { Account } from "@evenhand/shared/http/accounts";
import { expect, test } from "vitest";
import { accountLinks, headerLinks, offered } from "./links";

const of = (...kinds: readonly OrganizationKind[]): Account => ({
  id: "01900000-0000-7000-8000-000000000001",
  name: "Ada Quill",
  email: "ada@quill.example",
  unread: 0,
  memberships: kinds.map((kind, at) => ({
    role: "member",
    organization: { id: `01900000-0000-7000-8000-00000000001${at}`, kind, name: kind },
  })),
});

const addresses = (account: Account): readonly string[] => offered(headerLinks, account).map(({ to }) => to);

const menu = (account: Account): readonly string[] => offered(accountLinks, account).map(({ to }) => to);

test.each([
  ["buyer", ["/", "/cars", "/help"]],
  ["dealer", ["/", "/cars", "/sites", "/help"]],
  ["inspector", ["/", "/cars", "/calendars", "/help"]],
  ["operator", ["/", "/cars", "/queues", "/help"]],
] as const)("the menu of a %s is cases, cars, at most one more, and help", (kind, links) => {
  expect(addresses(of(kind))).toEqual(links);
});

test("who is more than one of the four has the one more of each", () => {
  expect(addresses(of("dealer", "inspector"))).toEqual(["/", "/cars", "/calendars", "/sites", "/help"]);
});

test("instruments are in the menu of who may have some, the handbook in everybody's", () => {
  expect(menu(of("dealer"))).toContain("/instruments");
  expect(menu(of("buyer"))).not.toContain("/instruments");
  expect(menu(of())).toContain("/handbook");
});
