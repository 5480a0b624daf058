import type { OrganizationKind } from "@evenhand/shared/access";
import { v7 } from "uuid";
import { hashPassword } from "../../../apps/api/src/platform/auth/password.ts";
import { hashSecret, newSecret } from "../../../apps/api/src/platform/auth/secret.ts";
import { query } from "./database.ts";
import { Person } from "./person.ts";
import type { Service } from "./service.ts";

export const password = "correct horse battery staple";
let passwordHash: Promise<string> | undefined;

/** An organization of the kind with one member, signed in. */
export async function makePerson(
  { url, databaseUrl }: Pick<Service, "url" | "databaseUrl">,
  kind: OrganizationKind,
  name: string,
  role: "admin" | "member" = "admin",
): Promise<Person> {
  const organization = v7();
  await query(
    databaseUrl,
    "INSERT INTO organization (id, name, kind, zone, created_at) VALUES ($1, $2, $3, 'America/Chicago', now())",
    [organization, `${name}'s firm`, kind],
  );
  return joinPerson({ url, databaseUrl }, organization, name, role);
}

/** A further member of an organization, signed in. */
export async function joinPerson(
  { url, databaseUrl }: Pick<Service, "url" | "databaseUrl">,
  organization: string,
  name: string,
  role: "admin" | "member" = "member",
): Promise<Person> {
  passwordHash ??= hashPassword(password);
  const account = v7();
  await query(
    databaseUrl,
    "INSERT INTO account (id, name, email, password_hash, created_at) VALUES ($1, $2, $3, $4, now())",
    [account, name, emailOf(name), await passwordHash],
  );
  await query(databaseUrl, "INSERT INTO membership VALUES ($1, $2, $3, now())", [
    account,
    organization,
    role,
  ]);
  return signIn({ url, databaseUrl }, { account, organization });
}

/** Somebody who is known already, signed in. */
export async function signIn(
  { url, databaseUrl }: Pick<Service, "url" | "databaseUrl">,
  { account, organization }: { readonly account: string; readonly organization: string },
): Promise<Person> {
  const [session, secret] = [v7(), newSecret()];
  await query(
    databaseUrl,
    `INSERT INTO session (id, account_id, token_hash, device, created_at, last_seen_at, expires_at)
     VALUES ($1, $2, $3, 'a test', now(), now(), now() + interval '30 days')`,
    [session, account, Buffer.from(hashSecret(secret))],
  );
  return new Person(url, { account, organization, cookie: secret });
}

export const emailOf = (name: string): string => `${name.toLowerCase().replaceAll(/\W+/g, ".")}@example.com`;

export type World = {
  dealer: Person;
  otherDealer: Person;
  buyer: Person;
  otherBuyer: Person;
  inspector: Person;
  otherInspector: Person;
  operator: Person;
  nobody: Person;
};

/** One of everybody, and another one of whom nothing here is theirs. */
export async function makeWorld(service: Pick<Service, "url" | "databaseUrl">): Promise<World> {
  const [dealer, otherDealer, buyer, otherBuyer, inspector, otherInspector, operator] = await Promise.all([
    makePerson(service, "dealer", "Delia"),
    makePerson(service, "dealer", "Oskar"),
    makePerson(service, "buyer", "Bea"),
    makePerson(service, "buyer", "Omar"),
    makePerson(service, "inspector", "Ines"),
    makePerson(service, "inspector", "Otto"),
    makePerson(service, "operator", "Opal"),
  ]);
  const nobody = new Person(service.url);
  return { dealer, otherDealer, buyer, otherBuyer, inspector, otherInspector, operator, nobody };
}
