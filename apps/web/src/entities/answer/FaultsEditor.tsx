import { ActionIcon, Button, Checkbox, NativeSelect } from "@mantine/core";
import type { Fault } from "@evenhand/shared/answer";
import type { FaultKind } from "@evenhand/shared/sheet";
import { IconTrash } from "@tabler/icons-react";
import { useState } from "react";
import { useText } from "../../strings/text";
import { withUnit } from "../sheet/answer-text";
import styles from "./Answers.module.css";
import type { EditorProps } from "./editor";
import { extentTexts } from "./fault-texts";
import { faultsAfter, faultsAnswer, type FaultsSaid, type FaultsStep } from "./faults-edit";
import { NewFault } from "./NewFault";
import { TypedNumber } from "./TypedNumber";

interface FaultProps {
  readonly fault: Fault;
  readonly kinds: readonly FaultKind[];
  readonly cells: readonly { readonly value: string; readonly label: string }[];
  /** Typed as the extent, and not to be read as one. */
  readonly unread: string | undefined;
  /** Said just now: how large it is comes next. */
  readonly fresh: boolean;
  readonly onChange: (fault: Fault, unread: string | undefined) => void;
  readonly onRemove: () => void;
}

const KindChoice = ({ fault, kinds, onChange }: FaultProps) => {
  const t = useText();
  return (
    <NativeSelect
      label={t("faults.kind")}
      value={fault.kind}
      data={kinds.map(({ id, words }) => ({ value: id, label: words.american }))}
      onChange={(event) =>
        onChange({ ...fault, kind: event.currentTarget.value, extent: undefined }, undefined)
      }
    />
  );
};

const Extent = ({ fault, kinds, unread, fresh, onChange }: FaultProps) => {
  const t = useText();
  const unit = fault.extent?.unit ?? kinds.find(({ id }) => id === fault.kind)?.unit ?? "mm";
  return (
    <TypedNumber
      key={fault.kind}
      label={t("faults.extent")}
      value={fault.extent?.value}
      unit={withUnit("", unit).trim()}
      unread={unread}
      fresh={fresh}
      least={0}
      onChange={(value, text) =>
        onChange({ ...fault, extent: value === undefined ? undefined : { value, unit } }, text)
      }
    />
  );
};

/** Where on the drawing it is, if the item has one. */
const SpotChoice = ({ fault, cells, unread, onChange }: FaultProps) => {
  const t = useText();
  if (cells.length === 0) return null;
  return (
    <NativeSelect
      label={t("faults.spot")}
      value={fault.spot ?? ""}
      data={[{ value: "", label: t("faults.spot.none") }, ...cells]}
      onChange={(event) => onChange({ ...fault, spot: event.currentTarget.value || undefined }, unread)}
    />
  );
};

const OneFault = (props: FaultProps) => {
  const t = useText();
  const { fault, kinds, onRemove } = props;
  const kind = kinds.find(({ id }) => id === fault.kind)?.words.american ?? fault.kind;
  return (
    <li className={styles.fault}>
      <KindChoice {...props} />
      <Extent {...props} />
      <SpotChoice {...props} />
      <ActionIcon variant="default" size={42} aria-label={t("faults.remove", { kind })} onClick={onRemove}>
        <IconTrash size={18} aria-hidden="true" />
      </ActionIcon>
    </li>
  );
};

/** What may be found here, and where: kinds of fault and cells of the drawing. */
const faultsOf = ({ item, index }: Pick<EditorProps<"faults">, "item" | "index">) => {
  const kinds = (item.faults?.kinds ?? [])
    .map((id) => index.faultKinds.get(id))
    .filter((kind) => kind !== undefined);
  const drawing = item.faults?.drawing === undefined ? undefined : index.drawings.get(item.faults.drawing);
  const cells = (drawing?.cells ?? []).map(({ id, words }) => ({ value: id, label: words.american }));
  return { kinds, cells };
};

interface SaidProps {
  readonly said: FaultsSaid;
  readonly onStep: (step: FaultsStep) => void;
}

/** Nothing at all is wrong: to be checked, or where one walks to be pressed. */
const NoFaults = ({ said, onStep, onPick }: SaidProps & Pick<EditorProps<"faults">, "onPick">) => {
  const t = useText();
  const none = said.denied === "all";
  if (onPick === undefined)
    return (
      <Checkbox
        size="md"
        label={t("faults.none")}
        checked={none}
        disabled={said.found.length > 0}
        onChange={(event) => onStep({ type: "none", none: event.currentTarget.checked })}
      />
    );
  if (said.found.length > 0) return null;
  return (
    <Button
      size="md"
      variant={none ? "filled" : "default"}
      aria-pressed={none}
      onClick={() => onPick({ kind: "faults", found: [], denied: "all" })}
    >
      {t("faults.none")}
    </Button>
  );
};

const FoundFaults = ({
  said: { found, texts },
  fresh,
  onStep,
  ...of
}: SaidProps & Pick<FaultProps, "kinds" | "cells"> & { readonly fresh: number }) =>
  found.length > 0 && (
    <ul className={styles.faults}>
      {found.map((fault, at) => (
        <OneFault
          // The list grows and shrinks while fields hold what was typed: a shorter list starts anew.
          key={`${found.length}-${at}`}
          {...of}
          fault={fault}
          unread={texts[`extent.${at}`]}
          fresh={at === fresh}
          onChange={(next, text) => onStep({ type: "change", at, fault: next, text })}
          onRemove={() => onStep({ type: "remove", at })}
        />
      ))}
    </ul>
  );

/** Kinds said one by one not to be there. */
const DeniedKinds = ({ said, kinds, onStep }: SaidProps & Pick<FaultProps, "kinds">) => {
  const t = useText();
  const { found, denied } = said;
  return (
    <fieldset className={styles.denied}>
      <legend>{t("faults.denied")}</legend>
      {kinds
        .filter(({ id }) => !found.some(({ kind }) => kind === id))
        .map(({ id, words }) => (
          <Checkbox
            key={id}
            label={t("answer.faults.no", { kind: words.american })}
            checked={denied.includes(id)}
            onChange={(event) => onStep({ type: "deny", kind: id, denied: event.currentTarget.checked })}
          />
        ))}
    </fieldset>
  );
};

/** Faults that were found, kinds said not to be there, or "none at all". */
export const FaultsEditor = ({ item, index, answer, unread, onChange, onPick }: EditorProps<"faults">) => {
  const { kinds, cells } = faultsOf({ item, index });
  const [fresh, setFresh] = useState(-1);
  const said: FaultsSaid = {
    found: answer?.found ?? [],
    denied: answer?.denied ?? [],
    texts: extentTexts(unread),
  };
  const onStep = (step: FaultsStep): void => {
    const next = faultsAfter(said, step);
    onChange(faultsAnswer(next), Object.keys(next.texts).length === 0 ? undefined : { texts: next.texts });
  };
  const add = (kind: string): void => {
    if (onPick !== undefined) setFresh(said.found.length);
    onStep({ type: "add", kind });
  };
  const asksEach = said.denied !== "all" && kinds.length > 1;
  return (
    <div className={styles.stack}>
      <NoFaults said={said} onStep={onStep} onPick={onPick} />
      <FoundFaults said={said} kinds={kinds} cells={cells} fresh={fresh} onStep={onStep} />
      <NewFault kinds={kinds} atOnce={onPick !== undefined} onKind={add} />
      {asksEach && (onPick === undefined || said.found.length > 0) && (
        <DeniedKinds said={said} kinds={kinds} onStep={onStep} />
      )}
    </div>
  );
};
