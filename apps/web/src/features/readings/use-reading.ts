import { useEffect, useState } from "react";
import { type KeptReading, store } from "../../offline/store";
import { readChosen } from "./read-chosen";

const none: KeptReading["deeds"] = new Map();

/** One reading of a report, and how often another took its place. */
interface Held {
  readonly kept: KeptReading;
  readonly nth: number;
}

/** Where the recording can be watched, and what else changes of a reading as it is gone through. */
const keepOf = (report: string) => (more: Partial<Pick<KeptReading, "address" | "deeds">>) => {
  void store.readings.update(report, more).catch(() => 0);
};

/** What is held of a reading: what this device kept, until another file is read. */
const useHeldHere = (report: string) => {
  const [held, setHeld] = useState<Held>();
  const [address, setAddress] = useState("");
  useEffect(() => {
    let open = true;
    const show = async (): Promise<void> => {
      // A device that keeps nothing begins anew.
      const kept = await store.readings.get(report).catch(() => undefined);
      if (kept === undefined || !open) return;
      setHeld((now) => now ?? { kept, nth: 0 });
      setAddress((now) => (now === "" ? kept.address : now));
    };
    void show();
    return () => {
      open = false;
    };
  }, [report]);
  return { held, setHeld, address, setAddress };
};

/** The reading gone through, as this device keeps it, and where its recording can be watched. */
const useHeld = (report: string) => {
  const { held, setHeld, address, setAddress } = useHeldHere(report);
  const keep = keepOf(report);
  const watchAt = (next: string): void => {
    setAddress(next);
    keep({ address: next });
  };
  const take = async (name: string, read: KeptReading["read"]): Promise<void> => {
    const kept = { report, name, read, address, deeds: none };
    setHeld((before) => ({ kept, nth: (before?.nth ?? 0) + 1 }));
    await store.readings.put(kept).catch(() => "");
  };
  return { held, address, watchAt, take, keepDeeds: (deeds: KeptReading["deeds"]) => keep({ deeds }) };
};

/**
 * One reading at a time, kept on this device as far as it was gone through, so that who opens the page again goes on; another file takes
 * its place. What was accepted stands in the draft, whether or not the device keeps this.
 */
export const useReading = (report: string) => {
  const { take, ...held } = useHeld(report);
  const [error, setError] = useState<unknown>(null);
  const [reading, setReading] = useState(false);
  const read = async (file: File): Promise<void> => {
    setReading(true);
    setError(null);
    try {
      await take(file.name, await readChosen(report, file));
    } catch (failure) {
      setError(failure);
    } finally {
      setReading(false);
    }
  };
  return { ...held, error, reading, read };
};
