import { Checkbox, NativeSelect } from "@mantine/core";
import { ColorAnswer, type AnswerOf } from "@evenhand/shared/answer";
import { useState } from "react";
import { useText } from "../../../strings/text";
import styles from "./Answers.module.css";
import type { EditorProps } from "./editor";
import { NumberField } from "./NumberField";

type Color = AnswerOf<"color">;
const geometries = ColorAnswer.shape.geometry.options;

export const ColorEditor = ({ answer, onChange }: EditorProps<"color">) => {
  const t = useText();
  const [value, setValue] = useState<{ readonly L?: number; readonly a?: number; readonly b?: number }>(
    answer?.values[0] ?? {},
  );
  const [geometry, setGeometry] = useState<Color["geometry"]>(answer?.geometry ?? "45/0");
  const [metallic, setMetallic] = useState(answer?.metallic ?? false);
  const send = (next: typeof value, at: Color["geometry"], metal: boolean): void => {
    const { L, a, b } = next;
    if (L === undefined || a === undefined || b === undefined) return;
    onChange({ kind: "color", geometry: at, metallic: metal, values: [{ L, a, b }] });
  };
  const set = (part: "L" | "a" | "b", number: number | undefined): void => {
    const next = { ...value, [part]: number };
    setValue(next);
    send(next, geometry, metallic);
  };
  return (
    <div className={styles.reading}>
      <div className={styles.numbers}>
        {(["L", "a", "b"] as const).map((part) => (
          <NumberField
            key={part}
            label={`${part}*`}
            unit=""
            value={value[part]}
            onChange={(number) => set(part, number)}
          />
        ))}
      </div>
      <div className={styles.under}>
        <NativeSelect
          label={t("color.geometry")}
          value={geometry}
          data={geometries.map((one) => ({ value: one, label: t(`color.geometry.${one}`) }))}
          onChange={(event) => {
            const next = geometries.find((one) => one === event.currentTarget.value) ?? "45/0";
            setGeometry(next);
            send(value, next, metallic);
          }}
        />
        <Checkbox
          label={t("color.metallic")}
          checked={metallic}
          onChange={(event) => {
            setMetallic(event.currentTarget.checked);
            send(value, geometry, event.currentTarget.checked);
          }}
        />
      </div>
    </div>
  );
};
