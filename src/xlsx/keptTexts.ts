const NAME = /^Longpoint (.+) ([1-9]\d?)$/;

// Excel shows no more of a property than this, and drops the rest of it.
const LONGEST = 255;

/** Texts kept by key, as the custom properties of a file: a long one goes over several, counted from 1. One of more than 25,000 characters is not kept whole, and so not read again. */
export function propertiesOf(kept: Readonly<Record<string, string>>): Record<string, string> {
  return Object.fromEntries(
    Object.entries(kept).flatMap(([key, text]) =>
      parts(encodeURI(text)).map((part, i) => [`Longpoint ${key} ${i + 1}`, part]),
    ),
  );
}

/** The texts that a file's custom properties keep; whatever else stands there is passed over. */
export function keptTexts(properties: Readonly<Record<string, unknown>>): Record<string, string> {
  const found = new Map<string, string[]>();
  for (const [name, part] of Object.entries(properties)) {
    const [, key, number] = NAME.exec(name) ?? [];
    if (key === undefined || typeof part !== "string") continue;
    found.set(key, found.get(key) ?? []);
    found.get(key)![Number(number) - 1] = part;
  }
  return Object.fromEntries(
    [...found].flatMap(([key, all]) => {
      try {
        return [[key, decodeURI(all.join(""))]];
      } catch {
        // Cut by another program: nothing can be made of it.
        return [];
      }
    }),
  );
}

function parts(text: string): string[] {
  return text.match(new RegExp(`.{1,${LONGEST}}`, "gs")) ?? [""];
}
