import { Button } from "@mantine/core";
import { IconColumns2 } from "@tabler/icons-react";
import { useState } from "react";
import { useText } from "../../strings/text";
import { LazyViewer } from "./LazyViewer";
import { besideOf, isAt, isShown, type AtPlace, type Picture, type Side } from "./pictures";
import styles from "./PlacePictures.module.css";
import { usePicturesOfBoth } from "./sides";
import { Thumb } from "./Thumb";

/** As many of each side are shown small; the rest is behind them. */
const FEW = 3;

const ofSide = (pictures: readonly Picture[], side: Side): readonly Picture[] =>
  pictures.filter((one) => one.side === side);

interface RowProps {
  readonly pictures: readonly Picture[];
  readonly onOpen: (id: string) => void;
}

const Row = ({ pictures, onOpen }: RowProps) => (
  <ul className={styles.row} data-pictures>
    {(["statement", "inspection"] as const).flatMap((side) =>
      ofSide(pictures, side)
        .slice(0, FEW)
        .map((one) => (
          <li key={one.id}>
            <Thumb picture={one} onOpen={onOpen} />
          </li>
        )),
    )}
  </ul>
);

/** What both sides show of some places, small; one pressed stands beside the other side's of the same place. */
export const PlacePictures = ({ places }: { readonly places: readonly AtPlace[] }) => {
  const t = useText();
  const [open, setOpen] = useState<string>();
  const all = usePicturesOfBoth().filter((one) => isShown(one) && places.some((place) => isAt(one, place)));
  if (all.length === 0) return null;
  const pair = all.find((one) => besideOf(all, one).length > 0);
  const [stated, found] = [ofSide(all, "statement").length, ofSide(all, "inspection").length];
  return (
    <section className={`${styles.pictures} no-print`}>
      <p className={styles.count}>{t("evidence.count.sides", { stated, found })}</p>
      <Row pictures={all} onOpen={setOpen} />
      {pair !== undefined && (
        <div>
          <Button
            variant="default"
            leftSection={<IconColumns2 size={18} aria-hidden="true" />}
            onClick={() => setOpen(pair.id)}
          >
            {t("evidence.compare")}
          </Button>
        </div>
      )}
      {open !== undefined && (
        <LazyViewer pictures={all} at={open} onGo={setOpen} onClose={() => setOpen(undefined)} beside />
      )}
    </section>
  );
};
