import { IconAlertCircle, IconCheck, IconCircleDashed, IconCloudUp } from "@tabler/icons-react";
import type { KeptFinding } from "../../offline/store";
import { useText } from "../../strings/text";
import styles from "./ItemCard.module.css";

const icons = {
  saved: IconCheck,
  waiting: IconCloudUp,
  conflict: IconAlertCircle,
  refused: IconAlertCircle,
  lost: IconAlertCircle,
  unread: IconAlertCircle,
  open: IconCircleDashed,
} as const;

type StateOfPlace = keyof typeof icons;

/** What needs the person comes before what was answered; a line taken back is open only once that has arrived. */
const placeState = (kept: KeptFinding | undefined): StateOfPlace => {
  if (kept === undefined) return "open";
  if (kept.state === "lost" || kept.state === "conflict" || kept.state === "refused") return kept.state;
  if (kept.unread !== undefined) return "unread";
  return kept.finding === null && kept.state === "saved" ? "open" : kept.state;
};

export const PlaceState = ({ kept }: { readonly kept: KeptFinding | undefined }) => {
  const t = useText();
  const state = placeState(kept);
  const Icon = icons[state];
  return (
    <span className={styles.state} data-state={state === "unread" ? "refused" : state}>
      <Icon size={18} stroke={1.9} aria-hidden="true" />
      <span className="only-read">{t(`place.state.${state}`)}</span>
    </span>
  );
};
