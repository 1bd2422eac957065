import { texts } from "../words/texts.ts";

/** One of a few words, under its label. */
export function Choice({
  label,
  value,
  of,
  change,
}: {
  label: string;
  value: string;
  of: readonly string[];
  change: (value: string) => void;
}) {
  return (
    <label>
      {label}
      <select value={value} onChange={(event) => change(event.currentTarget.value)}>
        {of.map((one) => (
          <option key={one} value={one}>
            {texts.choices[one] ?? one}
          </option>
        ))}
      </select>
    </label>
  );
}
