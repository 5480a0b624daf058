import { z } from "zod";
import { Release, type ReleasedMatter } from "@evenhand/shared/http/releases";
import type { Transaction } from "../../platform/database/database.ts";
import { mattersReleased } from "../comparisons/index.ts";

const Snapshot = Release.pick({ entry: true, a: true, b: true });
const Stored = z.array(z.object({ id: z.string(), snapshot: Snapshot, matter: Release.shape.matter }));

const isSame = (now: ReleasedMatter, before: ReleasedMatter | null): boolean =>
  now.id === before?.id &&
  now.headline === before.headline &&
  now.severity === before.severity &&
  now.found === before.found;

/**
 * Says of everything laid before the dealer from this comparison which matter it belongs to. Called whenever more is laid, with the
 * comparison locked: what is laid together is worded together, and nothing else is read.
 */
export async function nameMatters(tx: Transaction, comparison: string): Promise<void> {
  const rows = await tx.release.findMany({
    where: { atComparisonId: comparison },
    select: { id: true, snapshot: true, matter: true },
    orderBy: { id: "asc" },
  });
  const released = Stored.parse(rows);
  const named = mattersReleased(released.map(({ snapshot }) => snapshot));
  for (const [at, { id, matter }] of released.entries()) {
    const now = named[at] ?? null;
    if (now === null || isSame(now, matter)) continue;
    await tx.release.update({ where: { id }, data: { matter: now }, select: { id: true } });
  }
}
