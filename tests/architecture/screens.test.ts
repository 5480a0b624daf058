import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { mailedPages } from "@evenhand/shared/mailed-pages";

const root = new URL("../../", import.meta.url);
const textOf = (path: string): string => readFileSync(new URL(path, root), "utf8");

/** Addresses of the router that show a page; one without leads on to another. */
const pages = [...textOf("apps/web/src/shell/router.tsx").matchAll(/= createRoute\(\{\n[\s\S]*?\n\}\);/g)]
  .map(([route]) => route)
  .filter((route) => route.includes("component: "))
  .flatMap((route) => {
    const [, written, mailed] = /^ {2}path: (?:"(.*)"|mailedPages\.(\w+)),$/m.exec(route) ?? [];
    const found = Object.entries(mailedPages).find(([name]) => name === mailed);
    return written ?? found?.[1] ?? [];
  });

/** Every browser test that has axe look, and what lists screens for one: by what it opens. */
const opened = ["tests/browser/", "tests/browser/at-length/", "tests/browser/setup/"]
  .flatMap((folder) => readdirSync(new URL(folder, root)).map((name) => folder + name))
  .filter((path) => path.endsWith(".ts"))
  .map(textOf)
  .filter((text) => /violations(?:On|InLooks)\(|holds\(|Screen\b/.test(text))
  .flatMap((text) => [...text.matchAll(/["`](\/[^"`\n]*)["`]/g)].map(([, address]) => address ?? ""))
  .map((address) => address.replaceAll(/\$\{[^}]*\}/g, "any").replace(/\?.*/, ""));

/** Pages that such a test comes to by a press or a letter, and under what name it looks at them. */
const cameTo: Readonly<Record<string, readonly [test: string, name: string]>> = {
  [mailedPages.invitation]: ["at-length/getting-back", "invitation"],
  "/shared/$token": ["at-length/publishing", "shared"],
  "/questions/$question": ["at-length/publishing", "question-answered"],
  "/complaints/$complaint": ["at-length/publishing", "complaint-answered"],
};

const isOpened = (page: string): boolean => {
  const address = new RegExp(`^${page.replaceAll(/\$\w+/g, "[^/]+")}$`);
  return opened.some((one) => address.test(one));
};

test("every page of the router is looked at by axe and on a phone in a browser test", () => {
  expect(pages.length).toBeGreaterThan(40);
  expect(pages.filter((page) => !isOpened(page) && cameTo[page] === undefined)).toEqual([]);
});

test.each(Object.entries(cameTo))("%s is come to in a browser test", (page, [name, look]) => {
  expect(pages).toContain(page);
  expect(isOpened(page)).toBe(false);
  expect(textOf(`tests/browser/${name}.test.ts`)).toContain(`"${look}"`);
});
