import { withoutDocs } from "./withoutDocs.ts";

/** For the bundler: {@link withoutDocs} over a file of functions/. */
export default function withoutDocsLoader(source: string): string {
  return withoutDocs(source);
}
