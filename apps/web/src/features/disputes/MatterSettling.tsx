import { matterOwed, matterState } from "@evenhand/case/matter-state";
import type { Release } from "@evenhand/shared/http/releases";
import type { Matter } from "@evenhand/shared/matter";
import { useQuery } from "@tanstack/react-query";
import { Link } from "@tanstack/react-router";
import { useMemo, useState } from "react";
import { releasesQuery } from "../../entities/release/queries";
import { useMatterStanding } from "../../entities/release/use-owed-words";
import { useText } from "../../strings/text";
import { Answered } from "../../ui/Answered";
import styles from "./Laying.module.css";
import { LayMatter } from "./LayMatter";

interface Props {
  readonly comparison: string;
  readonly matter: Pick<Matter, "lines" | "headline">;
  /** The firm that states. */
  readonly dealer: string;
  /** Of what nobody knows there may be nothing to lay: no press where no line of it is disputed. */
  readonly mayLay: boolean;
}

/** What of the matter lies before the dealer; nothing while it is asked for. */
const useLaidOf = ({ comparison, matter }: Pick<Props, "comparison" | "matter">) => {
  const { data } = useQuery(releasesQuery({ comparison }));
  return useMemo(() => {
    if (data === undefined) return null;
    const its = new Set(matter.lines);
    const of = data.items.flatMap((release): LaidLine[] => {
      const { as, state, deadline, zone, vehicle, standsIn } = release;
      const entry = standsIn?.entryIndex;
      return entry === undefined || !its.has(entry) ? [] : [{ as, state, deadline, zone, vehicle, entry }];
    });
    return { of, laid: new Set(of.map(({ entry }) => entry)) };
  }, [data, matter.lines]);
};

type LaidLine = Pick<Release, "as" | "state" | "deadline" | "zone" | "vehicle"> & { readonly entry: number };
type Laid = readonly LaidLine[];

const Standing = ({ matter, laid }: Pick<Props, "matter"> & { readonly laid: Laid }) => {
  const t = useText();
  const standing = useMatterStanding();
  const [first] = laid;
  if (first === undefined) return null;
  const words = standing(
    {
      state: matterState(matter.lines, laid),
      laid: laid.length,
      lines: matter.lines.length,
      owed: matterOwed(matter.lines, laid),
    },
    first,
  );
  return (
    <>
      <p>{words}</p>
      <Link className="no-print" to="/released" search={{ vehicle: first.vehicle }}>
        {t("lay.laid")}
      </Link>
    </>
  );
};

const Done = ({ count, matter, dealer }: Pick<Props, "matter" | "dealer"> & { readonly count: number }) => {
  const t = useText();
  return (
    <Answered title={t("lay.done", { count, headline: matter.headline, dealer })}>
      <p>{t("lay.done.what")}</p>
    </Answered>
  );
};

interface OpenProps extends Pick<Props, "matter"> {
  readonly rest: boolean;
  readonly onOpen: () => void;
}

const OpenLaying = ({ matter: { headline }, rest, onOpen }: OpenProps) => {
  const t = useText();
  const shown = t(rest ? "lay.open.rest" : "lay.open");
  return (
    <button
      type="button"
      className={`${styles.open} no-print`}
      aria-label={t("lay.of", { shown, headline })}
      onClick={onOpen}
    >
      {shown}
    </button>
  );
};

/** Whether what would be laid is being looked at, and how many lines went when it was laid. */
const useOpened = () => {
  const [open, setOpen] = useState(false);
  const [done, setDone] = useState<number | null>(null);
  const onLaid = (count: number): void => {
    setOpen(false);
    setDone(count);
  };
  return { open, done, onLaid, onOpen: () => setOpen(true), onCancel: () => setOpen(false) };
};

/** How a matter stands between buyer and dealer, and the press that lays it before the dealer. */
export const MatterSettling = (props: Props) => {
  const { matter, mayLay } = props;
  const laid = useLaidOf(props);
  const { open, done, onLaid, onOpen, onCancel } = useOpened();
  if (laid === null) return null;
  const more = mayLay && !open && laid.of.length < matter.lines.length && done === null;
  return (
    <>
      {done !== null && <Done count={done} {...props} />}
      <div className={styles.settling}>
        <Standing matter={matter} laid={laid.of} />
        {more && <OpenLaying matter={matter} rest={laid.of.length > 0} onOpen={onOpen} />}
      </div>
      {open && (
        <LayMatter {...props} lines={matter.lines} laid={laid.laid} onLaid={onLaid} onCancel={onCancel} />
      )}
    </>
  );
};
