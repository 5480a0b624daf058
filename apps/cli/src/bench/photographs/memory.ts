import { readdirSync, readFileSync } from "node:fs";

const childrenOf = (pid: number): number[] =>
  readdirSync(`/proc/${pid}/task`).flatMap((thread) =>
    readFileSync(`/proc/${pid}/task/${thread}/children`, "utf8").split(" ").filter(Boolean).map(Number),
  );

/** MiB of a line of a process's status, as Linux says it. */
const mebibytes = (pid: number, line: "VmHWM" | "RssFile"): number => {
  const status = readFileSync(`/proc/${pid}/status`, "utf8");
  return Number(new RegExp(`^${line}:\\s+(\\d+) kB$`, "m").exec(status)?.[1] ?? Number.NaN) / 1024;
};

/**
 * MiB that a process held at once, at most, so far, and then what those it started held beside the files of programs, which are in
 * memory once however many run them. Linux says so; elsewhere it is not measured.
 */
export function mostMemory(pid: number): number[] {
  if (process.platform !== "linux") return [Number.NaN];
  const beside = childrenOf(pid).map((child) => mebibytes(child, "VmHWM") - mebibytes(child, "RssFile"));
  return [mebibytes(pid, "VmHWM"), ...beside];
}
