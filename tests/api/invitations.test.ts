import { beforeEach, expect, test } from "vitest";
import { query } from "./setup/database.ts";
import { Person } from "./setup/person.ts";
import { useService } from "./setup/service.ts";
import { emailOf, joinPerson, makePerson, password } from "./setup/world.ts";

const service = useService();
let delia: Person;
let nobody: Person;
beforeEach(async () => {
  delia = await makePerson(service(), "dealer", "Delia");
  nobody = new Person(service().url);
});

/** Invites, and reads the link in the mail. */
async function invite(email: string, by = delia): Promise<string> {
  await by.does("invitations.create", { body: { email, organization: delia.organization, role: "member" } });
  const [mail] = await query<{ body: string }>(
    service().databaseUrl,
    "SELECT body FROM mail WHERE recipient = $1 ORDER BY id DESC LIMIT 1",
    [email],
  );
  return /\/invitation\/([\w-]+)/.exec(mail?.body ?? "")?.[1] ?? "";
}

const accept = { name: "Nils New", password: "a long enough password" };

test("the link in the mail leads into the organization, once", async () => {
  const token = await invite("nils@example.com");
  const seen = await nobody.does("invitations.get", { path: { token } });
  expect(seen).toMatchObject({
    email: "nils@example.com",
    role: "member",
    known: false,
    organization: { kind: "dealer" },
  });
  const { id } = await nobody.does("invitations.accept", { path: { token }, body: accept });
  const members = await delia.does("organizations.members", { path: { id: delia.organization } });
  expect(members.items).toContainEqual({
    account: { id, name: "Nils New" },
    email: "nils@example.com",
    role: "member",
  });
  const again = await nobody.isRefused("invitations.accept", { path: { token }, body: accept });
  expect(again).toMatchObject({ code: "invitation-spent", status: 410 });
});

test("the new member signs in with the password they chose", async () => {
  const token = await invite("nils@example.com");
  await nobody.does("invitations.accept", { path: { token }, body: accept });
  const answer = await nobody.ask("sessions.create", {
    body: { email: "nils@example.com", password: accept.password },
  });
  expect(answer.status).toBe(201);
});

test("somebody who has an account joins by its own password", async () => {
  await makePerson(service(), "buyer", "Bea");
  const token = await invite(emailOf("Bea"));
  const wrong = await nobody.isRefused("invitations.accept", { path: { token }, body: accept });
  expect(wrong.code).toBe("sign-in-refused");
  await nobody.does("invitations.accept", { path: { token }, body: { name: "Bea", password } });
  const rows = await query(service().databaseUrl, "SELECT 1 FROM membership WHERE organization_id = $1", [
    delia.organization,
  ]);
  expect(rows).toHaveLength(2);
});

test("of two that use the link at once, one gets in", async () => {
  const token = await invite("nils@example.com");
  const ask = () => nobody.ask("invitations.accept", { path: { token }, body: accept });
  const statuses = (await Promise.all([ask(), ask(), ask()])).map(({ status }) => status);
  expect(statuses.toSorted((a, b) => a - b)).toEqual([201, 410, 410]);
});

test("a link that has run out, and one that never was, say the same", async () => {
  const token = await invite("nils@example.com");
  await query(service().databaseUrl, "UPDATE invitation SET expires_at = now() - interval '1 second'");
  const [late, never] = [
    await nobody.isRefused("invitations.get", { path: { token } }),
    await nobody.isRefused("invitations.get", { path: { token: "never-was" } }),
  ];
  expect({ ...late, instance: "" }).toEqual({ ...never, instance: "" });
});

test("a member who is no administrator invites nobody", async () => {
  const member = await joinPerson(service(), delia.organization, "Mona");
  const body = { email: "x@example.com", organization: delia.organization, role: "admin" };
  expect((await member.isRefused("invitations.create", { body })).code).toBe("not-found");
});

test("a weak password is refused with its field", async () => {
  const token = await invite("nils@example.com");
  const body = { ...accept, password: "short" };
  const problem = await nobody.isRefused("invitations.accept", { path: { token }, body });
  expect(problem.problems).toEqual([{ at: "/password", reason: "at least 12 characters" }]);
});

test("where a link leads is the service's own matter, whatever the request says of its host and origin", async () => {
  const forged = "https://evil.example";
  const { port } = new URL(service().url);
  const body = { email: "nils@example.com", organization: delia.organization, role: "member" };
  const forgeries: Record<string, string>[] = [
    { "x-forwarded-host": "evil.example", forwarded: "host=evil.example" },
    { host: "evil.example", origin: forged, "sec-fetch-site": "same-origin" },
    { host: `evil.example:${port}`, origin: `http://evil.example:${port}` },
  ];
  for (const headers of forgeries) await delia.ask("invitations.create", { body, headers });
  const mails = await query<{ body: string }>(service().databaseUrl, "SELECT body FROM mail");
  expect(mails).toHaveLength(1);
  for (const { body: text } of mails) expect(text).toContain(`\n${service().url}/invitation/`);
});
