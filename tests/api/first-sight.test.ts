import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import request from "supertest";
import { afterAll, expect, test } from "vitest";
import { markupOf } from "../../apps/api/src/platform/page/blocks.ts";
import { Person } from "./setup/person.ts";
import { useService } from "./setup/service.ts";
import { inspect } from "./setup/story.ts";
import { makeWorld } from "./setup/world.ts";

const folder = mkdtempSync(join(tmpdir(), "evenhand-first-sight-"));
const shell = '<!doctype html><head><title>Evenhand</title></head><body><div id="root"></div></body>';
writeFileSync(join(folder, "index.html"), shell);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const service = useService({ environment: { SITE_FOLDER: folder } });

const pageTo = async (person: Person, address: string, accept = "text/html") => {
  const { status, text, headers } = await request(person.url)
    .get(address)
    .set({ accept, ...person.credentials });
  return { status, text, headers };
};

test("whoever may read an answer finds it in the page, ahead of the application, and nobody keeps it", async () => {
  const world = await makeWorld(service());
  const { comparison } = await inspect(world);
  const address = `/comparisons/${comparison}`;
  const { vehicle, matters } = await world.buyer.does("comparisons.answer", { path: { id: comparison } });
  const name = `${vehicle.modelYear} ${vehicle.make} ${vehicle.model}`;
  expect(matters.length).toBeGreaterThan(0);
  const { text, headers } = await pageTo(world.buyer, address);
  expect(text).toContain(`<title>${name} · Evenhand</title>`);
  expect(text).toContain(`<h1>${name}</h1>`);
  for (const { matter } of matters) expect(text).toContain(`<span class="strong">${matter.headline}</span>`);
  expect(text.indexOf('<div id="first">')).toBeLessThan(text.indexOf('<div id="root"></div>'));
  expect(headers["cache-control"]).toBe("private, no-store");
  expect(headers["content-security-policy"]).toContain("script-src 'self';");
  expect((await pageTo(world.inspector, address)).text).toContain(`<h1>${name}</h1>`);
});

test("to everybody else, of every other view and every other address it is the page as it is", async () => {
  const world = await makeWorld(service());
  const { comparison } = await inspect(world);
  const address = `/comparisons/${comparison}`;
  for (const person of [
    world.otherBuyer,
    world.otherDealer,
    world.otherInspector,
    world.operator,
    world.nobody,
  ]) {
    const { status, text, headers } = await pageTo(person, address);
    expect([status, text, headers["cache-control"]]).toEqual([200, shell, "no-cache"]);
  }
  const token = await world.buyer.does("tokens.create", {
    body: { name: "reader", scopes: ["read"], expires: new Date(Date.now() + 3_600_000).toISOString() },
  });
  const program = new Person(service().url, { token: token.token });
  for (const [person, path] of [
    [program, address],
    [world.buyer, `${address}?view=items`],
    [world.buyer, "/comparisons/01990000-0000-7000-8000-000000000001"],
    [world.buyer, "/comparisons/x'%20OR%20true"],
  ] as const)
    expect((await pageTo(person, path)).text).toBe(shell);
  const data = await pageTo(world.buyer, address, "application/json");
  expect([data.status, data.headers["content-type"]]).toEqual([
    404,
    "application/problem+json; charset=utf-8",
  ]);
});

const evil = `<script>alert("1")</script> & 'more'`;
const escaped = "&lt;script&gt;alert(&quot;1&quot;)&lt;/script&gt; &amp; &#39;more&#39;";

test("every text of every block is text, whatever it looks like", () => {
  const runs = [
    { text: evil },
    { text: evil, tone: "struck" as const },
    { text: evil, tone: "alarm" as const },
  ];
  const { text } = markupOf([
    { kind: "title", text: evil },
    { kind: "heading", text: evil },
    { kind: "text", runs },
    { kind: "item", label: evil, runs, under: runs },
    { kind: "figures", figures: [{ name: evil, value: evil, note: evil }] },
  ]);
  expect(text.split(escaped).length - 1).toBe(15);
  expect(text).not.toMatch(/<script|alert\("/);
});

test("a heading, a claim that fell and what counts most are told apart by their elements", () => {
  expect(
    markupOf([
      { kind: "heading", text: "What is wrong" },
      { kind: "text", runs: [{ text: "never welded", tone: "struck" }, { text: "(not found as stated)" }] },
      { kind: "item", label: "1", runs: [{ text: "Lien open", tone: "strong" }] },
    ]).text.replaceAll(/\s*\n\s*/g, ""),
  ).toBe(
    "<h2>What is wrong</h2><p><s>never welded</s> (not found as stated) </p>" +
      '<div class="item"><b>1</b><div><p><span class="strong">Lien open</span> </p></div></div>',
  );
});
