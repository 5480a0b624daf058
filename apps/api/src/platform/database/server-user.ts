import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { chmodSync, cpSync, existsSync, mkdirSync, renameSync, rmSync, statSync } from "node:fs";
import { basename, dirname, join } from "node:path";

/** Whom the server runs as; nobody else where this process is not root. */
export type ServerUser = { readonly uid: number; readonly gid: number } | Readonly<Record<string, never>>;

const isRoot = (): boolean => process.getuid?.() === 0;

const idOf = (flag: "-u" | "-g"): number =>
  Number.parseInt(execFileSync("id", [flag, "postgres"], { encoding: "utf8" }), 10);

/** PostgreSQL refuses to run as root; there it runs as the user `postgres`, made where the machine has none. */
export function serverUser(): ServerUser {
  if (!isRoot()) return {};
  try {
    return { uid: idOf("-u"), gid: idOf("-g") };
  } catch {
    execFileSync("useradd", ["--system", "--user-group", "postgres"]);
    return { uid: idOf("-u"), gid: idOf("-g") };
  }
}

const above = (path: string): string[] => (dirname(path) === path ? [path] : [...above(dirname(path)), path]);

/** Whether the server's user can enter a folder, or run a program: a checkout in root's own home is closed to everybody else. */
const isWithinReach = (path: string): boolean =>
  !isRoot() || above(path).every((each) => (statSync(each).mode & 0o001) !== 0);

/** A place of its own for each folder, owned by root and open to be entered. */
function placeWithinReach(folder: string): string {
  const place = join(
    "/var/tmp",
    `evenhand-${createHash("sha256").update(folder).digest("hex").slice(0, 16)}`,
  );
  mkdirSync(place, { recursive: true });
  if (statSync(place).uid !== 0)
    throw new Error(`${place} belongs to somebody else: remove it and start again.`);
  chmodSync(place, 0o711);
  return place;
}

/** The programs' folder, or a copy of it where the server's user cannot run what is in it. */
export function programsWithinReach(folder: string, program: string): string {
  if (isWithinReach(join(folder, program))) return folder;
  const copy = join(placeWithinReach(folder), "programs");
  if (existsSync(copy)) return copy;
  const unfinished = `${copy}.unfinished`;
  rmSync(unfinished, { recursive: true, force: true });
  cpSync(folder, unfinished, { recursive: true, verbatimSymlinks: true });
  execFileSync("chmod", ["-R", "a+rX", unfinished]);
  renameSync(unfinished, copy);
  return copy;
}

/** Where the data are kept: the folder asked for, or a place of its own where the server's user cannot enter that. */
export function dataWithinReach(folder: string): string {
  mkdirSync(dirname(folder), { recursive: true });
  return isWithinReach(dirname(folder)) ? folder : join(placeWithinReach(folder), basename(folder));
}
