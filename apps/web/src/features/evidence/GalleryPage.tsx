import type { ReactNode } from "react";
import { useText } from "../../strings/text";
import { Loading } from "../../ui/Loading";
import { Page } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import type { Picture } from "../../entities/evidence/pictures";
import { Gallery } from "./Gallery";
import { useSheetPlaces } from "./use-sheet-places";

interface Props {
  /** Whose pictures they are; absent until it is known. */
  readonly of: string | undefined;
  /** Back to what they belong to. */
  readonly over: ReactNode;
  readonly pictures: readonly Picture[] | undefined;
  readonly error: unknown;
  readonly open: string | undefined;
  readonly onOpen: (id: string | undefined) => void;
}

/** A page of pictures: of a report, a car or a case. */
export const GalleryPage = ({ of, over, pictures, error, open, onOpen }: Props) => {
  const t = useText();
  const places = useSheetPlaces();
  if (error === null && pictures === undefined) return <Loading />;
  return (
    <Page
      title={of === undefined ? t("gallery.title.bare") : t("gallery.title", { of })}
      over={over}
      under={pictures && t("gallery.under", { count: pictures.length })}
    >
      {error !== null && <ProblemNotice error={error} />}
      {pictures && <Gallery pictures={pictures} places={places} open={open} onOpen={onOpen} />}
    </Page>
  );
};
