import { randomUUID } from "node:crypto";
import { mkdir, open, readFile, rename, rm } from "node:fs/promises";
import { dirname, join } from "node:path";
import { checkKey, Storage } from "./storage.ts";

const isAbsent = (error: unknown): boolean =>
  error instanceof Error && "code" in error && error.code === "ENOENT";

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
    await mkdir(dirname(place), { recursive: true, mode: 0o700 });
    const beside = `${place}.${randomUUID()}`;
    try {
      const file = await open(beside, "wx", 0o600);
      try {
        await file.writeFile(bytes);
        await file.sync();
      } finally {
        await file.close();
      }
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

  private placeOf(key: string): string {
    return join(this.folder, ...checkKey(key).split("/"));
  }
}
