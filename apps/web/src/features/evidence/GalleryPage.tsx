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
  /** Stands before the pictures. */
  readonly children?: ReactNode;
  /** What to do where there is no picture yet. */
  readonly noneYet?: string;
  /** The report whose author may draw over its pictures; absent where nobody may. */
  readonly report?: string;
}

/** A page of pictures: of a report, a car or a case. */
export const GalleryPage = ({
  of,
  over,
  pictures,
  error,
  open,
  onOpen,
  children,
  noneYet,
  report,
}: Props) => {
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
      {children}
      {pictures && <Gallery {...{ pictures, places, open, onOpen, noneYet, report }} />}
    </Page>
  );
};
