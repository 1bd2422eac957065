import { relative } from "node:path";
import { defineConfig } from "vitest/config";
import { BaseSequencer, type TestSpecification } from "vitest/node";
import { chosenRoom, WHOLE } from "./rooms.ts";

/** The first failure ends a fault's run, so the quick files go first. */
class QuickFirst extends BaseSequencer {
  override sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const took = ({ project, moduleId }: TestSpecification) =>
      this.ctx.cache.getFileTestResults(`${project.name}:${relative(project.config.root, moduleId)}`)?.duration ?? 0;
    return Promise.resolve(files.toSorted((a, b) => took(a) - took(b)));
  }
}

const { tests, slow = [] } = chosenRoom();

export default defineConfig({
  test: {
    include: [...new Set([...tests, ...(process.env[WHOLE] ? slow : [])])],
    // Each fault has a process of its own: within it the files may share what they load, which is most of their time.
    isolate: false,
    sequence: { sequencer: QuickFirst },
    setupFiles: ["test/mutation/setup.ts"],
    testTimeout: 300_000,
  },
});
