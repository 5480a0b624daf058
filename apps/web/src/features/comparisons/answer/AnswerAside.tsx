import type { Answer } from "@evenhand/shared/page-one";
import { useIntl } from "react-intl";
import { useDuration } from "../../../entities/time/use-duration";
import { useText } from "../../../strings/text";
import { AskIt } from "./AskIt";
import styles from "./AnswerView.module.css";
import type { Step } from "./steps";

const STOPS = 4;

/** What was found that stops the money; and, apart, what could and nobody knows. */
export const Stops = ({ stops }: Pick<Answer, "stops">) => {
  const t = useText();
  const known = stops.filter((stop) => stop.known);
  const unknown = stops.filter((stop) => !stop.known);
  return (
    <section className={styles.stops}>
      <h2>{t("answer.stops")}</h2>
      {stops.length === 0 && <p>{t("answer.stops.none")}</p>}
      {known.length > 0 && (
        <ul>
          {known.slice(0, STOPS).map(({ words }) => (
            <li key={words}>{words}</li>
          ))}
          {known.length > STOPS && <li>{t("answer.more", { count: known.length - STOPS })}</li>}
        </ul>
      )}
      {unknown.length > 0 && (
        <p>
          <strong>{t("answer.stops.unknown", { count: unknown.length })}</strong>{" "}
          {unknown
            .slice(0, STOPS)
            .map(({ words }) => words)
            .join("; ")}
          {unknown.length > STOPS && `; ${t("answer.more", { count: unknown.length - STOPS })}`}
        </p>
      )}
    </section>
  );
};

const NAMED = 1;

/** What to do next: each step once, the gravest matter's first. */
export const NextSteps = ({ steps }: { readonly steps: readonly Step[] }) => {
  const t = useText();
  const duration = useDuration();
  return (
    <section className={styles.next}>
      <h2>{t("answer.next")}</h2>
      <ol>
        {steps.map(({ step, words, minutes, matters }) => (
          <li key={step}>
            <strong>
              {minutes === null ? words : t("answer.next.minutes", { next: words, time: duration(minutes) })}
            </strong>
            <span>
              {matters
                .slice(0, NAMED)
                .map(({ number, headline, question }) =>
                  t("answer.numbered", { number, headline: step === "ask" ? question : headline }),
                )
                .join("; ")}
              {matters.length > NAMED && `; ${t("answer.more", { count: matters.length - NAMED })}`}
            </span>
          </li>
        ))}
      </ol>
    </section>
  );
};

/** The five questions, word for word, each put by one press. */
export const Questions = ({ questions, asks = [] }: Pick<Answer, "questions" | "asks">) => {
  const t = useText();
  if (questions.length === 0) return null;
  return (
    <section className={styles.questions}>
      <h2>{t("answer.questions")}</h2>
      <ol>
        {questions.map((question) => (
          <li key={question}>
            <span>{question}</span>{" "}
            {asks
              .filter(({ words }) => words === question)
              .map((ask) => (
                <AskIt key={ask.item} ask={ask} />
              ))}
          </li>
        ))}
      </ol>
    </section>
  );
};

/** What makes either side's word weigh less, its figures folded. */
export const Softened = ({ soft = [] }: Pick<Answer, "soft">) => {
  const t = useText();
  if (soft.length === 0) return null;
  return (
    <section className={styles.soft}>
      <h2>{t("answer.soft")}</h2>
      <ul>
        {soft.map(({ of, side, words, figures }) => (
          <li key={`${of}@${side}`}>
            {words}
            {figures !== undefined && (
              <details>
                <summary>{t("answer.soft.figures")}</summary>
                {figures}
              </details>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
};

const BECAME = ["fell", "doubtful", "unseen", "notComparable", "disclosed", "held"] as const;

/** Faults that were made out worse than they are: said for whoever stated them. */
const Credit = ({ claims: { statedWorse = 0 } }: Pick<Answer, "claims">) => {
  const t = useText();
  return statedWorse > 0 ? <p>{t("answer.claims.stated-worse", { count: statedWorse })}</p> : null;
};

/** The gravest that was found otherwise. */
const Gravest = ({ claims: { fallen } }: Pick<Answer, "claims">) => {
  const t = useText();
  if (fallen.length === 0) return null;
  return (
    <div className={styles.gravest}>
      <h3>{t("answer.claims.gravest")}</h3>
      <ul>
        {fallen.map((words) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
    </div>
  );
};

/** What became of what was stated, place by place, and the gravest that was found otherwise. */
export const ClaimsSaid = ({ claims }: Pick<Answer, "claims">) => {
  const t = useText();
  return (
    <section className={styles.claims}>
      <h2>{t("answer.claims")}</h2>
      <p>{t("answer.claims.stated", { count: claims.stated })}</p>
      {claims.decisive !== undefined && <p>{t("answer.claims.decisive", claims.decisive)}</p>}
      <dl>
        {BECAME.map((became) => (
          <div key={became}>
            <dt>{t(`answer.claims.${became}`)}</dt>
            <dd className="figures">{claims[became]}</dd>
          </div>
        ))}
      </dl>
      <Credit claims={claims} />
      <Gravest claims={claims} />
    </section>
  );
};

/** How long it was looked at, and why places were not seen. */
export const Looked = ({ looked, zone }: Pick<Answer, "looked"> & { readonly zone: string }) => {
  const t = useText();
  const duration = useDuration();
  const intl = useIntl();
  const { by, minutes, couldNot } = looked;
  const date = intl.formatDate(looked.started, { dateStyle: "long", timeZone: zone });
  return (
    <section className={styles.looked}>
      <h2>{t("answer.looked")}</h2>
      <p>
        {minutes === null
          ? t("answer.looked.by", { by, date })
          : t("answer.looked.for", { by, date, time: duration(minutes) })}
      </p>
      {couldNot.length > 0 && (
        <>
          <p>{t("answer.looked.not")}</p>
          <ul>
            {couldNot.map(({ reason, places }) => (
              <li key={reason}>
                {t("answer.looked.reason", { reason: t(`not-seen.${reason}`), count: places })}
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
};
