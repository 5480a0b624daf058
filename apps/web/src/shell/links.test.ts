import type { OrganizationKind } from "@evenhand/shared/access";
import type { Account } from "@evenhand/shared/http/accounts";
import { expect, test } from "vitest";
import { accountLinks, headerLinks, offered } from "./links";

const of = (...kinds: readonly OrganizationKind[]): Account => ({
  id: "01900000-0000-7000-8000-000000000001",
  name: "Ada Quill",
  email: "ada@quill.example",
  memberships: kinds.map((kind, at) => ({
    role: "member",
    organization: { id: `01900000-0000-7000-8000-00000000001${at}`, kind, name: kind },
  })),
});

const addresses = (account: Account): readonly string[] => offered(headerLinks, account).map(({ to }) => to);

const menu = (account: Account): readonly string[] => offered(accountLinks, account).map(({ to }) => to);

test("a dealer is led to what a dealer has to do, and to no inspector's day", () => {
  expect(addresses(of("dealer"))).toEqual([
    "/cars",
    "/appointments",
    "/released",
    "/decisions",
    "/questions",
  ]);
});

test("an inspector is led to orders and the day", () => {
  expect(addresses(of("inspector"))).toEqual(["/cars", "/appointments", "/orders", "/day"]);
});

test("an operator is led to admissions and complaints, and to appointments last", () => {
  expect(addresses(of("operator"))).toEqual(["/cars", "/admissions", "/complaints", "/appointments"]);
});

test("who is buyer and operator is offered appointments once", () => {
  expect(addresses(of("buyer", "operator")).filter((to) => to === "/appointments")).toHaveLength(1);
});

test("instruments are in the menu of who may have some, the handbook in everybody's", () => {
  expect(menu(of("dealer"))).toContain("/instruments");
  expect(menu(of("buyer"))).not.toContain("/instruments");
  expect(menu(of())).toContain("/handbook");
});
