import { mkdir, writeFile } from "node:fs/promises";
import { Socket } from "node:net";
import { join } from "node:path";
import { createTransport } from "nodemailer";
import type { Config } from "../config/index.ts";

export type Message = {
  id: string;
  recipient: string;
  subject: string;
  body: string;
  /** An invitation, its change or its end (RFC 5546), as the calendar program of the one who gets it reads it. */
  calendar?: { method: "REQUEST" | "CANCEL"; text: string } | null;
};

/** Where mail goes out. Sending the same message twice gives one file, or two mails with one Message-ID. */
export abstract class Mailer {
  /** @param signal stops the sending, as far as it can still be stopped */
  abstract send(message: Message, signal?: AbortSignal): Promise<void>;
}

const composed = (from: string, { id, recipient, subject, body, calendar = null }: Message) => ({
  from,
  to: recipient,
  subject,
  text: body,
  ...(calendar === null
    ? {}
    : { icalEvent: { method: calendar.method, content: calendar.text, filename: "visit.ics" } }),
  messageId: `<${id}@evenhand.example>`,
});

/** Writes each mail as a file, for trying out: nothing leaves the machine. */
export class FileMailer extends Mailer {
  private readonly transport = createTransport({ streamTransport: true, buffer: true, newline: "unix" });
  private readonly folder: string;
  private readonly from: string;
  constructor(folder: string, from: string) {
    super();
    this.folder = folder;
    this.from = from;
  }

  override async send(message: Message): Promise<void> {
    const { message: bytes } = await this.transport.sendMail(composed(this.from, message));
    if (!Buffer.isBuffer(bytes)) throw new Error("The mail was not composed.");
    await mkdir(this.folder, { recursive: true });
    await writeFile(join(this.folder, `${message.id}.eml`), bytes, { mode: 0o600 });
  }
}

/**
 * How long the server is waited for. After the whole letter it may take ten minutes to say that it has it (RFC 5321, 4.5.3.2.6):
 * who hangs up before sends the letter twice.
 */
const smtpTimes = { connectionTimeout: 30_000, greetingTimeout: 60_000, socketTimeout: 600_000 };

/** One connection a letter, so that one can be stopped and the others go on. */
export class SmtpMailer extends Mailer {
  private readonly url: string;
  private readonly from: string;
  constructor(url: string, from: string) {
    super();
    this.url = url;
    this.from = from;
  }

  override async send(message: Message, signal?: AbortSignal): Promise<void> {
    signal?.throwIfAborted();
    const socket = new Socket();
    const stop = () => socket.destroy(new Error("The sending was stopped.", { cause: signal?.reason }));
    signal?.addEventListener("abort", stop);
    try {
      await createTransport({ url: this.url, ...smtpTimes, socket }).sendMail(composed(this.from, message));
    } finally {
      signal?.removeEventListener("abort", stop);
    }
  }
}

/** `MAIL` decides, whatever else is set. */
export function mailerOf({ mail }: Config): Mailer {
  if (mail.by === "file") return new FileMailer(mail.folder, mail.from);
  if (mail.smtpUrl === null) throw new Error("MAIL is smtp, and there is no SMTP_URL.");
  return new SmtpMailer(mail.smtpUrl, mail.from);
}
