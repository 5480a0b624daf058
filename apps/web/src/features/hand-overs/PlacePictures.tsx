import { Button } from "@mantine/core";
import { IconCamera } from "@tabler/icons-react";
import { useRef } from "react";
import { useText } from "../../strings/text";
import { filesFrom, PHOTOGRAPHS } from "../../ui/files-from";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { type At, isAt, type Waiting } from "./carried-pictures";
import { PictureOf } from "./PictureOf";
import styles from "./Pictures.module.css";
import type { CarriedPictures } from "./use-carried-pictures";

interface Props {
  readonly of: CarriedPictures;
  readonly at: Pick<At, "item" | "position">;
  readonly named: string;
}

/** Opens the camera. */
export const TakePicture = ({ of, at, named }: Props) => {
  const t = useText();
  const input = useRef<HTMLInputElement>(null);
  const add = (files: readonly File[]): void => of.add({ stage: of.stage, ...at }, files);
  return (
    <>
      <input
        ref={input}
        type="file"
        hidden
        accept={PHOTOGRAPHS}
        capture="environment"
        aria-label={t("carry.photograph.of", { place: named })}
        onChange={({ currentTarget }) => add(filesFrom(currentTarget))}
      />
      <Button
        size="md"
        variant="default"
        data-camera
        leftSection={<IconCamera size={18} aria-hidden="true" />}
        aria-label={t("carry.photograph.of", { place: named })}
        onClick={() => input.current?.click()}
      >
        <span data-word>{t("carry.photograph")}</span>
      </Button>
    </>
  );
};

const Sending = ({ of, one }: { readonly of: CarriedPictures; readonly one: Waiting }) => {
  const t = useText();
  return (
    <li className={styles.waiting}>
      <img className={styles.own} src={one.url} alt="" />
      {one.error === null ? (
        <span className={styles.aside}>{t("carry.photograph.sending")}</span>
      ) : (
        <>
          <ProblemNotice error={one.error} />
          <Button variant="default" onClick={() => of.again(one)}>
            {t("carry.photograph.again")}
          </Button>
          <Button variant="subtle" onClick={() => of.leaveOut(one)}>
            {t("carry.photograph.leave-out")}
          </Button>
        </>
      )}
    </li>
  );
};

/** What was photographed here when the car left, for whoever looks at it now. */
const Before = ({ of, at }: Omit<Props, "named">) => {
  const t = useText();
  const before = of.pictures.filter((one) => isAt(one, { stage: "collection", ...at }));
  if (of.stage === "collection" || before.length === 0) return null;
  return (
    <>
      <p className={styles.aside}>{t("carry.photograph.before")}</p>
      <ul className={styles.row}>
        {before.map((picture) => (
          <li key={picture.id}>
            <PictureOf picture={picture} source={of} />
          </li>
        ))}
      </ul>
    </>
  );
};

/** The photographs of a place: what is here, and what is on its way. */
export const PlacePictures = ({ of, at, named }: Props) => {
  const t = useText();
  const here = { stage: of.stage, ...at };
  const taken = of.pictures.filter((one) => isAt(one, here));
  const sending = of.waiting.filter((one) => isAt(one.at, here));
  return (
    <>
      <Before of={of} at={at} />
      {taken.length + sending.length > 0 && (
        <ul className={styles.row}>
          {taken.map((picture) => (
            <li key={picture.id}>
              <PictureOf picture={picture} source={of} />
              <Button
                variant="subtle"
                aria-label={t("carry.photograph.remove.of", { place: named })}
                onClick={() => of.remove(picture.id)}
              >
                {t("carry.photograph.remove")}
              </Button>
            </li>
          ))}
          {sending.map((one) => (
            <Sending key={one.key} of={of} one={one} />
          ))}
        </ul>
      )}
    </>
  );
};
