import { useQuery } from "@tanstack/react-query";
import { comparisonDocumentQuery } from "../../../entities/comparison/queries";
import { PlacePictures } from "../../../entities/evidence/PlacePictures";
import { useCompared, usePicturesOfBoth } from "../../../entities/evidence/sides";

/** What both sides show of a matter's lines. Where the lines are is asked for only once there is a picture of anything. */
export const MatterPictures = ({ entries }: { readonly entries: readonly number[] }) => {
  const compared = useCompared();
  const isWorth = usePicturesOfBoth().length > 0 && compared !== null;
  const document = useQuery({
    ...comparisonDocumentQuery(compared?.comparison ?? ""),
    enabled: isWorth,
  });
  if (!isWorth || document.data === undefined) return null;
  const all = document.data.entries;
  return <PlacePictures places={entries.flatMap((at) => all[at] ?? [])} />;
};
