import styles from "./CarPlan.module.css";

/** A generic closed car from above, nose up, 200 by 420: no make's shape. */
export const OutsideDrawing = () => (
  <svg viewBox="0 0 200 420" className={styles.drawing} aria-hidden="true">
    <path
      className={styles.body}
      d="M100 10c26 0 45 5 54 18 7 10 11 24 12 44l2 60v150l-2 70c-1 22-5 38-13 46-9 9-28 12-53 12s-44-3-53-12c-8-8-12-24-13-46l-2-70V132l2-60c1-20 5-34 12-44 9-13 28-18 54-18Z"
    />
    <path className={styles.line} d="M52 30c14 7 82 7 96 0M46 394c16-8 92-8 108 0" />
    <path className={styles.line} d="M58 128c-6-34-6-62 0-88M142 128c6-34 6-62 0-88" />
    <path className={styles.glass} d="M52 128c28-11 68-11 96 0l-12 30c-22-6-50-6-72 0Z" />
    <path className={styles.glass} d="M64 290c22 6 50 6 72 0l9 24c-26 8-64 8-90 0Z" />
    <path className={styles.line} d="M64 158c-3 42-3 90 0 132M136 158c3 42 3 90 0 132" />
    <path
      className={styles.glass}
      d="M50 138l9 24c-2 14-3 28-3 46l-14 1v-40Z M42 217l14-1c0 30 1 52 4 72l-9 22c-6-12-9-26-9-44Z"
    />
    <path
      className={styles.glass}
      d="M150 138l-9 24c2 14 3 28 3 46l14 1v-40Z M158 217l-14-1c0 30-1 52-4 72l9 22c6-12 9-26 9-44Z"
    />
    <path className={styles.line} d="M33 140h9M33 213h9M34 268h8M167 140h-9M167 213h-9M166 268h-8" />
    <path className={styles.line} d="M55 314c2 28 2 50 0 72M145 314c-2 28-2 50 0 72" />
    <path className={styles.body} d="M33 146l-9 3c-3 1-3 10 0 10h9M167 146l9 3c3 1 3 10 0 10h-9" />
    <ellipse className={styles.line} cx="50" cy="34" rx="7" ry="9" />
    <ellipse className={styles.line} cx="150" cy="34" rx="7" ry="9" />
  </svg>
);

/** The same car from underneath, laid out as if one looked down through it, so that left stays left. */
export const UnderneathDrawing = () => (
  <svg viewBox="0 0 200 420" className={styles.drawing} aria-hidden="true">
    <path
      className={styles.faintBody}
      d="M100 10c26 0 45 5 54 18 7 10 11 24 12 44l2 60v150l-2 70c-1 22-5 38-13 46-9 9-28 12-53 12s-44-3-53-12c-8-8-12-24-13-46l-2-70V132l2-60c1-20 5-34 12-44 9-13 28-18 54-18Z"
    />
    <path className={styles.rail} d="M66 40v72l-8 26v150l10 28v74M134 40v72l8 26v150l-10 28v74" />
    <path className={styles.line} d="M66 62h68M60 132h80M58 214h84M58 288h84M68 372h64" />
    <rect className={styles.wheel} x="30" y="62" width="17" height="52" rx="5" />
    <rect className={styles.wheel} x="153" y="62" width="17" height="52" rx="5" />
    <rect className={styles.wheel} x="30" y="304" width="17" height="52" rx="5" />
    <rect className={styles.wheel} x="153" y="304" width="17" height="52" rx="5" />
    <path className={styles.line} d="M47 88h19M134 88h19M47 330h106" />
    <circle className={styles.line} cx="100" cy="330" r="16" />
    <path className={styles.line} d="M90 112h20l5 58H85ZM98 170v144M102 170v144" />
    <path className={styles.line} d="M118 112c6 40 4 90 4 130s-4 40-4 70 8 40 8 88" />
    <rect className={styles.line} x="74" y="360" width="40" height="30" rx="5" />
  </svg>
);
