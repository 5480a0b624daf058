import { Button } from "@mantine/core";
import type { ReleasePicture } from "@evenhand/shared/http/releases";
import { IconCamera } from "@tabler/icons-react";
import { useRef } from "react";
import { useText } from "../../strings/text";
import { filesFrom, PHOTOGRAPHS } from "../../ui/files-from";
import { ProblemNotice } from "../../ui/ProblemNotice";
import styles from "./Disputes.module.css";
import { Photograph } from "./Photograph";
import { isLookedAt } from "./settle-form";
import type { Photographs } from "./use-photographs";

interface OneProps {
  readonly picture: ReleasePicture;
  readonly place: number;
  readonly onRemove: () => void;
}

/** One that waits: shown once the service has looked at it; what it refused says why. */
const Waiting = ({ picture, place, onRemove }: OneProps) => {
  const t = useText();
  const name = t("settle.photograph.waiting", { place });
  return (
    <li>
      {picture.state === "ready" && <Photograph id={picture.id} name={name} />}
      {isLookedAt(picture) && <p className={styles.grounds}>{t("settle.photograph.looked-at")}</p>}
      {picture.refused !== null && <p className={styles.lack}>{picture.refused.words}</p>}
      <Button variant="subtle" aria-label={t("settle.photograph.remove.of", { place })} onClick={onRemove}>
        {t("settle.photograph.remove")}
      </Button>
    </li>
  );
};

/** Opens the camera or the folders, as the device has them. */
const Choose = ({ add }: Pick<Photographs, "add">) => {
  const t = useText();
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <input
        ref={input}
        type="file"
        hidden
        multiple
        accept={PHOTOGRAPHS}
        aria-label={t("settle.photograph.add")}
        onChange={({ currentTarget }) => add.mutate(filesFrom(currentTarget))}
      />
      <Button
        variant="default"
        leftSection={<IconCamera size={18} aria-hidden="true" />}
        loading={add.isPending}
        onClick={() => input.current?.click()}
      >
        {t("settle.photograph.add")}
      </Button>
    </>
  );
};

/** Photographs that go with the answer: chosen or taken here, looked at by the service, and taken away again until it is sent. */
export const PhotographsField = ({ of: { waiting, add, remove } }: { readonly of: Photographs }) => {
  const t = useText();
  const error = add.error ?? remove.error;
  return (
    <div className={styles.wide}>
      <Choose add={add} />
      <p className={styles.grounds}>{t("settle.photograph.hint")}</p>
      {error !== null && <ProblemNotice error={error} />}
      {waiting.length > 0 && (
        <ul className={styles.photographs} aria-label={t("settle.photographs")}>
          {waiting.map(({ id, ...picture }, at) => (
            <Waiting
              key={id}
              picture={{ id, ...picture }}
              place={at + 1}
              onRemove={() => remove.mutate(id)}
            />
          ))}
        </ul>
      )}
    </div>
  );
};
