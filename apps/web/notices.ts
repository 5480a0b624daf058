import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Plugin } from "vite";

/** A package somebody else made, with what its makers ask to be kept beside it. */
export type PackageNotice = {
  readonly name: string;
  readonly version: string;
  /** SPDX, as its manifest says. */
  readonly license: string;
  /** License and notice files, word for word; empty where the package holds none. */
  readonly text: string;
  readonly makers: string;
};

const root = join(import.meta.dirname, "..", "..");

type Manifest = {
  readonly name?: string;
  readonly version?: string;
  readonly license?: string;
  readonly author?: string | { readonly name?: string };
};

/** A package that names no license in its manifest may still hold one. */
const licenseOfText = (text: string): string => (text.startsWith("MIT License") ? "MIT" : "");

/** What the package in a folder says of itself. */
const noticeOf = (folder: string): PackageNotice => {
  const manifest: Manifest = JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));
  const { name = "", version = "", license = "", author = "" } = manifest;
  const texts = readdirSync(folder)
    .filter((file) => /^(licen[cs]e|copying|notice)([._-].*)?$/i.test(file))
    .sort()
    .map((file) => readFileSync(join(folder, file), "utf8").trim());
  const makers = typeof author === "string" ? author : (author.name ?? "");
  const text = texts.join("\n\n");
  return { name, version, license: license || licenseOfText(text), text, makers };
};

type Lockfile = {
  readonly packages: Readonly<
    Record<string, { readonly dev?: boolean; readonly devOptional?: boolean; readonly link?: boolean }>
  >;
};

/** Folders of the packages that a production install holds on this machine, by the lockfile. */
export const productionFolders = (): string[] => {
  const { packages }: Lockfile = JSON.parse(readFileSync(join(root, "package-lock.json"), "utf8"));
  return Object.entries(packages)
    .filter(([path, { dev, devOptional, link }]) => {
      const ours = !path.includes("node_modules/") || link === true;
      return !ours && dev !== true && devOptional !== true && existsSync(join(root, path, "package.json"));
    })
    .map(([path]) => join(root, path));
};

/**
 * The folder of the package a module belongs to; `undefined` for our own.
 *
 * @example packageFolder("/app/node_modules/@scope/part/dist/index.js") // "/app/node_modules/@scope/part"
 */
export const packageFolder = (module: string): string | undefined =>
  /^.*\/node_modules\/(?:@[^/]+\/)?[^/@.][^/]*(?=\/)/.exec(module.replaceAll("\\", "/"))?.[0];

/** Notices of packages in folders, each package once, in the order of their names. */
export const noticesOf = (folders: Iterable<string>): PackageNotice[] => {
  const byName = new Map(
    [...new Set(folders)].map(noticeOf).map((notice) => [`${notice.name} ${notice.version}`, notice]),
  );
  return [...byName].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, notice]) => notice);
};

const head = `Evenhand is built from the work of others. What follows names every package that is part of the web application or of
the service as it is installed, with its license, word for word as its makers give it. Packages of one text stand together.
`;

/** The file itself: packages of the same text together. */
export const noticesText = (notices: readonly PackageNotice[]): string => {
  const byText = Map.groupBy(notices, ({ text, license, name }) => text || `${license} ${name}`);
  const parts = [...byText.values()].map((group) => {
    const names = group.map(({ name, version, license }) => `${name} ${version} (${license})`).join("\n");
    const [{ text, license, makers } = { text: "", license: "", makers: "" }] = group;
    const by = makers === "" ? "" : ` Its makers: ${makers}.`;
    return `${names}\n\n${text || `The package holds no text of its license, ${license}.${by}`}\n`;
  });
  return [head, ...parts].join(`\n${"-".repeat(78)}\n\n`);
};

const component = ({ name, version, license, makers }: PackageNotice) => ({
  type: "library",
  "bom-ref": `${name}@${version}`,
  name,
  version,
  ...(makers === "" ? {} : { author: makers }),
  licenses: [/[ (]/.test(license) ? { expression: license } : { license: { id: license } }],
  purl: `pkg:npm/${name.replace("@", "%40")}@${version}`,
});

/** The same packages as a list other programs read: CycloneDX 1.5, JSON. */
export const billOfMaterials = (all: readonly PackageNotice[]) => ({
  $schema: "http://cyclonedx.org/schema/bom-1.5.schema.json",
  bomFormat: "CycloneDX",
  specVersion: "1.5",
  version: 1,
  metadata: { component: { type: "application", name: "evenhand", "bom-ref": "evenhand" } },
  components: all.map(component),
});

/**
 * Writes `notices.txt` into the site, and `bom.cdx.json` beside it, where nobody is handed it: of everything bundled, styles and
 * fonts too, and of what the service runs with.
 */
export const notices = (): Plugin => {
  let all: PackageNotice[] = [];
  return {
    name: "notices",
    apply: "build",
    generateBundle() {
      const bundled = [...this.getModuleIds()].flatMap(
        (module) => packageFolder(module.replaceAll("\0", "")) ?? [],
      );
      all = noticesOf(
        [...bundled, ...productionFolders()].filter((folder) => existsSync(join(folder, "package.json"))),
      );
      this.emitFile({ type: "asset", fileName: "notices.txt", source: noticesText(all) });
    },
    writeBundle({ dir = "" }) {
      writeFileSync(join(dir, "..", "bom.cdx.json"), `${JSON.stringify(billOfMaterials(all), null, 1)}\n`);
    },
  };
};
