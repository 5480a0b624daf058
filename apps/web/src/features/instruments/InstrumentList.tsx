import { Button } from "@mantine/core";
import type { FirmInstrument } from "@evenhand/shared/http/instruments";
import type { ReactNode } from "react";
import { useText } from "../../strings/text";
import { useInstrumentFacts } from "../../entities/instrument/use-instrument-facts";
import type { Deed } from "./after-deed";
import styles from "./OwnInstruments.module.css";

/** What may be done to the instruments of a list; absent for those who may only read. */
export interface Deeds {
  /** While one is being stored or a form stands open. */
  readonly closed: boolean;
  readonly act: (deed: Deed) => void;
  readonly onChange: (id: string) => void;
  /** The instrument that is being changed, and the form that stands in its place. */
  readonly open: string | undefined;
  readonly form: ReactNode;
}

interface ButtonsProps {
  readonly one: FirmInstrument;
  readonly deeds: Deeds;
}
type Kind = Exclude<Deed["kind"], "keep">;

const DeedButton = ({ kind, one, deeds }: ButtonsProps & { readonly kind: Kind | "change" }) => {
  const t = useText();
  return (
    <Button
      variant="default"
      disabled={deeds.closed}
      aria-label={t(`own-instruments.${kind}.of`, { name: one.name })}
      onClick={() => (kind === "change" ? deeds.onChange(one.id) : deeds.act({ kind, instrument: one }))}
    >
      {t(`own-instruments.${kind}`)}
    </Button>
  );
};

/** Only what is retired may be removed. */
const kindsOf = ({ retired }: FirmInstrument) =>
  retired ? (["change", "use", "remove"] as const) : (["change", "retire"] as const);

const Buttons = ({ one, deeds }: ButtonsProps) => (
  <span className={styles.buttons}>
    {kindsOf(one).map((kind) => (
      <DeedButton key={kind} kind={kind} one={one} deeds={deeds} />
    ))}
  </span>
);

interface Props {
  readonly instruments: readonly FirmInstrument[];
  readonly deeds?: Deeds | undefined;
}

export const InstrumentList = ({ instruments, deeds }: Props) => {
  const facts = useInstrumentFacts();
  return (
    <ul className={styles.list}>
      {instruments.map((one) => (
        <li key={one.id}>
          {deeds !== undefined && deeds.open === one.id ? (
            <div className={styles.form}>{deeds.form}</div>
          ) : (
            <>
              <span className={styles.words}>
                <strong>{one.name}</strong>
                <span className={styles.facts}>
                  {[one.kind, facts(one)].filter((part) => part !== "").join(", ")}
                </span>
              </span>
              {deeds !== undefined && <Buttons one={one} deeds={deeds} />}
            </>
          )}
        </li>
      ))}
    </ul>
  );
};
