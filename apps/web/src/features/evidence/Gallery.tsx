import { useState } from "react";
import { useText } from "../../strings/text";
import { Empty, Panel } from "../../ui/Page";
import { Tabs } from "../../ui/Tabs";
import { LazyViewer } from "../../entities/evidence/LazyViewer";
import { usePictureWords } from "../../entities/evidence/picture-words";
import {
  byPlace,
  inTime,
  type AtPlace,
  type Picture,
  type PicturesAt,
} from "../../entities/evidence/pictures";
import { Thumb } from "../../entities/evidence/Thumb";
import styles from "./Gallery.module.css";

interface Props {
  readonly pictures: readonly Picture[];
  /** The places of the sheet, in its order. */
  readonly places: readonly AtPlace[];
  /** The picture shown large. */
  readonly open: string | undefined;
  readonly onOpen: (id: string | undefined) => void;
  /** What to do where there is none. */
  readonly noneYet: string | undefined;
  /** The report whose author may draw over its pictures. */
  readonly report: string | undefined;
}

const orders = ["place", "time"] as const;
type Order = (typeof orders)[number];

const Pictures = ({ pictures, onOpen }: Pick<Props, "pictures" | "onOpen">) => (
  <ul className={styles.pictures}>
    {pictures.map((one) => (
      <li key={one.id}>
        <Thumb picture={one} onOpen={onOpen} />
        {one.caption !== null && <p className={styles.caption}>{one.caption}</p>}
      </li>
    ))}
  </ul>
);

const ByPlace = ({ groups, onOpen }: Pick<Props, "onOpen"> & { readonly groups: readonly PicturesAt[] }) => {
  const words = usePictureWords();
  return groups.map(({ item, position, pictures: here }) => (
    <section key={`${item}@${position}`} className={styles.place}>
      <h2>{words.place({ item, position })}</h2>
      <Pictures pictures={here} onOpen={onOpen} />
    </section>
  ));
};

/** One of them large; its author may draw over it. */
const Large = ({
  pictures,
  open,
  onOpen,
  report,
}: Pick<Props, "pictures" | "onOpen" | "report"> & { readonly open: string }) => (
  <LazyViewer
    pictures={pictures}
    at={open}
    onGo={onOpen}
    onClose={() => onOpen(undefined)}
    {...(report === undefined ? {} : { report })}
  />
);

/** All the pictures of a report or a car: by place on the car, or as they were taken; one large, with what lies beside it. */
export const Gallery = ({ pictures, places, open, onOpen, noneYet, report }: Props) => {
  const t = useText();
  const [order, setOrder] = useState<Order>("place");
  if (pictures.length === 0)
    return <Empty title={t("gallery.none")}>{noneYet ?? t("gallery.none.hint")}</Empty>;
  const groups = order === "place" ? byPlace(pictures, places) : null;
  // In the order one goes through them, as they stand on the page.
  const all = groups?.flatMap(({ pictures: here }) => here) ?? pictures.toSorted(inTime);
  return (
    <Panel>
      <Tabs
        label={t("gallery.order")}
        value={order}
        tabs={orders.map((value) => ({ value, label: t(`gallery.order.${value}`) }))}
        onChange={setOrder}
      >
        <div className={styles.gallery} data-pictures>
          <p className="only-read">{t("gallery.keys")}</p>
          {groups ? <ByPlace groups={groups} onOpen={onOpen} /> : <Pictures pictures={all} onOpen={onOpen} />}
        </div>
      </Tabs>
      {open !== undefined && <Large {...{ pictures: all, open, onOpen, report }} />}
    </Panel>
  );
};
