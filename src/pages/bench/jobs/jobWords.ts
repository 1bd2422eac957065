import type { NotKept } from "./jobStore.ts";

const when = (time: number) => new Date(time).toLocaleString("en-US", { dateStyle: "medium", timeStyle: "short" });

/** What is said of jobs that the browser keeps. */
export const jobWords = {
  title: (name: string, fault: boolean) => `Job: ${name}${fault ? " (not kept)" : ""}`,
  name: "Name of this job",
  where:
    "This browser keeps your jobs on this machine. They go to no server. Save a file too: clearing the browser's data deletes the jobs.",
  kept: "This job is kept.",
  soon: "Your last changes will be kept in a moment.",
  notYet: "This job will be kept from your first change on.",
  faults: {
    full: "This browser has no room left for this job. Save it as a file, then delete jobs you no longer need.",
    forbidden:
      "This browser keeps nothing for this page: a private window, or storage switched off. Save your work as a file.",
    newer: "A newer Longpoint keeps its jobs in this browser. This one leaves them alone. Save your work as a file.",
  } satisfies Record<NotKept, string>,
  resume: "Continue",
  remove: "Delete",
  removeSure: "Delete for good",
  removed: (name: string) => `${name} was deleted from this browser.`,
  notRemoved: (name: string) => `${name} could not be deleted.`,
  here: "in the sheet now",
  newer: "written by a newer Longpoint",
  changed: (time: number) => `changed ${when(time)}`,
  offer: (name: string, time: number) => `This browser kept your job ${name}, changed ${when(time)}.`,
  resuming: (name: string) => `Opening ${name} …`,
  resumed: (name: string) => `${name} is as you left it.`,
  copy: (name: string) =>
    `${name} is open in another tab. This is a copy, kept under a name of its own once you change it.`,
  gone: (name: string) => `${name} is no longer kept here.`,
  notResumed: (name: string, why: string) => `${name} was not opened. ${why} Your sheets are as they were.`,
} as const;
