import styles from "./SmallPicture.module.css";

interface Props {
  /** Addresses of its copies. */
  readonly small: string;
  readonly large: string;
  /** What it shows, for whoever does not see it. */
  readonly name: string;
  readonly onError?: () => void;
}

/** A photograph, small; pressed, it is shown large beside this page. */
export const SmallPicture = ({ small, large, name, onError }: Props) => (
  <a className={styles.picture} href={large} target="_blank" rel="noreferrer">
    <img
      className={styles.image}
      src={small}
      alt={name}
      loading="lazy"
      decoding="async"
      width={400}
      height={300}
      onError={onError}
    />
  </a>
);
