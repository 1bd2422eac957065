/** A length that is typed with a thumb: on a dimension line, what it should be beside its label, what is wrong with it under it. */
export function Entry({
  label,
  beside,
  value,
  wrong,
  change,
}: {
  label: string;
  beside: string;
  value: string;
  wrong: string;
  change: (text: string) => void;
}) {
  return (
    <label class="entry">
      <span>
        <b>{label}</b> <span class="soft">{beside}</span>
      </span>
      <input
        type="text"
        inputMode="decimal"
        autocomplete="off"
        maxLength={100}
        value={value}
        aria-invalid={wrong !== ""}
        onInput={(event) => change(event.currentTarget.value)}
      />
      <span role="alert" class={wrong === "" ? undefined : "caution"}>
        {wrong}
      </span>
    </label>
  );
}
