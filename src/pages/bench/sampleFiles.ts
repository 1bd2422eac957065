// The page brings the files with it: the bundler puts each beside the page's scripts and gives its address.
const ADDRESSES = {
  bid: new URL("../../../samples/bid.xlsx", import.meta.url),
  compare: new URL("../../../samples/compare.xlsx", import.meta.url),
  check: new URL("../../../samples/check.xlsx", import.meta.url),
  metric: new URL("../../../samples/metric.xlsx", import.meta.url),
  "l-shaped": new URL("../../../samples/l-shaped.xlsx", import.meta.url),
  "t-shaped": new URL("../../../samples/t-shaped.xlsx", import.meta.url),
} as const;

export type SampleName = keyof typeof ADDRESSES;

/** The sample workbooks by name, with the words that offer them. */
export const SAMPLES: Readonly<Record<SampleName, string>> = {
  bid: "Bid with prices",
  compare: "Pitches and spacings compared",
  check: "Hand calculations checked",
  metric: "Metric job",
  "l-shaped": "L-shaped roof",
  "t-shaped": "T-shaped roof",
};

export function isSample(name: string): name is SampleName {
  return Object.hasOwn(SAMPLES, name);
}

/** The bytes of a sample workbook. */
export async function sampleFile(name: SampleName): Promise<Uint8Array> {
  const answer = await fetch(ADDRESSES[name]);
  if (!answer.ok) throw new Error(`The sample ${name} is not beside the page (${answer.status}).`);
  return new Uint8Array(await answer.arrayBuffer());
}
