import { Checkbox, NativeSelect } from "@mantine/core";
import { ColorAnswer, type AnswerOf } from "@evenhand/shared/answer";
import { useState } from "react";
import type { Unread } from "../../offline/store";
import { useText } from "../../strings/text";
import styles from "./Answers.module.css";
import type { EditorProps } from "./editor";
import { NumberField } from "./NumberField";
import { parseNumber } from "./parse-number";

type Color = AnswerOf<"color">;
const geometries = ColorAnswer.shape.geometry.options;

const parts = ["L", "a", "b"] as const;
type Part = (typeof parts)[number];

/** What the three fields say. A color that is not whole is none yet; what was typed of it stays. */
export const colorOf = (
  texts: Readonly<Record<Part, string>>,
  geometry: Color["geometry"],
  metallic: boolean,
): { readonly answer: Color | null; readonly unread: Unread | undefined } => {
  const read = parts.map((part) => parseNumber(texts[part]));
  const [L, a, b] = read;
  const typed = parts.filter((part) => texts[part].trim() !== "");
  if (L !== undefined && a !== undefined && b !== undefined && L >= 0 && L <= 100)
    return { answer: { kind: "color", geometry, metallic, values: [{ L, a, b }] }, unread: undefined };
  const left = Object.fromEntries(typed.map((part) => [`color.${part}`, texts[part]]));
  return { answer: null, unread: typed.length === 0 ? undefined : { texts: left } };
};

export const ColorEditor = ({ answer, unread, onChange }: EditorProps<"color">) => {
  const t = useText();
  const first = answer?.values[0];
  const textOf = (part: Part): string => unread?.texts[`color.${part}`] ?? first?.[part].toString() ?? "";
  const [texts, setTexts] = useState({ L: textOf("L"), a: textOf("a"), b: textOf("b") });
  const [geometry, setGeometry] = useState<Color["geometry"]>(answer?.geometry ?? "45/0");
  const [metallic, setMetallic] = useState(answer?.metallic ?? false);
  const send = (next: typeof texts, at: Color["geometry"], metal: boolean): void => {
    const made = colorOf(next, at, metal);
    onChange(made.answer, made.unread);
  };
  const set = (part: Part, text: string): void => {
    const next = { ...texts, [part]: text };
    setTexts(next);
    send(next, geometry, metallic);
  };
  const { unread: left } = colorOf(texts, geometry, metallic);
  return (
    <div className={styles.reading}>
      <div className={styles.numbers}>
        {parts.map((part) => (
          <NumberField
            key={part}
            label={`${part}*`}
            unit=""
            text={texts[part]}
            wrong={
              texts[part].trim() !== "" && parseNumber(texts[part]) === undefined
                ? t("number.unread")
                : undefined
            }
            onText={(text) => set(part, text)}
          />
        ))}
      </div>
      {left && <p className={styles.wrong}>{t("color.not-whole")}</p>}
      <div className={styles.under}>
        <NativeSelect
          label={t("color.geometry")}
          value={geometry}
          data={geometries.map((one) => ({ value: one, label: t(`color.geometry.${one}`) }))}
          onChange={(event) => {
            const next = geometries.find((one) => one === event.currentTarget.value) ?? "45/0";
            setGeometry(next);
            send(texts, next, metallic);
          }}
        />
        <Checkbox
          label={t("color.metallic")}
          checked={metallic}
          onChange={(event) => {
            setMetallic(event.currentTarget.checked);
            send(texts, geometry, event.currentTarget.checked);
          }}
        />
      </div>
    </div>
  );
};
