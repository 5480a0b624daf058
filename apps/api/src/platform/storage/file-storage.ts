import { randomUUID } from "node:crypto";
import { mkdir, open, readdir, readFile, rename, rm, stat } from "node:fs/promises";
import { dirname, join } from "node:path";
import { checkKey, Storage } from "./storage.ts";

const isAbsent = (error: unknown): boolean =>
  error instanceof Error && "code" in error && error.code === "ENOENT";

/** Where what is being written lies until it is whole; no key begins with a dot. */
const unfinished = ".unfinished";

const toTheEnd = async (place: string, bytes: Uint8Array): Promise<void> => {
  const file = await open(place, "wx", 0o600);
  try {
    await file.writeFile(bytes);
    await file.sync();
  } finally {
    await file.close();
  }
};

/** Files in a folder of this machine. */
export class FileStorage extends Storage {
  private readonly folder: string;
  constructor(folder: string) {
    super();
    this.folder = folder;
  }

  /** Written beside its place, made to last, and moved there: whoever is killed in between leaves nothing half-written. */
  override async put(key: string, bytes: Uint8Array): Promise<void> {
    const place = this.placeOf(key);
    const beside = join(this.folder, unfinished, randomUUID());
    for (const each of [beside, place]) await mkdir(dirname(each), { recursive: true, mode: 0o700 });
    try {
      await toTheEnd(beside, bytes);
      await rename(beside, place);
    } catch (error) {
      await rm(beside, { force: true });
      throw error;
    }
  }

  override async read(key: string): Promise<Buffer | null> {
    try {
      return await readFile(this.placeOf(key));
    } catch (error) {
      if (isAbsent(error)) return null;
      throw error;
    }
  }

  override async remove(key: string): Promise<void> {
    await rm(this.placeOf(key), { force: true });
  }

  override async clearUnfinished(before: Date): Promise<number> {
    let cleared = 0;
    for (const name of await this.unfinishedNames()) {
      const place = join(this.folder, unfinished, name);
      const found = await stat(place).catch(() => null);
      if (found === null || found.mtime >= before) continue;
      await rm(place, { force: true });
      cleared += 1;
    }
    return cleared;
  }

  private async unfinishedNames(): Promise<readonly string[]> {
    try {
      return await readdir(join(this.folder, unfinished));
    } catch (error) {
      if (isAbsent(error)) return [];
      throw error;
    }
  }

  private placeOf(key: string): string {
    return join(this.folder, ...checkKey(key).split("/"));
  }
}
