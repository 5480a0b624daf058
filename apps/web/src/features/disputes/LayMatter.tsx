import { owedIn } from "@evenhand/case/owed-in";
import { Button, Checkbox } from "@mantine/core";
import { cameOf } from "../../entities/comparison/came-of";
import { useSeverityWords } from "../../entities/comparison/use-severity-words";
import { spelled } from "../../entities/sheet/sheet-index";
import { useText } from "../../strings/text";
import { dotted } from "../../ui/dotted";
import { Loading } from "../../ui/Loading";
import { ProblemNotice } from "../../ui/ProblemNotice";
import styles from "./Laying.module.css";
import { useLaying } from "./use-laying";
import { usePlaceWords } from "./use-release-words";
import type { LayableLine } from "./whole-matter";

interface Props {
  readonly comparison: string;
  readonly lines: readonly number[];
  readonly laid: ReadonlySet<number>;
  readonly dealer: string;
  readonly onLaid: (count: number) => void;
  readonly onCancel: () => void;
}

type Laying = ReturnType<typeof useLaying>;

const useLineWords = (): ((line: LayableLine) => string) => {
  const t = useText();
  const place = usePlaceWords();
  const grave = useSeverityWords();
  return ({ entry, doubtful }) => {
    const { atom } = entry;
    const fault = atom.of === "answer" || atom.kind === "all" ? null : spelled(atom.kind);
    const named = [place(entry), fault].filter((part) => part !== null).join(", ");
    return `${named} (${dotted([t(cameOf(entry)), grave(entry), doubtful ? t("lay.doubtful") : null])})`;
  };
};

const Lines = ({ whole, ticked, tick }: Laying) => {
  const t = useText();
  const words = useLineWords();
  if (whole === null) return <Loading />;
  return (
    <>
      <ul>
        {whole.lines.map((line) => (
          <li key={line.at}>
            <Checkbox
              size="sm"
              label={words(line)}
              checked={ticked.has(line.at)}
              onChange={(event) => tick(line.at, event.currentTarget.checked)}
            />
          </li>
        ))}
      </ul>
      {whole.left > 0 && <p>{t("lay.left", { count: whole.left })}</p>}
    </>
  );
};

const Presses = ({ ticked, send, onCancel }: Pick<Laying, "ticked" | "send"> & Pick<Props, "onCancel">) => {
  const t = useText();
  return (
    <div className={styles.presses}>
      <Button disabled={ticked.size === 0} loading={send.isPending} onClick={() => send.mutate()}>
        {t("lay.send", { count: ticked.size })}
      </Button>
      <Button variant="default" onClick={onCancel}>
        {t("release.cancel")}
      </Button>
    </div>
  );
};

/** Before a matter is laid before the dealer: which lines go there, what the dealer sees of them, and what stays. */
export const LayMatter = ({ dealer, onCancel, ...asked }: Props) => {
  const t = useText();
  const laying = useLaying(asked);
  const nothing = laying.whole?.lines.length === 0;
  return (
    <section className={`${styles.lay} no-print`} aria-label={t("lay.title", { dealer })}>
      <h4>{t("lay.title", { dealer })}</h4>
      {laying.error !== null && <ProblemNotice error={laying.error} />}
      <p>{nothing ? t("lay.none") : t("lay.what", { dealer, hours: owedIn("released")?.hours ?? 0 })}</p>
      {nothing ? (
        <Button variant="default" onClick={onCancel}>
          {t("release.cancel")}
        </Button>
      ) : (
        <>
          <Lines {...laying} />
          <Presses {...laying} onCancel={onCancel} />
        </>
      )}
    </section>
  );
};
