import { IconCar } from "@tabler/icons-react";
import { addressOf } from "../../service/client";
import styles from "./Cover.module.css";

/**
 * The photograph that stands for a car beside its name, which says what it shows. An empty frame where there is none, or where it is
 * not shown after all.
 */
export const Cover = ({ id }: { readonly id: string | null }) => (
  <span className={styles.cover}>
    <IconCar size={26} stroke={1.3} aria-hidden="true" />
    {id !== null && (
      <img
        src={addressOf("evidence.small", { id })}
        alt=""
        loading="lazy"
        decoding="async"
        width={96}
        height={72}
        onError={({ currentTarget }) => {
          currentTarget.hidden = true;
        }}
      />
    )}
  </span>
);
