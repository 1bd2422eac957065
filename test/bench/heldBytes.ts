import type { CDPSession } from "playwright-core";

/** What of a heap is made by scripts. */
const MADE = new Set([
  "object",
  "closure",
  "array",
  "string",
  "concatenated string",
  "sliced string",
  "number",
  "symbol",
  "regexp",
  "bigint",
]);

interface Snapshot {
  readonly snapshot: {
    readonly meta: { readonly node_fields: readonly string[]; readonly node_types: readonly [readonly string[]] };
  };
  /** So many numbers for each thing, as `node_fields` names them. */
  readonly nodes: readonly number[];
}

/**
 * Bytes that a page's scripts hold once what nothing reaches is gone. Without the machine code that the browser makes of what runs often, and
 * without what it draws: both come and go by themselves, by hundreds of kilobytes.
 */
export async function heldBytes(session: CDPSession): Promise<number> {
  const parts: string[] = [];
  const take = ({ chunk }: { chunk: string }) => void parts.push(chunk);
  session.on("HeapProfiler.addHeapSnapshotChunk", take);
  await session.send("HeapProfiler.takeHeapSnapshot");
  session.off("HeapProfiler.addHeapSnapshotChunk", take);
  // What points where comes after the things, and is most of it.
  const text = parts.join("");
  const { snapshot, nodes } = JSON.parse(`${text.slice(0, text.indexOf(',\n"edges":'))}}`) as Snapshot;
  const { node_fields: fields, node_types: types } = snapshot.meta;
  const [type, size] = [fields.indexOf("type"), fields.indexOf("self_size")];
  let bytes = 0;
  for (let at = 0; at < nodes.length; at += fields.length)
    if (MADE.has(types[0][nodes[at + type]!]!)) bytes += nodes[at + size]!;
  return bytes;
}
