import { expect, test } from "vitest";
import {
  billOfMaterials,
  noticesOf,
  noticesText,
  packageFolder,
  productionFolders,
} from "../../apps/web/notices.ts";

const notices = noticesOf(productionFolders());

/** Licenses that ask for no more than that they are kept beside what they cover. */
const suits =
  /^\(?(MIT|ISC|0BSD|BSD-[23]-Clause|Apache-2\.0|BlueOak-1\.0\.0|Python-2\.0|OFL-1\.1|CC0-1\.0)\b/;

/** The library under sharp is a file of its own, loaded as it is and replaceable by another (LGPL-3.0, 4.d.1). */
const loadedAsItIs = /^@img\/sharp-libvips-/;

test("every package of a production install has a license that suits", () => {
  expect(notices.length).toBeGreaterThan(100);
  expect(
    notices
      .filter(({ name, license }) => !suits.test(license) && !loadedAsItIs.test(name))
      .map(({ name, license }) => [name, license]),
  ).toEqual([]);
});

test("its text is kept, but where the package holds none, and then it is said", () => {
  const without = notices.filter(({ text }) => text === "");
  const names = without.map(({ name }) => name);
  // The same part for each platform, of which a machine holds its own.
  expect(names.filter((name) => !/-(linux|darwin|win32)-/.test(name))).toEqual([
    "@prisma/schema-engine-wasm",
    "@redis/client",
    "@tokenizer/token",
    "@tus/utils",
    "abstract-logging",
    "brotli",
    "dfa",
    "fontkit",
    "pg-types",
    "pgpass",
    "saxes",
  ]);
  const text = noticesText(notices);
  for (const { name, version, license } of notices) expect(text).toContain(`${name} ${version} (${license})`);
  expect(text.match(/holds no text of its license/g)).toHaveLength(without.length);
});

test("no tool of the house is installed in production", () => {
  const names = new Set(notices.map(({ name }) => name));
  for (const tool of ["prisma", "vite", "react", "typescript", "vitest", "playwright-core"])
    expect(names).not.toContain(tool);
  for (const part of ["fastify", "pg", "@prisma/client", "zod"]) expect(names).toContain(part);
});

test.each([
  ["/app/node_modules/react/index.js", "/app/node_modules/react"],
  ["/app/node_modules/@scope/part/dist/index.js", "/app/node_modules/@scope/part"],
  ["/app/node_modules/a/node_modules/b/index.js?used", "/app/node_modules/a/node_modules/b"],
  ["C:\\app\\node_modules\\react\\index.js", "C:/app/node_modules/react"],
  ["/app/apps/web/src/main.tsx", undefined],
  ["vite/preload-helper.js", undefined],
])("the package of the module %s", (module, folder) => {
  expect(packageFolder(module)).toBe(folder);
});

const noticed = (name: string, text: string, makers = "") => ({
  name,
  version: "1",
  license: "MIT",
  text,
  makers,
});

test("packages of the same text stand together, and another text apart", () => {
  const text = noticesText([
    noticed("a", "one"),
    noticed("b", "two"),
    noticed("c", "one"),
    noticed("d", "", "Dee"),
    noticed("e", ""),
  ]);
  expect(text).toContain("a 1 (MIT)\nc 1 (MIT)\n\none\n");
  expect(text).toContain("b 1 (MIT)\n\ntwo\n");
  expect(text).toContain("d 1 (MIT)\n\nThe package holds no text of its license, MIT. Its makers: Dee.\n");
  expect(text).toContain("e 1 (MIT)\n\nThe package holds no text of its license, MIT.\n");
});

test("the list for other programs names each with address and license", () => {
  const { bomFormat, components } = billOfMaterials([
    { name: "@a/b", version: "1.2.3", license: "MIT", text: "", makers: "Bee" },
    { name: "c", version: "2.0.0", license: "(MIT OR Apache-2.0)", text: "", makers: "" },
  ]);
  expect(bomFormat).toBe("CycloneDX");
  expect(components).toMatchObject([
    { purl: "pkg:npm/%40a/b@1.2.3", licenses: [{ license: { id: "MIT" } }], author: "Bee" },
    { purl: "pkg:npm/c@2.0.0", licenses: [{ expression: "(MIT OR Apache-2.0)" }] },
  ]);
  expect(new Set(components.map((each) => each["bom-ref"])).size).toBe(components.length);
});
