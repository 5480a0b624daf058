import { expect, test } from "vitest";
import { Person } from "./setup/person.ts";
import { useService } from "./setup/service.ts";
import { emailOf, makePerson, password } from "./setup/world.ts";

const service = useService({ environment: { PUBLIC_URL: "https://evenhand.example" } });

test("over HTTPS the cookie is bound to this host and to the secure channel", async () => {
  await makePerson(service(), "dealer", "Delia");
  const body = { email: emailOf("Delia"), password };
  const answer = await new Person(service().url).ask("sessions.create", { body });
  expect([answer.headers["set-cookie"]].flat()[0]).toMatch(
    /^__Host-evenhand=[\w-]{43}; Max-Age=2592000; Path=\/; HttpOnly; Secure; SameSite=Lax$/,
  );
  expect(answer.headers["strict-transport-security"]).toBe("max-age=31536000");
});

test("pages of the public address may change things, of another they may not", async () => {
  await makePerson(service(), "dealer", "Delia");
  const body = { email: emailOf("Delia"), password };
  const from = (origin: string) =>
    new Person(service().url).ask("sessions.create", { body, headers: { origin } });
  expect((await from("https://evenhand.example")).status).toBe(201);
  expect((await from("https://evenhand.example.org")).status).toBe(403);
});
