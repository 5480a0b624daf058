import { useEffect, useState } from "react";
import { type KeptReading, store } from "../../offline/store";
import { readChosen } from "./read-chosen";

const none: KeptReading["deeds"] = new Map();

/** One reading of a report, and how often another took its place. */
interface Held {
  readonly kept: KeptReading;
  readonly nth: number;
}

/**
 * One reading at a time, kept on this device as far as it was gone through, so that who opens the page again goes on; another file takes
 * its place. What was accepted stands in the draft, whether or not the device keeps this.
 */
export const useReading = (report: string) => {
  const [held, setHeld] = useState<Held>();
  const [address, setAddress] = useState("");
  const [error, setError] = useState<unknown>(null);
  const [reading, setReading] = useState(false);
  useEffect(() => {
    let open = true;
    const show = (kept: KeptReading | undefined): void => {
      if (kept === undefined || !open) return;
      setHeld((now) => now ?? { kept, nth: 0 });
      setAddress((now) => (now === "" ? kept.address : now));
    };
    // A device that keeps nothing begins anew.
    store.readings.get(report).then(show, () => {});
    return () => {
      open = false;
    };
  }, [report]);
  const change = (more: Partial<Pick<KeptReading, "address" | "deeds">>): void => {
    void store.readings.update(report, more).catch(() => 0);
  };
  const read = async (file: File): Promise<void> => {
    setReading(true);
    setError(null);
    try {
      const kept = { report, name: file.name, read: await readChosen(report, file), address, deeds: none };
      setHeld((before) => ({ kept, nth: (before?.nth ?? 0) + 1 }));
      await store.readings.put(kept).catch(() => "");
    } catch (failure) {
      setError(failure);
    } finally {
      setReading(false);
    }
  };
  return {
    held,
    address,
    error,
    reading,
    read,
    watchAt: (next: string): void => {
      setAddress(next);
      change({ address: next });
    },
    keepDeeds: (deeds: KeptReading["deeds"]): void => change({ deeds }),
  };
};
