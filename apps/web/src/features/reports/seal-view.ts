import { sealBlocks, type SealBlock, type Standing } from "../../offline/save-state";
import type { KeptFinding } from "../../offline/store";
import { placeKey, type Place } from "../../entities/sheet/places";

type Findings = ReadonlyMap<string, KeptFinding>;

/** Places of which something is left to the person before the seal. */
export interface HeldPlaces {
  readonly what: "lost" | "conflicts" | "refused" | "unread";
  readonly places: readonly Place[];
}

const holds: Readonly<Record<HeldPlaces["what"], (kept: KeptFinding) => boolean>> = {
  lost: ({ state }) => state === "lost",
  conflicts: ({ state }) => state === "conflict",
  refused: ({ state }) => state === "refused",
  unread: ({ unread }) => unread !== undefined,
};

export interface SealView {
  readonly answered: number;
  readonly all: number;
  readonly blocks: readonly SealBlock[];
  readonly held: readonly HeldPlaces[];
  /** Lines that want an answer and have none: the seal may do without. */
  readonly open: readonly Place[];
}

/**
 * What stands between the draft and its seal.
 *
 * @param allAsked every line is asked; else those are that stand on every sheet
 */
export const sealView = (
  places: readonly Place[],
  findings: Findings,
  standing: Standing,
  allAsked: boolean,
): SealView => {
  const isAnswered = ({ key }: Place): boolean => !!findings.get(key)?.finding;
  const answered = places.filter(isAnswered).length;
  const whereHeld = (is: (kept: KeptFinding) => boolean): readonly Place[] =>
    places.filter(({ key }) => {
      const kept = findings.get(key);
      return kept !== undefined && is(kept);
    });
  return {
    answered,
    all: places.length,
    blocks: sealBlocks(standing, answered),
    held: (["lost", "conflicts", "refused", "unread"] as const)
      .map((what) => ({ what, places: whereHeld(holds[what]) }))
      .filter((one) => one.places.length > 0),
    open: places.filter((place) => (allAsked || place.item.core) && !isAnswered(place)),
  };
};

/** The places a refusal of the seal names. */
export const faultyPlaces = (
  places: readonly Place[],
  problems: readonly { readonly item?: string | undefined; readonly position?: string | undefined }[],
): readonly Place[] => {
  const named = new Set(
    problems.flatMap(({ item, position }) => (item === undefined ? [] : [placeKey(item, position ?? "")])),
  );
  return places.filter(({ key }) => named.has(key));
};
