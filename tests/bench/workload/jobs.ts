import { libraryFile, shared, type WorkloadFile } from './procedures.ts';

/** The job that is printed, certified and advised on: it is done, with every reading. */
export const askedJob = '2198';

const done = libraryFile(`jobs/job-${askedJob}.rebuild`);

/** The one-spring procedure and so many jobs of it, each in a file of its own, with a number and serials of its own. */
export function jobFolder(count: number): readonly WorkloadFile[] {
  const others = Array.from({ length: count - 1 }, (_, index) => ({
    path: `jobs/${Math.floor(index / 1000)}/job-${10_000 + index}.rebuild`,
    text: done.text
      .replace(`job ${askedJob}`, `job ${10_000 + index}`)
      .replace(/serial (\d+)/gu, (_all, serial) => `serial ${index}${serial}`),
  }));
  return [
    ...shared,
    libraryFile('one-spring/family.rebuild'),
    libraryFile('one-spring/procedure.rebuild'),
    done,
    ...others,
  ];
}
