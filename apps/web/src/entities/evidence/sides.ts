import { useQuery } from "@tanstack/react-query";
import { createContext, useContext } from "react";
import type { Picture, Side } from "./pictures";
import { versionEvidenceQuery } from "./queries";

/** A comparison, and the sealed versions of both sides that it is of. */
type Compared = Readonly<Record<Side | "comparison", string>>;

const ComparedAt = createContext<Compared | null>(null);
export const ComparedProvider = ComparedAt.Provider;

/** The comparison that the page is of; `null` where it is of none. */
export const useCompared = (): Compared | null => useContext(ComparedAt);

const useSide = (side: Side): readonly Picture[] => {
  const version = useCompared()?.[side];
  const { data = [] } = useQuery({ ...versionEvidenceQuery(version ?? ""), enabled: version !== undefined });
  return data.map((one) => ({ ...one, side }));
};

/** What both sides show, as far as the person may see it. Asked for only where a line or a matter is opened. */
export const usePicturesOfBoth = (): readonly Picture[] => [
  ...useSide("statement"),
  ...useSide("inspection"),
];
