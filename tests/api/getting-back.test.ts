import { beforeEach, describe, expect, test } from "vitest";
import { InvitationsService } from "../../apps/api/src/capabilities/accounts/index.ts";
import { query } from "./setup/database.ts";
import { letterTo, linkIn } from "./setup/letters.ts";
import { Person } from "./setup/person.ts";
import { withSession } from "./setup/scene.ts";
import { useService } from "./setup/service.ts";
import { publish } from "./setup/story.ts";
import { emailOf, joinPerson, makePerson, password } from "./setup/world.ts";

const service = useService({ environment: { JOBS: "on" } });
const next = "a new and longer password";
let email = "";
let delia: Person;
let nobody: Person;
let tests = 0;
beforeEach(async () => {
  // A name of its own for each test, since the letters of all of them lie in one folder.
  tests += 1;
  email = emailOf(`Delia ${tests}`);
  delia = await makePerson(service(), "dealer", `Delia ${tests}`);
  nobody = new Person(service().url);
});

const signIn = async (given: string, as = email): Promise<number> =>
  (await nobody.ask("sessions.create", { body: { email: as, password: given } })).status;
const rows = (text: string) => query(service().databaseUrl, text);

/** Asks for a letter, and gives the token of its link. */
async function mailedToken(): Promise<string> {
  await nobody.does("passwordResets.request", { body: { email: email.toUpperCase() } });
  const link = linkIn(await letterTo(service().mailFolder, email, /new-password/));
  expect(link.startsWith(`${service().url}/new-password/`)).toBe(true);
  return new URL(link).pathname.split("/").at(-1) ?? "";
}

const askLetter = (as: string) => nobody.ask("passwordResets.request", { body: { email: as } });

const pathOf = ({ organization, account }: Person) => ({ id: organization, account });

const invite = (address: string) =>
  delia.ask("invitations.create", {
    body: { email: address, organization: delia.organization, role: "member" },
  });

const list = async () => (await delia.does("invitations.list", { path: { id: delia.organization } })).items;

const close = (person: Person) => person.ask("account.close", { body: { password } });

describe("a password is changed", () => {
  test("by the one that holds, and every other session and token ends", async () => {
    const { person: phone } = await withSession(service(), delia);
    const expires = new Date(Date.now() + 86_400_000).toISOString();
    const { token } = await delia.does("tokens.create", { body: { name: "a", scopes: ["read"], expires } });
    await phone.does("account.get");
    await delia.does("account.changePassword", { body: { current: password, next } });
    expect((await phone.ask("account.get")).status).toBe(401);
    expect((await new Person(service().url, { token }).ask("account.get")).status).toBe(401);
    expect((await delia.ask("account.get")).status).toBe(200);
    expect([await signIn(password), await signIn(next)]).toEqual([401, 201]);
    expect(await letterTo(service().mailFolder, email, /was changed/)).not.toContain(next);
  });

  test("not by another, which is counted as a guess is", async () => {
    const body = { current: "a guess of some length", next };
    for (let index = 0; index < 8; index += 1) {
      const refused = await delia.isRefused("account.changePassword", { body });
      expect(refused.problems).toEqual([{ at: "/current", reason: "the password you sign in with" }]);
    }
    expect((await delia.isRefused("account.changePassword", { body })).code).toBe("too-many-attempts");
    await rows("DELETE FROM throttle");
    expect(await signIn(password)).toBe(201);
  });
});

describe("a password that is forgotten", () => {
  test("is chosen anew by the link in the letter, once, and every session ends", async () => {
    const path = { token: await mailedToken() };
    expect(await nobody.does("passwordResets.get", { path })).toMatchObject({ email });
    await nobody.does("passwordResets.use", { path, body: { password: next } });
    expect((await delia.ask("account.get")).status).toBe(401);
    expect([await signIn(password), await signIn(next)]).toEqual([401, 201]);
    const again = await nobody.isRefused("passwordResets.use", { path, body: { password } });
    expect([again.code, again.status]).toEqual(["password-link-spent", 410]);
  });

  test("of two that use the link at once, one is told that it was used", async () => {
    const path = { token: await mailedToken() };
    const use = () => nobody.ask("passwordResets.use", { path, body: { password: next } });
    const statuses = (await Promise.all([use(), use()])).map(({ status }) => status);
    expect(statuses.toSorted((a, b) => a - b)).toEqual([204, 410]);
  });

  test("lets its owner in however much others guess", async () => {
    for (let index = 0; index < 9; index += 1) await signIn("a stranger's guess");
    expect(await signIn(password)).toBe(429);
    await nobody.does("passwordResets.use", {
      path: { token: await mailedToken() },
      body: { password: next },
    });
    await rows("DELETE FROM throttle");
    expect(await signIn(next)).toBe(201);
  });

  test("is asked for in the same words whether the address has an account or not", async () => {
    const [known, unknown] = [await askLetter(email), await askLetter("nobody@example.com")];
    expect([unknown.status, unknown.text]).toEqual([known.status, known.text]);
    await letterTo(service().mailFolder, email, /new-password/);
    expect(await rows("SELECT 1 FROM mail WHERE recipient = 'nobody@example.com'")).toEqual([]);
  });

  test("is sent few letters about, however often it is asked for", { timeout: 180_000 }, async () => {
    for (let index = 0; index < 20; index += 1)
      await nobody.does("passwordResets.request", { body: { email } });
    const refused = await nobody.isRefused("passwordResets.request", { body: { email } });
    expect(refused.code).toBe("too-many-attempts");
    const waiting = async () =>
      (await rows("SELECT 1 FROM pgboss.job WHERE name = 'password-reset' AND state < 'completed'")).length;
    while ((await waiting()) > 0) await new Promise((resolve) => void setTimeout(resolve, 100));
    expect(await rows("SELECT 1 FROM mail")).toHaveLength(3);
  });
});

test("all sessions are ended at once, this one too", async () => {
  const { person: phone } = await withSession(service(), delia);
  await phone.does("account.get");
  await delia.does("sessions.endAll");
  expect([(await phone.ask("account.get")).status, (await delia.ask("account.get")).status]).toEqual([
    401, 401,
  ]);
});

describe("members", () => {
  test("one who was removed sees nothing of the firm, from the next request on", async () => {
    const mona = await joinPerson(service(), delia.organization, "Mona");
    expect((await mona.does("organizations.list")).items).toHaveLength(1);
    await delia.does("members.remove", { path: pathOf(mona) });
    expect((await mona.does("organizations.list")).items).toEqual([]);
    expect((await mona.ask("organizations.members", { path: { id: delia.organization } })).status).not.toBe(
      200,
    );
  });

  test("a member removes nobody but may leave", async () => {
    const mona = await joinPerson(service(), delia.organization, "Mona");
    expect((await mona.isRefused("members.remove", { path: pathOf(delia) })).code).toBe("not-found");
    expect(
      (await mona.isRefused("members.change", { path: pathOf(mona), body: { role: "admin" } })).code,
    ).toBe("not-found");
    await mona.does("members.remove", { path: pathOf(mona) });
  });

  test("the last administrator neither leaves nor is lowered, two at once included", async () => {
    const lower = (by: Person, whom: Person) =>
      by.ask("members.change", { path: pathOf(whom), body: { role: "member" } });
    expect((await lower(delia, delia)).status).toBe(409);
    expect((await delia.isRefused("members.remove", { path: pathOf(delia) })).code).toBe(
      "last-administrator",
    );
    const mona = await joinPerson(service(), delia.organization, "Mona", "admin");
    const statuses = (await Promise.all([lower(delia, mona), lower(mona, delia)])).map(
      ({ status }) => status,
    );
    // The one who comes second is refused, or is no administrator any more and finds nothing to change.
    const [done, refused] = statuses.toSorted((a, b) => a - b);
    expect(done).toBe(204);
    expect([404, 409]).toContain(refused);
    const [{ count } = { count: "" }] = await query<{ count: string }>(
      service().databaseUrl,
      "SELECT count(*) FROM membership WHERE role = 'admin'",
    );
    expect(count).toBe("1");
  });

  test("what an administrator sent out ends when they are one no longer", async () => {
    const mona = await joinPerson(service(), delia.organization, "Mona", "admin");
    const body = { email: "second.self@example.com", organization: delia.organization, role: "admin" };
    await mona.does("invitations.create", { body });
    const link = linkIn(await letterTo(service().mailFolder, "second.self@example.com"));
    await delia.does("members.change", { path: pathOf(mona), body: { role: "member" } });
    const token = new URL(link).pathname.split("/").at(-1) ?? "";
    expect((await nobody.isRefused("invitations.get", { path: { token } })).code).toBe("invitation-spent");
  });
});

describe("open invitations", () => {
  test("are listed without their secret, and one that is revoked leads nowhere", async () => {
    await invite("nils@example.com");
    const [open] = await list();
    expect(open).toMatchObject({ email: "nils@example.com", role: "member" });
    const link = linkIn(await letterTo(service().mailFolder, "nils@example.com"));
    const token = new URL(link).pathname.split("/").at(-1) ?? "";
    expect(JSON.stringify(open)).not.toContain(token);
    await delia.does("invitations.revoke", { path: { id: open?.id ?? "" } });
    expect(await list()).toEqual([]);
    const body = { name: "Nils", password: next };
    const refused = await nobody.isRefused("invitations.accept", { path: { token }, body });
    expect(refused.code).toBe("invitation-spent");
  });

  test("one to the same address replaces the one before", async () => {
    await invite("nils@example.com");
    await invite("NILS@example.com");
    expect(await list()).toHaveLength(1);
  });

  test("an address gets no more within a day than may be, however many ask at once", async () => {
    const answers = await Promise.all(
      Array.from({ length: InvitationsService.receivedADay + 5 }, () => invite("nils@example.com")),
    );
    const done = answers.filter(({ status }) => status === 201);
    expect(done).toHaveLength(InvitationsService.receivedADay);
    expect(await rows("SELECT 1 FROM mail")).toHaveLength(InvitationsService.receivedADay);
  });

  test("an account sends no more within a day than may be", async () => {
    await query(
      service().databaseUrl,
      `INSERT INTO invitation (id, organization_id, email, role, token_hash, invited_by, created_at, expires_at)
       SELECT gen_random_uuid(), $1, n || '@example.com', 'member', sha256(n::text::bytea), $2, now(), now() + interval '1 day'
       FROM generate_series(1, $3::int) AS n`,
      [delia.organization, delia.account, InvitationsService.sentADay],
    );
    const refused = await invite("one.more@example.com");
    expect(refused.status).toBe(429);
    expect(refused.body.detail).toContain(`${InvitationsService.sentADay} invitations`);
  });
});

describe("an account is closed", () => {
  test("with its password: it signs in no more, and neither name nor address is left", async () => {
    const mona = await joinPerson(service(), delia.organization, "Mona");
    expect((await mona.isRefused("account.close", { body: { password: "a guess" } })).problems).toMatchObject(
      [{ at: "/password" }],
    );
    expect((await close(mona)).status).toBe(204);
    expect(await signIn(password, emailOf("Mona"))).toBe(401);
    expect((await mona.ask("account.get")).status).toBe(401);
    expect(JSON.stringify(await rows("SELECT * FROM account"))).not.toMatch(/mona/i);
    expect(
      (await delia.does("organizations.members", { path: { id: delia.organization } })).items,
    ).toHaveLength(1);
  });

  test("not while an organization would lose its last administrator, or has something open", async () => {
    await joinPerson(service(), delia.organization, "Mona");
    expect((await close(delia)).body.type).toMatch(/last-administrator$/);
    const opal = await makePerson(service(), "operator", "Opal");
    expect((await close(opal)).body.type).toMatch(/last-administrator$/);
    const oskar = await makePerson(service(), "dealer", "Oskar");
    await publish(oskar);
    const refused = await close(oskar);
    expect([refused.status, refused.body.open]).toEqual([409, ["listed cars"]]);
    expect((await oskar.ask("account.get")).status).toBe(200);
  });
});
