import { decodeText } from "../decode-text/index.ts";
import { openZip, unpack } from "../open-zip/index.ts";
import { readXml } from "../read-xml/index.ts";
import { TableRefusal } from "../refused/index.ts";
import { TABLE_LIMITS } from "../table-limits/index.ts";

/** What one part of a workbook refers to. `outside`: an address outside of the file, which is never followed. */
export type Relation = {
  readonly id: string;
  readonly kind: string;
  readonly target: string;
  readonly outside: boolean;
};

/** The parts of a workbook; each is inflated when it is asked for, out of one budget. */
export type Parts = {
  readonly names: readonly string[];
  readonly find: (name: string) => string | undefined;
  readonly get: (name: string) => string;
};

/** Parts by name, whatever its case: some programs write it as they please. */
export const partsOf = (bytes: Uint8Array): Parts => {
  const entries = openZip(bytes);
  const byName = new Map([...entries.values()].map((entry) => [entry.name.toLowerCase(), entry]));
  const budget = { left: TABLE_LIMITS.inflated };
  const find = (name: string): string | undefined => {
    const entry = byName.get(name.toLowerCase());
    return entry === undefined ? undefined : decodeText(unpack(bytes, entry, budget));
  };
  const get = (name: string): string => {
    const text = find(name);
    if (text === undefined) throw new TableRefusal({ reason: "damaged", part: name });
    return text;
  };
  return { names: [...entries.keys()], find, get };
};

/** `../comments1.xml` beside `xl/worksheets/sheet1.xml` is `xl/comments1.xml`. */
const resolve = (from: string, target: string): string => {
  if (target.startsWith("/")) return target.slice(1);
  const path = from.split("/").slice(0, -1);
  for (const step of target.split("/")) {
    if (step === "..") path.pop();
    else if (step !== "." && step !== "") path.push(step);
  }
  return path.join("/");
};

const relationsPart = (part: string): string => {
  const at = part.lastIndexOf("/") + 1;
  return `${part.slice(0, at)}_rels/${part.slice(at)}.rels`;
};

/** What a part refers to; nothing where it refers to nothing. The package itself is the part with an empty name. */
export const relationsOf = (parts: Parts, part: string): Relation[] => {
  const name = relationsPart(part);
  const text = parts.find(name);
  if (text === undefined) return [];
  const relations: Relation[] = [];
  readXml(text, name, {
    open: (element, attributes) => {
      if (element !== "Relationship") return;
      const { Id: id = "", Type: type = "", Target: target = "", TargetMode: mode } = attributes;
      const outside = mode === "External";
      const kind = type.slice(type.lastIndexOf("/") + 1);
      relations.push({ id, kind, target: outside ? target : resolve(part, target), outside });
    },
    text: () => undefined,
    close: () => undefined,
  });
  return relations;
};
