import { ActionIcon, Button, Checkbox, NativeSelect } from "@mantine/core";
import type { AnswerOf, Fault } from "@evenhand/shared/answer";
import type { FaultKind } from "@evenhand/shared/sheet";
import { IconTrash } from "@tabler/icons-react";
import { useState } from "react";
import { useText } from "../../strings/text";
import { withUnit } from "../sheet/answer-text";
import styles from "./Answers.module.css";
import type { EditorProps } from "./editor";
import { extentTexts, withExtentText, withoutFault } from "./fault-texts";
import { NewFault } from "./NewFault";
import { TypedNumber } from "./TypedNumber";

type Faults = AnswerOf<"faults">;

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

const OneFault = ({ fault, kinds, cells, unread, fresh, onChange, onRemove }: FaultProps) => {
  const t = useText();
  const kind = kinds.find(({ id }) => id === fault.kind);
  const unit = fault.extent?.unit ?? kind?.unit ?? "mm";
  return (
    <li className={styles.fault}>
      <NativeSelect
        label={t("faults.kind")}
        value={fault.kind}
        data={kinds.map(({ id, words }) => ({ value: id, label: words.american }))}
        onChange={(event) =>
          onChange({ ...fault, kind: event.currentTarget.value, extent: undefined }, undefined)
        }
      />
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
      {cells.length > 0 && (
        <NativeSelect
          label={t("faults.spot")}
          value={fault.spot ?? ""}
          data={[{ value: "", label: t("faults.spot.none") }, ...cells]}
          onChange={(event) => onChange({ ...fault, spot: event.currentTarget.value || undefined }, unread)}
        />
      )}
      <ActionIcon
        variant="default"
        size={42}
        aria-label={t("faults.remove", { kind: kind?.words.american ?? fault.kind })}
        onClick={onRemove}
      >
        <IconTrash size={18} aria-hidden="true" />
      </ActionIcon>
    </li>
  );
};

/** Faults that were found, kinds said not to be there, or "none at all". */
export const FaultsEditor = ({ item, index, answer, unread, onChange, onPick }: EditorProps<"faults">) => {
  const t = useText();
  const kinds = (item.faults?.kinds ?? [])
    .map((id) => index.faultKinds.get(id))
    .filter((kind) => kind !== undefined);
  const drawing = item.faults?.drawing === undefined ? undefined : index.drawings.get(item.faults.drawing);
  const cells = (drawing?.cells ?? []).map(({ id, words }) => ({ value: id, label: words.american }));
  const [fresh, setFresh] = useState(-1);
  const found = answer?.found ?? [];
  const denied: Faults["denied"] = answer?.denied ?? [];
  const none = denied === "all";
  const texts = extentTexts(unread);
  const send = (nextFound: readonly Fault[], nextDenied: Faults["denied"], nextTexts = texts): void => {
    const empty = nextFound.length === 0 && nextDenied !== "all" && nextDenied.length === 0;
    const left = Object.keys(nextTexts).length === 0 ? undefined : { texts: nextTexts };
    onChange(empty ? null : { kind: "faults", found: [...nextFound], denied: nextDenied }, left);
  };
  return (
    <div className={styles.stack}>
      {onPick === undefined ? (
        <Checkbox
          size="md"
          label={t("faults.none")}
          checked={none}
          disabled={found.length > 0}
          onChange={(event) => send(found, event.currentTarget.checked ? "all" : [])}
        />
      ) : (
        found.length === 0 && (
          <Button
            size="md"
            variant={none ? "filled" : "default"}
            aria-pressed={none}
            onClick={() => onPick({ kind: "faults", found: [], denied: "all" })}
          >
            {t("faults.none")}
          </Button>
        )
      )}
      {found.length > 0 && (
        <ul className={styles.faults}>
          {found.map((fault, at) => (
            <OneFault
              // The list grows and shrinks while fields hold what was typed: a shorter list starts anew.
              key={`${found.length}-${at}`}
              fault={fault}
              kinds={kinds}
              cells={cells}
              unread={texts[`extent.${at}`]}
              fresh={at === fresh}
              onChange={(next, text) =>
                send(
                  found.map((one, other) => (other === at ? next : one)),
                  none ? [] : denied,
                  withExtentText(texts, at, text),
                )
              }
              onRemove={() =>
                send(
                  found.filter((_, other) => other !== at),
                  denied,
                  withoutFault(texts, at),
                )
              }
            />
          ))}
        </ul>
      )}
      <NewFault
        kinds={kinds}
        atOnce={onPick !== undefined}
        onKind={(kind) => {
          if (onPick !== undefined) setFresh(found.length);
          send([...found, { kind }], none ? [] : denied.filter((one) => one !== kind));
        }}
      />
      {!none && kinds.length > 1 && (onPick === undefined || found.length > 0) && (
        <fieldset className={styles.denied}>
          <legend>{t("faults.denied")}</legend>
          {kinds
            .filter(({ id }) => !found.some(({ kind }) => kind === id))
            .map(({ id, words }) => (
              <Checkbox
                key={id}
                label={t("answer.faults.no", { kind: words.american })}
                checked={denied.includes(id)}
                onChange={(event) =>
                  send(
                    found,
                    event.currentTarget.checked ? [...denied, id] : denied.filter((one) => one !== id),
                  )
                }
              />
            ))}
        </fieldset>
      )}
    </div>
  );
};
