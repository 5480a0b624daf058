import { Button } from "@mantine/core";
import { Firmness, type Finding } from "@evenhand/shared/finding";
import type { Answer } from "@evenhand/shared/answer";
import type { Report } from "@evenhand/shared/report";
import { useMemo, useState } from "react";
import { useText } from "../../strings/text";
import { ChoiceField, TermField, TextField } from "../../ui/Fields";
import { AnswerEditor } from "../../entities/answer/AnswerEditor";
import { placesFor, type Place } from "../../entities/sheet/places";
import { capital, itemWords, searchWords, type SheetIndex } from "../../entities/sheet/sheet-index";
import type { Unread } from "../../offline/store";
import type { Proposal } from "./review";
import styles from "./Review.module.css";

interface Props {
  readonly report: Report;
  readonly index: SheetIndex;
  readonly proposal: Proposal;
  /** As it stands now. */
  readonly finding: Finding | null;
  readonly onDone: (finding: Finding) => void;
  readonly onCancel: () => void;
}

interface Edited {
  readonly item: string;
  readonly position: string;
  readonly answer: Answer | null;
  readonly unread: Unread | undefined;
  readonly notSeen: boolean;
  readonly firmness: Firmness;
  /** Rises when the fields must start anew. */
  readonly anew: number;
}

const startWith = ({ item }: Proposal, finding: Finding | null): Edited => ({
  item: finding?.item ?? item ?? "",
  position: finding?.position ?? "",
  answer: finding?.answer ?? null,
  unread: undefined,
  notSeen: finding?.answer.kind === "not-seen",
  firmness: finding?.firmness ?? "asserted",
  anew: 0,
});

/** Items this car has, section by section; those of the words looked for. */
const useItems = (index: SheetIndex, places: readonly Place[], q: string, chosen: string) =>
  useMemo(() => {
    const words = q.trim().toLowerCase().split(/\s+/);
    const here = new Set(places.map(({ item }) => item.id));
    return index.sheet.sections.flatMap((section) => {
      const items = index.sheet.items.filter(
        (item) =>
          item.section === section.id &&
          here.has(item.id) &&
          (item.id === chosen || words.every((word) => searchWords(item.words).includes(word))),
      );
      const group = capital(section.words.american);
      const options = items.map(({ id }) => ({ value: id, label: capital(itemWords(index, id)) }));
      return options.length === 0 ? [] : [{ group, items: options }];
    });
  }, [index, places, q, chosen]);

interface FieldsProps extends Pick<Props, "index"> {
  readonly places: readonly Place[];
  readonly edited: Edited;
  readonly onChange: (change: Partial<Edited>) => void;
}

/** Of what it is said: an item of the sheet, and where. */
const OfWhat = ({ index, places, edited, onChange }: FieldsProps) => {
  const t = useText();
  const [q, setQ] = useState("");
  const items = useItems(index, places, q, edited.item);
  const here = places.filter(({ item }) => item.id === edited.item);
  const toItem = (item: string): void => {
    const first = places.find((place) => place.item.id === item);
    const fresh = { answer: null, unread: undefined, notSeen: false, anew: edited.anew + 1 };
    onChange({ item, position: first?.position ?? "", ...fresh });
  };
  return (
    <div className={styles.ofWhat}>
      <TextField type="search" label={t("reading.edit.search")} value={q} onChange={setQ} />
      <ChoiceField
        label={t("reading.edit.item")}
        value={edited.item}
        data={[{ value: "", label: t("reading.edit.choose"), disabled: true }, ...items]}
        onChange={toItem}
      />
      {here.some(({ position }) => position !== "") && (
        <ChoiceField
          label={t("reading.edit.place")}
          value={edited.position}
          data={here.map(({ position, words }) => ({ value: position, label: capital(words) }))}
          onChange={(position) => onChange({ position })}
        />
      )}
    </div>
  );
};

type AnsweredProps = FieldsProps & Pick<Props, "report" | "proposal">;

/** The answer by the sheet's own fields. */
const AnswerFields = ({ report, index, proposal, places, edited, onChange }: AnsweredProps) => {
  const { item: id, answer, unread, notSeen, anew } = edited;
  const item = places.find((place) => place.item.id === id)?.item;
  if (item === undefined) return null;
  return (
    <AnswerEditor
      key={`${id}${notSeen}${anew}`}
      item={item}
      index={index}
      scales={report.scales}
      name={proposal.key}
      answer={answer ?? undefined}
      unread={unread}
      notSeen={notSeen}
      onChange={(next, left) => onChange({ answer: next, unread: left })}
    />
  );
};

const FirmnessField = ({ edited, onChange }: Pick<FieldsProps, "edited" | "onChange">) => {
  const t = useText();
  return (
    <TermField
      label={t("facts.firmness")}
      value={edited.firmness}
      terms={Firmness.options}
      wordFor={(one) => t(`firmness.${one}`)}
      onChange={(firmness) => onChange({ firmness })}
    />
  );
};

const isMeasured = (answer: Answer): boolean => answer.kind === "reading" || answer.kind === "color";

/** What it says now; its words stay with it as a note. */
const findingFrom = (
  { item, position, answer, firmness }: Edited,
  note: string | undefined,
): Finding | null => {
  if (answer === null) return null;
  const basis = isMeasured(answer) ? "measured" : firmness === "second-hand" ? "told" : "seen";
  return { item, position, answer, firmness, basis, ...(note === undefined ? {} : { note }) };
};

interface ButtonsProps extends Pick<FieldsProps, "edited" | "onChange"> {
  readonly onDone: () => void;
  readonly onCancel: () => void;
}

const EditorButtons = ({ edited, onChange, onDone, onCancel }: ButtonsProps) => {
  const t = useText();
  const { item, answer, unread, notSeen } = edited;
  return (
    <div className={styles.buttons}>
      <Button size="compact-md" disabled={answer === null || unread !== undefined} onClick={onDone}>
        {t("reading.edit.done")}
      </Button>
      {item !== "" && (
        <Button
          variant="default"
          size="compact-md"
          aria-pressed={notSeen}
          onClick={() => onChange({ notSeen: !notSeen, answer: null, unread: undefined })}
        >
          {t("place.not-seen")}
        </Button>
      )}
      <Button variant="subtle" size="compact-md" onClick={onCancel}>
        {t("reading.edit.cancel")}
      </Button>
    </div>
  );
};

/** Puts a proposal right by the sheet's own fields, or settles by hand what could not be read. */
export const Editor = ({ report, index, proposal, finding, onDone, onCancel }: Props) => {
  const { form } = report.vehicle;
  const places = useMemo(() => placesFor(index, form), [index, form]);
  const [edited, setEdited] = useState(() => startWith(proposal, finding));
  const change = (part: Partial<Edited>): void => setEdited((old) => ({ ...old, ...part }));
  const done = (): void => {
    const changed = findingFrom(edited, finding?.note);
    if (changed !== null) onDone(changed);
  };
  const fields = { index, places, edited, onChange: change };
  return (
    <div className={styles.editor}>
      <OfWhat {...fields} />
      <AnswerFields {...fields} report={report} proposal={proposal} />
      {edited.item !== "" && <FirmnessField {...fields} />}
      <EditorButtons {...fields} onDone={done} onCancel={onCancel} />
    </div>
  );
};
