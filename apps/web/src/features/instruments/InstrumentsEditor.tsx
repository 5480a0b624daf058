import { Button } from "@mantine/core";
import type { FirmInstrumentsSeen } from "@evenhand/shared/http/instruments";
import { useQuery } from "@tanstack/react-query";
import { useEffect, useRef, useState, type ReactNode } from "react";
import { useText } from "../../strings/text";
import { Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { InstrumentForm } from "../../entities/instrument/InstrumentForm";
import type { Deed } from "./after-deed";
import { InstrumentList, type Deeds } from "./InstrumentList";
import styles from "./OwnInstruments.module.css";
import { instrumentKindsQuery } from "./queries";
import { useDeed } from "./use-deed";

const ADDING = "";

/** The form that stands open, if one does, and what becomes of it. */
const useForm = (organization: string, seen: FirmInstrumentsSeen) => {
  const t = useText();
  const kinds = useQuery(instrumentKindsQuery).data;
  const deed = useDeed(organization, seen);
  const [asked, setOpen] = useState<string>();
  // Somebody else may have taken out what is being changed.
  const open = asked === ADDING || seen.instruments.some(({ id }) => id === asked) ? asked : undefined;
  const act = (what: Deed): void => deed.mutate(what, { onSuccess: () => setOpen(undefined) });
  const initial = seen.instruments.find(({ id }) => id === open);
  const form = open !== undefined && kinds !== undefined && (
    <InstrumentForm
      key={open}
      taken={seen.instruments.map(({ id }) => id)}
      initial={initial}
      kinds={kinds}
      saveText={t("own-instruments.save")}
      pending={deed.isPending}
      onCancel={() => setOpen(undefined)}
      onAdd={({ kind, ...made }) => {
        if (kind === undefined) return;
        act({ kind: "keep", instrument: { ...made, kind, retired: initial?.retired ?? false } });
      }}
    />
  );
  const openForm = (which: string): void => {
    deed.reset();
    setOpen(which);
  };
  return { deed, open, openForm, act, form };
};

/** What became of the last deed, said once it is stored; it takes the focus, since the button that was pressed may be gone. */
const Outcome = ({ deed }: { readonly deed: ReturnType<typeof useDeed> }) => {
  const t = useText();
  const place = useRef<HTMLDivElement>(null);
  const { status } = deed;
  useEffect(() => {
    if (status === "success" || status === "error") place.current?.focus();
  }, [status]);
  return (
    <div ref={place} tabIndex={-1}>
      <output>
        {deed.isSuccess &&
          t(`own-instruments.saved.${deed.variables.kind}`, { name: deed.variables.instrument.name })}
      </output>
      {deed.error !== null && <ProblemNotice error={deed.error} />}
    </div>
  );
};

/** A firm's instruments for its administrators: each deed is stored by itself. */
export const InstrumentsEditor = ({
  organization,
  seen,
}: {
  readonly organization: string;
  readonly seen: FirmInstrumentsSeen;
}) => {
  const t = useText();
  const { deed, open, openForm, act, form } = useForm(organization, seen);
  // Another form would drop what is typed in this one.
  const deeds: Deeds = { closed: deed.isPending || open !== undefined, act, onChange: openForm, open, form };
  return (
    <>
      <Outcome deed={deed} />
      <InstrumentPanels seen={seen} deeds={deeds}>
        {open === ADDING && form}
        {open === undefined && (
          <div>
            <Button onClick={() => openForm(ADDING)}>{t("instruments.add")}</Button>
          </div>
        )}
      </InstrumentPanels>
    </>
  );
};

/** Those in use, and those that are not any more. */
export const InstrumentPanels = ({
  seen: { instruments },
  deeds,
  children,
}: {
  readonly seen: FirmInstrumentsSeen;
  readonly deeds?: Deeds;
  readonly children?: ReactNode;
}) => {
  const t = useText();
  const used = instruments.filter(({ retired }) => !retired);
  const retired = instruments.filter((one) => one.retired);
  return (
    <>
      <Panel title={t("own-instruments.in-use")} hint={t("own-instruments.hint")}>
        {used.length === 0 && <p className={styles.none}>{t("own-instruments.none")}</p>}
        {used.length > 0 && <InstrumentList instruments={used} deeds={deeds} />}
        {children}
      </Panel>
      {retired.length > 0 && (
        <Panel title={t("own-instruments.retired")} hint={t("own-instruments.retired.hint")}>
          <InstrumentList instruments={retired} deeds={deeds} />
        </Panel>
      )}
    </>
  );
};
